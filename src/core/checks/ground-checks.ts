/**
 * What ground remembers, and what one season asks of it twice: volunteers, rotation, marks of
 * diseases, and days of clearing. The part that reckons is core/ground, joined when it is needed.
 */
import { type Check, type CheckInput, type CheckPart, joinedCheck } from "./check.ts";
import type { FindingBase } from "./finding.ts";
import * as words from "../words/finding-words.ts";

/** A crop that stood on the ground of a planting. */
export interface GroundCrop {
  /** Of the earlier crop; of the planting that stood there earlier in the same season. */
  readonly id: string;
  readonly kind: string;
  readonly year: number;
  readonly varietyName: string | null;
  readonly wentToSeed: "yes" | "no" | "unknown";
}

/** A published rule that counts an earlier crop. */
export interface SpeakingRule {
  readonly source: string;
  /** Years the ground should be free of it. */
  readonly years: number;
  /** `good practice` or `minimum`; null where the source has no columns. */
  readonly column: string | null;
  /** What may not have grown there, in the source's sense; null: what crosses with the crop. */
  readonly words: string | null;
  readonly note: string | null;
}

/** A seed parent lies on ground where something it can cross with grew too few years ago. */
export interface VolunteersFinding extends FindingBase {
  readonly check: "volunteers";
  readonly subject: string;
  /** Earlier crops it lies on, the latest first. */
  readonly crops: readonly GroundCrop[];
  /** The longest years of the rules that count them, and who says so; null: none published. */
  readonly landYears: number | null;
  readonly source: string | null;
  /** All rules that count one of them, the longest first. */
  readonly rules: readonly SpeakingRule[];
  /** Of these, by id, plants left in the ground may flower though they bore no seed. */
  readonly leftPlants: readonly string[];
  /** Those it does not lie on, but within reach of the seed they shed, with the metres between. */
  readonly within: readonly {
    readonly id: string;
    readonly metres: number;
    readonly rimM: number;
  }[];
}

/** A disease that may wait in the ground for a crop. */
export interface DiseaseAsked {
  /** What it is called; null: the source names none. */
  readonly disease: string | null;
  /** [least, most] years without its hosts; null: never again. */
  readonly years: readonly [number, number] | null;
  readonly source: string;
  /** Of the crops, by id, those that count as hosts. */
  readonly crops: readonly string[];
  readonly note: string | null;
}

/** A planting follows hosts of its diseases too soon. */
export interface RotationFinding extends FindingBase {
  readonly check: "rotation";
  readonly subject: string;
  readonly crops: readonly GroundCrop[];
  /** The longest interval first. */
  readonly diseases: readonly DiseaseAsked[];
}

/** A planting stands on ground marked with a disease that harms it. */
export interface GroundMarkFinding extends FindingBase {
  readonly check: "ground-mark";
  readonly subject: string;
  readonly mark: string;
  readonly disease: string;
  /** Its own name, for one that is not known here. */
  readonly name: string | null;
  readonly seenOn: number;
}

/** A seed parent is cleared before its seed is ripe, or nobody knows when it is. */
export interface ClearedEarlyFinding extends FindingBase {
  readonly check: "cleared-early";
  readonly subject: string;
  readonly end: number;
  /** Day numbers of first ripe seed; null: not known. */
  readonly ripeLikely: number | null;
  readonly ripeLatest: number | null;
  /** Whether the heat its seed needs may not be reached at all. */
  readonly isBeyond: boolean;
}

/** Days of a planting that cannot follow each other as they are written. */
export interface DateOrderFinding extends FindingBase {
  readonly check: "date-order";
  readonly subject: string;
  /** Day numbers, as far as they are given. */
  readonly sownUnderGlass: number | null;
  readonly start: number;
  readonly end: number | null;
}

export interface GroundReckoning {
  readonly volunteers: CheckPart<VolunteersFinding>;
  readonly rotation: CheckPart<RotationFinding>;
  readonly marks: CheckPart<GroundMarkFinding>;
  readonly cleared: CheckPart<ClearedEarlyFinding>;
  readonly order: CheckPart<DateOrderFinding>;
}

let reckoning: GroundReckoning | null = null;

/**
 * Joins the reckoning (core/ground/ground-reckoning.ts) to the checks. It is large and of use only
 * where a plan has something of the kind (`needsGround`), so a window loads it then and checks
 * anew; the command line joins it at once. Until then these checks say nothing.
 */
export function joinGroundReckoning(made: GroundReckoning): void {
  reckoning = made;
}

export function isGroundReckoned(): boolean {
  return reckoning !== null;
}

type WhatAsks = Pick<CheckInput["plan"], "earlierCrops" | "groundMarks" | "layouts">;

/** Whether a plan has earlier crops, marks, a day of clearing or of sowing under glass. */
export function needsGround({ earlierCrops, groundMarks, layouts }: WhatAsks): boolean {
  if (earlierCrops.length + groundMarks.length > 0) return true;
  const known = asking.get(layouts);
  if (known !== undefined) return known;
  const isAsking = layouts.some(({ plantings }) =>
    plantings.some(({ start, end }) => end !== undefined || start?.sownUnderGlass !== undefined),
  );
  asking.set(layouts, isAsking);
  return isAsking;
}

/** A window asks several times on every frame of a drag. */
const asking = new WeakMap<WhatAsks["layouts"], boolean>();

export const volunteersCheck = joinedCheck<VolunteersFinding>(
  "volunteers",
  words.volunteers,
  () => reckoning?.volunteers,
);
export const rotationCheck = joinedCheck<RotationFinding>(
  "rotation",
  words.rotation,
  () => reckoning?.rotation,
);
export const groundMarkCheck = joinedCheck<GroundMarkFinding>(
  "ground-mark",
  words.groundMark,
  () => reckoning?.marks,
);
export const clearedEarlyCheck: Check<ClearedEarlyFinding> = {
  ...joinedCheck<ClearedEarlyFinding>(
    "cleared-early",
    words.clearedEarly,
    () => reckoning?.cleared,
  ),
  ignoresPlace: true,
};
export const dateOrderCheck: Check<DateOrderFinding> = {
  ...joinedCheck<DateOrderFinding>("date-order", words.dateOrder, () => reckoning?.order),
  ignoresPlace: true,
};
