/** What a climate is, in a few words, and what keeps a table of it from being used. */
import type { Climate } from "../../core/model/plan.ts";

/** @param typed as it stands in the cell; empty where nothing does */
export function cellFault(month: string, end: "min" | "max", typed: string): string {
  if (typed === "") {
    return end === "min" ? `${month}, lowest: is missing` : `${month}, highest: is missing`;
  }
  return end === "min"
    ? `${month}, lowest: "${typed}" is no temperature`
    : `${month}, highest: "${typed}" is no temperature`;
}

export const lowAboveHigh = (month: string) => `${month}: the lowest is above the highest`;

/** What a site's climate is, in a few words. */
export function climateWords(climate: Climate | undefined): string {
  if (!climate) return "none: bloom is counted in days";
  const { normals, days, station } = climate;
  const parts =
    normals && days
      ? "monthly normals and a record of days"
      : days
        ? "a record of days"
        : "monthly normals";
  return station ? `${station}: ${parts}` : parts;
}

interface RecordSpan {
  readonly from: string;
  readonly to: string;
  /** Days with both temperatures, of all. */
  readonly whole: number;
  readonly all: number;
}

export const recordSpan = ({ from, to, whole, all }: RecordSpan) =>
  whole === all ? `${from} to ${to}, ${all} days` : `${from} to ${to}, ${whole} of ${all} days`;

export const lowest = "lowest";
export const highest = "highest";
