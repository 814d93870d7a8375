/** What is wrong with plots where they lie: too near each other, no room, shade, ground they shun. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Stand } from "../checks/stand.ts";
import { bloomSetting } from "../calendar/growing.ts";
import { gapBetween } from "../geometry/gap.ts";
import type { Outline } from "../geometry/outline.ts";
import { distanceToKeep, isUntold } from "../remedies/ground-problem.ts";
import { type RotationWishes, rotationWishes, wishesMissed } from "./rotation-wishes.ts";
import type { SeedPart } from "./seed-parts.ts";
import { isTall } from "./tall-kinds.ts";

/** Two that are to lie apart. */
interface Apart {
  readonly other: number;
  readonly metres: number;
}

export interface LayOutTrouble {
  /** Of one part where it lies, or of one that has no room, with what stands. */
  readonly ofOne: (part: number, outline: Outline | null) => number;
  /** Of two parts. */
  readonly ofTwo: (a: number, outlineA: Outline, b: number, outlineB: Outline) => number;
  /** Parts that each part has anything to do with. */
  readonly others: readonly (readonly number[])[];
}

/** What counts, for a pair too near that counts 1. No source; our choice. */
const WEIGHT = {
  /** No room at all, more than any crossing; and for each plant, so that the many go first. */
  noRoom: 40,
  noRoomPlant: 0.05,
  /** The missing share of a distance. */
  shortfall: 2,
  /** Any distance, so that ground to spare is used. */
  spread: 0.06,
  spreadRoomiest: 4,
  /** Species that rarely cross, side by side. */
  rarely: 0.2,
  /** Plots of one variety apart, for the length of the garden. */
  split: 1,
  shade: 0.25,
  volunteers: 0.6,
  kin: 0.15,
} as const;

/** Roomiest is twice the distance required: more makes seed no purer. No source; our choice. */
const ROOMY = 2;

/** So far apart species that rarely cross are called apart enough here, metres. No source; our choice. */
const RARELY_M = 10;

function doRarelyCross(a: Stand, b: Stand): boolean {
  return a.kind.group === b.kind.group && a.book.relation(a.kind, b.kind).relation === "rarely";
}

/**
 * @param stands what each part would be, wherever it lies
 * @param isRoomiest whether all crossing ones are to lie apart, whatever time does
 */
export function layOutTrouble(
  checked: CheckedLayout,
  parts: readonly SeedPart[],
  stands: readonly Stand[],
  isRoomiest: boolean,
): LayOutTrouble {
  const { plan, result } = checked;
  const spanM = spanOf([...result.bedOutlines.values()].map(({ outline }) => outline));
  const keep = (a: Stand, b: Stand) => {
    const metres = isRoomiest ? distanceToKeep(timeless(a), timeless(b)) : distanceToKeep(a, b);
    return metres === 0 && isUntold(a, b) ? spanM : metres;
  };
  const { apart, kin, rarely } = bonds(parts, stands, keep);
  const fixed = stands.map((stand) =>
    result.stands.flatMap((other) => {
      const metres = keep(stand, other);
      return metres > 0 ? [{ outline: other.outline, metres }] : [];
    }),
  );
  const wishes = stands.map((stand) => rotationWishes(stand, plan));
  const sunward = sunwardOf(checked);
  const spread = isRoomiest ? WEIGHT.spreadRoomiest : WEIGHT.spread;
  const near = (metres: number, distanceM: number) =>
    (distanceM < metres ? 1 + (WEIGHT.shortfall * (metres - distanceM)) / metres : 0) +
    spread * Math.max(0, 1 - distanceM / Math.min(ROOMY * metres, Math.max(metres, spanM))) ** 2;
  return {
    others: apart.map((list, index) => [
      ...new Set([
        ...list.map(({ other }) => other),
        ...(kin[index] ?? []),
        ...(rarely[index] ?? []),
      ]),
    ]),
    ofOne: (part, outline) => {
      if (!outline) return noRoom(parts, part);
      const shade = isTall((parts[part] as SeedPart).kind) ? WEIGHT.shade * sunward(outline) : 0;
      return (fixed[part] ?? []).reduce(
        (sum, { outline: other, metres }) =>
          sum + near(metres, gapBetween(outline, other).distanceM),
        shade + wishTrouble(wishes[part] as RotationWishes, outline),
      );
    },
    ofTwo: (a, outlineA, b, outlineB) => {
      const { distanceM } = gapBetween(outlineA, outlineB);
      if (kin[a]?.includes(b) === true) return (WEIGHT.split * distanceM) / spanM;
      const metres = apart[a]?.find(({ other }) => other === b)?.metres ?? 0;
      if (metres > 0) return near(metres, distanceM);
      return WEIGHT.rarely * Math.max(0, 1 - distanceM / RARELY_M);
    },
  };
}

interface Bonds {
  /** For each part those it must keep away from. */
  readonly apart: readonly (readonly Apart[])[];
  /** Other plots of its variety. */
  readonly kin: readonly (readonly number[])[];
  readonly rarely: readonly (readonly number[])[];
}

function bonds(
  parts: readonly SeedPart[],
  stands: readonly Stand[],
  keep: (a: Stand, b: Stand) => number,
): Bonds {
  const others = <T>(of: (a: number, b: number) => readonly T[]) =>
    parts.map((_, a) => parts.flatMap((__, b) => (a === b ? [] : of(a, b))));
  const standAt = (index: number) => stands[index] as Stand;
  return {
    apart: others((a, b): readonly Apart[] => {
      const metres = keep(standAt(a), standAt(b));
      return metres > 0 ? [{ other: b, metres }] : [];
    }),
    kin: others((a, b) => (parts[a]?.variety === parts[b]?.variety ? [b] : [])),
    rarely: others((a, b) => (doRarelyCross(standAt(a), standAt(b)) ? [b] : [])),
  };
}

/** Only whether there is room. */
export function roomAlone(parts: readonly SeedPart[]): LayOutTrouble {
  return {
    others: parts.map(() => []),
    ofOne: (part, outline) => (outline ? 0 : noRoom(parts, part)),
    ofTwo: () => 0,
  };
}

function noRoom(parts: readonly SeedPart[], part: number): number {
  return WEIGHT.noRoom + WEIGHT.noRoomPlant * (parts[part]?.plants ?? 0);
}

/** A stand that flowers whenever it likes, uncovered. */
function timeless(stand: Stand): Stand {
  return { ...stand, receives: null, sheds: null, cover: "none" };
}

function wishTrouble(wishes: RotationWishes, outline: Outline): number {
  const { volunteers, marks, kin } = wishesMissed(wishes, outline);
  return (volunteers + marks) * WEIGHT.volunteers + kin * WEIGHT.kin;
}

/** How far towards the noon sun ground lies among all beds: 0 at the shady end to 1. */
function sunwardOf({ plan, result }: CheckedLayout): (outline: Outline) => number {
  const { hemisphere } = bloomSetting(plan);
  if (hemisphere === "none") return () => 0;
  // Clockwise from up the sheet.
  const north = (-plan.site.upBearingDeg * Math.PI) / 180;
  const sign = hemisphere === "north" ? -1 : 1;
  const along = ({ bounds: { minX, maxX, minY, maxY } }: Outline) =>
    (sign * (Math.sin(north) * (minX + maxX) + Math.cos(north) * (minY + maxY))) / 2;
  const all = [...result.bedOutlines.values()].map(({ outline }) => along(outline));
  const [low, high] = [Math.min(...all), Math.max(...all)];
  return (outline) =>
    high - low < 0.1 ? 0 : Math.min(1, Math.max(0, (along(outline) - low) / (high - low)));
}

function spanOf(outlines: readonly Outline[]): number {
  const xs = outlines.flatMap(({ bounds }) => [bounds.minX, bounds.maxX]);
  const ys = outlines.flatMap(({ bounds }) => [bounds.minY, bounds.maxY]);
  return Math.max(
    1,
    Math.hypot(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)),
  );
}
