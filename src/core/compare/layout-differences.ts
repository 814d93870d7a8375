/**
 * What differs between two layouts, object by object. Copies of a layout keep the ids of what
 * stands in them, so objects are matched by id first, then by code and variety.
 */
import { outlineArea, outlineOf, shapeCentre } from "../geometry/outline.ts";
import { directionDeg, pointDistance } from "../geometry/point.ts";
import type { AreaShape, Bed, Cover, Flowering, Layout, Planting, Purpose } from "../model/plan.ts";

/** Lengths that differ by less are the same, metres: what no tape shows. */
const SAME_M = 0.001;
/** Areas that differ by less are the same, square metres. */
const SAME_M2 = 0.01;
/** Turns that differ by less are the same, degrees. */
const SAME_DEG = 0.01;

export type Change =
  | { readonly kind: "added" | "removed" | "resized" | "turned" | "variety" | "locked" }
  /** Centre moved by metres, towards degrees clockwise from the sheet's up. */
  | { readonly kind: "moved"; readonly metres: number; readonly towardsDeg: number }
  /** Starts or blooms this many days later; earlier when negative; null: a date came or went. */
  | { readonly kind: "date"; readonly days: number | null }
  /** Cleared on another day; null: it stands to the end of the season. */
  | { readonly kind: "end"; readonly to: number | null }
  | { readonly kind: "flowering"; readonly to: Flowering }
  | { readonly kind: "rows"; readonly from: number | null; readonly to: number | null }
  /** Anything else that is kept of a planting or bed, by what it is called in the plan file. */
  | { readonly kind: "other"; readonly fields: readonly string[] }
  | { readonly kind: "cover"; readonly from: Cover; readonly to: Cover }
  | { readonly kind: "purpose"; readonly from: Purpose; readonly to: Purpose }
  | { readonly kind: "plants"; readonly from: number | null; readonly to: number | null };

export interface Difference {
  readonly what: "bed" | "planting";
  /** Id in the second layout, or in the first for what was removed. */
  readonly id: string;
  /** Id of the variety; null for a bed. */
  readonly variety: string | null;
  /** Code in the first layout; null when added. */
  readonly fromCode: string | null;
  /** Code in the second layout; null when removed. */
  readonly toCode: string | null;
  readonly changes: readonly Change[];
}

interface Pairing<T> {
  readonly before: T | null;
  readonly after: T | null;
}

/** Every bed and planting that is not the same in both layouts; beds first, in layout order. */
export function layoutDifferences(from: Layout, to: Layout): readonly Difference[] {
  const beds = matched(from.beds, to.beds, (bed) => bed.code).map((pair) =>
    difference("bed", pair, () => []),
  );
  const plantings = matchedPlantings(from, to).map((pair) =>
    difference("planting", pair, plantingChanges),
  );
  return [...beds, ...plantings].filter(({ changes }) => changes.length > 0);
}

/** Plantings of two layouts that are the same lot, with those that stand in one only. */
export function matchedPlantings(from: Layout, to: Layout): readonly Pairing<Planting>[] {
  return matched(from.plantings, to.plantings, (entry) => `${entry.code}|${entry.variety}`);
}

function matched<T extends { readonly id: string }>(
  from: readonly T[],
  to: readonly T[],
  keyOf: (item: T) => string,
): readonly Pairing<T>[] {
  const byId = new Map(to.map((item) => [item.id, item]));
  const taken = new Set(from.filter(({ id }) => byId.has(id)).map(({ id }) => id));
  const byKey = new Map(to.filter(({ id }) => !taken.has(id)).map((item) => [keyOf(item), item]));
  const pairs = from.map((before): Pairing<T> => {
    const same = byId.get(before.id);
    if (same) return { before, after: same };
    const after = byKey.get(keyOf(before)) ?? null;
    if (after) {
      byKey.delete(keyOf(before));
      taken.add(after.id);
    }
    return { before, after };
  });
  const added = to.filter(({ id }) => !taken.has(id)).map((after) => ({ before: null, after }));
  return [...pairs, ...added];
}

function difference<T extends Bed | Planting>(
  what: Difference["what"],
  { before, after }: Pairing<T>,
  more: (before: T, after: T) => readonly Change[],
): Difference {
  const item = after ?? before;
  return {
    what,
    id: item?.id ?? "",
    variety: item && "variety" in item ? item.variety : null,
    fromCode: before?.code ?? null,
    toCode: after?.code ?? null,
    changes: changesBetween(before, after, more),
  };
}

function changesBetween<T extends Bed | Planting>(
  before: T | null,
  after: T | null,
  more: (before: T, after: T) => readonly Change[],
): readonly Change[] {
  if (!before) return [{ kind: "added" }];
  if (!after) return [{ kind: "removed" }];
  if (before === after) return [];
  return [
    ...outlineChanges(before.outline, after.outline),
    ...more(before, after),
    ...otherChanges(before, after),
  ];
}

/** What changes of their own kind tell, and what tells nothing about the ground. */
const TOLD: ReadonlySet<string> = new Set([
  "id",
  "code",
  "bed",
  "outline",
  "variety",
  "start",
  "bloom",
  "end",
  "flowering",
  "cover",
  "purpose",
  "plants",
  "rows",
  "locked",
]);

/** No change to a planting is passed over: a layout that differs never differs in nothing. */
function otherChanges(before: object, after: object): readonly Change[] {
  const [from, to] = [new Map(Object.entries(before)), new Map(Object.entries(after))];
  const fields = [...new Set([...from.keys(), ...to.keys()])].filter(
    (key) => !TOLD.has(key) && JSON.stringify(from.get(key)) !== JSON.stringify(to.get(key)),
  );
  return fields.length === 0 ? [] : [{ kind: "other", fields }];
}

function outlineChanges(before: AreaShape, after: AreaShape): readonly Change[] {
  const changes: Change[] = [];
  const [from, to] = [shapeCentre(before), shapeCentre(after)];
  const metres = pointDistance(from, to);
  if (metres > SAME_M) changes.push({ kind: "moved", metres, towardsDeg: directionDeg(from, to) });
  if (before.shape === "rectangle" && after.shape === "rectangle") {
    const sides = [before.widthM - after.widthM, before.lengthM - after.lengthM];
    if (sides.some((side) => Math.abs(side) > SAME_M)) changes.push({ kind: "resized" });
    const turn = (((after.turnDeg - before.turnDeg) % 180) + 180) % 180;
    if (Math.min(turn, 180 - turn) > SAME_DEG) changes.push({ kind: "turned" });
    return changes;
  }
  const areas = [before, after].map((shape) => outlineArea(outlineOf(shape)));
  if (before.shape !== after.shape || Math.abs((areas[0] ?? 0) - (areas[1] ?? 0)) > SAME_M2) {
    changes.push({ kind: "resized" });
  }
  return changes;
}

function plantingChanges(before: Planting, after: Planting): readonly Change[] {
  const changes: Change[] = [];
  if (before.variety !== after.variety) changes.push({ kind: "variety" });
  const days = daysLater(before, after);
  if (days !== 0) changes.push({ kind: "date", days });
  const isOtherStart =
    before.start?.method !== after.start?.method ||
    before.start?.sownUnderGlass !== after.start?.sownUnderGlass;
  if (days === 0 && isOtherStart) changes.push({ kind: "other", fields: ["start"] });
  if (before.end !== after.end) changes.push({ kind: "end", to: after.end ?? null });
  if (before.flowering !== after.flowering) {
    changes.push({ kind: "flowering", to: after.flowering });
  }
  const [rows, rowsNow] = [before.rows ?? null, after.rows ?? null];
  if (rows !== rowsNow) changes.push({ kind: "rows", from: rows, to: rowsNow });
  if (before.cover !== after.cover) {
    changes.push({ kind: "cover", from: before.cover, to: after.cover });
  }
  if (before.purpose !== after.purpose) {
    changes.push({ kind: "purpose", from: before.purpose, to: after.purpose });
  }
  const [from, to] = [before.plants ?? null, after.plants ?? null];
  if (from !== to) changes.push({ kind: "plants", from, to });
  if ((before.locked ?? false) !== (after.locked ?? false)) changes.push({ kind: "locked" });
  return changes;
}

/** By how many days it starts later, else blooms later; null when one of the dates is missing. */
function daysLater(before: Planting, after: Planting): number | null {
  const pairs = [
    [before.start?.date, after.start?.date],
    [before.bloom?.first, after.bloom?.first],
    [before.bloom?.last, after.bloom?.last],
  ] as const;
  for (const [from, to] of pairs) {
    if (from === to) continue;
    return from === undefined || to === undefined ? null : to - from;
  }
  return 0;
}
