/**
 * What the seed list still wants, as plots to be laid: each variety in one piece where any bed takes
 * it so, else in as few as can be.
 */
import { lengthFor, placeInBed } from "../beds/place-planting.ts";
import { layoutDuring } from "../calendar/ground-time.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { drawnIds, idAfter, nextId } from "../edits/edit.ts";
import { plantsWanted } from "../edits/new-planting.ts";
import type { Kind } from "../kinds/crop.ts";
import type { DayNumber } from "../model/day.ts";
import type { Bed, Layout, Planting, Variety } from "../model/plan.ts";
import { type SensibleStarts, sensibleStarts } from "./sensible-starts.ts";

export interface SeedPart {
  /** Id of the planting it becomes; the same in every layout. */
  readonly id: string;
  readonly variety: Variety;
  readonly kind: Kind;
  readonly plants: number;
  readonly start: Planting["start"];
}

/** A variety with its plots. */
export interface WantedVariety {
  readonly variety: Variety;
  readonly kind: Kind;
  readonly starts: SensibleStarts;
  /** Its parts, by place in the list of all. */
  readonly parts: readonly number[];
}

/** Why plants of a variety are not laid. */
export type WhyLeft =
  | { readonly why: "no-room" }
  | { readonly why: "unknown-kind" }
  | { readonly why: "too-late"; readonly ripe: DayNumber | null; readonly frost: DayNumber }
  /** It would cross with these, and nothing allowed keeps them apart. */
  | ({ readonly why: "waits" } & InTheWay);

/** Names of varieties and labels of surroundings that something would cross with. */
export interface InTheWay {
  readonly against: readonly string[];
  /** Whether all of them are surroundings, which another year does not take away. */
  readonly isAround: boolean;
}

export interface LeftVariety {
  readonly variety: Variety;
  /** Plants that are not laid. */
  readonly plants: number;
  readonly reason: WhyLeft;
}

export interface SeedParts {
  readonly parts: readonly SeedPart[];
  readonly wanted: readonly WantedVariety[];
  /** What cannot be laid whatever is done. */
  readonly left: readonly LeftVariety[];
}

/** One variety is split up into so many plots at most. */
const MOST_PARTS = 6;

export function seedParts({ plan, layout, book }: CheckedLayout): SeedParts {
  const parts: SeedPart[] = [];
  const wanted: WantedVariety[] = [];
  const left: LeftVariety[] = [];
  const taken = new Set([...plan.layouts, layout].flatMap((one) => drawnIds(plan, one)));
  let id = nextId("p", taken);
  for (const variety of plan.varieties) {
    const kind = book.kind(variety.kind);
    const missing = missingOf(layout, variety, kind);
    if (missing === 0) continue;
    if (!kind) {
      left.push({ variety, plants: missing, reason: { why: "unknown-kind" } });
      continue;
    }
    const starts = sensibleStarts(plan, layout, variety, kind);
    if (starts.tooLate) {
      const reason = { why: "too-late", ...starts.tooLate } as const;
      left.push({ variety, plants: missing, reason });
      continue;
    }
    const sizes = sizesOf(layout, kind, missing, starts.usual);
    const own: number[] = [];
    for (const plants of sizes) {
      own.push(parts.push({ id, variety, kind, plants, start: starts.usual }) - 1);
      taken.add(id);
      id = idAfter("p", id, taken);
    }
    if (own.length > 0) wanted.push({ variety, kind, starts, parts: own });
    const rest = missing - sizes.reduce((sum, plants) => sum + plants, 0);
    if (rest > 0) left.push({ variety, plants: rest, reason: { why: "no-room" } });
  }
  return { parts, wanted, left };
}

/** Plants still to lay; of a variety that names no number, once, what one is placed with. */
function missingOf(layout: Layout, variety: Variety, kind: Kind | undefined): number {
  const placed = layout.plantings.filter((planting) => planting.variety === variety.id);
  // What waits for another year is laid by hand alone, and no longer waits once it is.
  if (variety.waits === true && placed.length === 0) return 0;
  if (variety.wantedPlants === undefined)
    return placed.length > 0 ? 0 : plantsWanted(layout, variety, kind);
  const sum = placed.reduce((total, { plants = 0 }) => total + plants, 0);
  return Math.max(0, variety.wantedPlants - sum);
}

/** One piece where a bed takes all; else as few as take it, as even as the beds allow. */
function sizesOf(
  layout: Layout,
  kind: Kind,
  plants: number,
  start: Planting["start"],
): readonly number[] {
  const during = layoutDuring(layout, { start });
  const rooms = layout.beds.map((bed) => roomIn(during, bed, kind, plants)).sort((a, b) => b - a);
  let count = 1;
  const sum = () => rooms.slice(0, count).reduce((total, room) => total + room, 0);
  while (count < Math.min(MOST_PARTS, rooms.length) && sum() < plants) count += 1;
  return evenly(Math.min(plants, sum()), rooms.slice(0, count));
}

/** Plants that a bed takes in one piece; a piece shorter than one plant's place takes none. */
function roomIn(layout: Layout, bed: Bed, kind: Kind, plants: number): number {
  const placed = placeInBed(layout, bed, kind, plants);
  if (!placed || placed.outline.shape !== "rectangle") return placed?.plants ?? 0;
  const least = lengthFor(kind, placed.outline.widthM, 1);
  return placed.outline.lengthM >= least - 1e-6 ? placed.plants : 0;
}

/** As even as the rooms allow, the largest first. */
function evenly(plants: number, rooms: readonly number[]): readonly number[] {
  const smallestFirst = [...rooms].reverse();
  let rest = plants;
  const sizes = smallestFirst.map((room, index) => {
    const size = Math.min(room, Math.ceil(rest / (rooms.length - index)));
    rest -= size;
    return size;
  });
  return sizes.filter((size) => size > 0).sort((a, b) => b - a);
}
