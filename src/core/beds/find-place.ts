/** Where and when a new planting goes in a bed: on free ground, else after what is cleared there. */
import { endOf, layoutDuring } from "../calendar/ground-time.ts";
import { outlineContains, outlineOf } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Kind } from "../kinds/crop.ts";
import type { DayNumber } from "../model/day.ts";
import type { Bed, Layout, Plan, Planting } from "../model/plan.ts";
import { latestStart } from "./latest-start.ts";
import { type Placed, placeInBed } from "./place-planting.ts";

export interface FoundPlace {
  readonly placed: Placed;
  /** How and when it starts; undefined: nothing tells. */
  readonly start: Planting["start"];
  /** What is cleared before it starts, on whose ground it goes; null: on free ground. */
  readonly after: Planting | null;
}

export interface Wanted {
  readonly kind: Kind;
  readonly plants: number;
  /** A place it is laid about, on the sheet, metres. */
  readonly at?: Point | undefined;
  /** How and when it is to start; undefined: as the latest of its kind. */
  readonly start?: Planting["start"] | undefined;
}

/**
 * A place for plants of a kind: about `at`, else on the first free stretch. Laid on a planting that
 * is cleared, or where the bed is full until one is, it starts on the day that is cleared.
 */
export function findPlace(
  plan: Plan,
  layout: Layout,
  bed: Bed,
  { kind, plants, at, start }: Wanted,
): FoundPlace | null {
  const usual = start ?? latestStart(plan, layout, kind.id);
  const onto = at && clearedAt(layout, bed, at);
  if (onto) {
    const found = placeAfter(layout, bed, { kind, plants, at }, onto, usual);
    if (found) return found;
  }
  const free = placeInBed(layoutDuring(layout, { start: usual }), bed, kind, plants, at);
  if (free) return { placed: free, start: usual, after: null };
  for (const cleared of clearedIn(layout, bed)) {
    const found = placeAfter(layout, bed, { kind, plants, at }, cleared, usual);
    if (found) return found;
  }
  return null;
}

interface Cleared {
  readonly planting: Planting;
  readonly end: DayNumber;
}

/** Plantings of a bed that are cleared, the first first. */
function clearedIn(layout: Layout, bed: Bed): readonly Cleared[] {
  return layout.plantings
    .flatMap((planting): readonly Cleared[] => {
      const end = planting.bed === bed.id ? endOf(planting) : null;
      return end === null ? [] : [{ planting, end }];
    })
    .sort((a, b) => a.end - b.end);
}

/** The last to be cleared of those that lie at a place, if all that lie there are. */
function clearedAt(layout: Layout, bed: Bed, at: Point): Cleared | null {
  const isThere = ({ outline }: Planting) => outlineContains(outlineOf(outline), at.x, at.y);
  const stays = layout.plantings.some(
    (planting) => planting.bed === bed.id && endOf(planting) === null && isThere(planting),
  );
  if (stays) return null;
  return clearedIn(layout, bed).findLast(({ planting }) => isThere(planting)) ?? null;
}

function placeAfter(
  layout: Layout,
  bed: Bed,
  { kind, plants, at }: Wanted,
  { planting, end }: Cleared,
  usual: Planting["start"],
): FoundPlace | null {
  const { transplantedToFlower, sownToFlower } = kind.timing;
  const method = usual?.method ?? (transplantedToFlower && !sownToFlower ? "transplanted" : "sown");
  const start = { method, date: Math.max(end, usual?.date ?? end) };
  const placed = placeInBed(layoutDuring(layout, { start }), bed, kind, plants, at);
  return placed && { placed, start, after: planting };
}
