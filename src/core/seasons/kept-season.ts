/** Which season a plan file is of, and which plan it was started from, without reading all of it. */
import { dayFromIso } from "../model/day.ts";
import type { KeptSeason } from "./next-season-faults.ts";

/** Null for what is no plan file. */
export function keptSeasonOf(text: string): KeptSeason | null {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return null;
  }
  const { id, title, season, cameFrom } = fieldsOf(value);
  const { name, first, last } = fieldsOf(season);
  const from = fieldsOf(cameFrom)["plan"];
  const [begins, ends] = [dayFromIso(textOf(first)), dayFromIso(textOf(last))];
  if (typeof id !== "string" || begins === null || ends === null) return null;
  return {
    planId: id,
    title: textOf(title),
    season: { name: textOf(name), first: begins, last: ends },
    cameFrom: typeof from === "string" ? from : null,
  };
}

function fieldsOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null ? { ...value } : {};
}

function textOf(value: unknown): string {
  return typeof value === "string" ? value : "";
}
