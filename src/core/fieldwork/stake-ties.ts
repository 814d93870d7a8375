/**
 * Where the stakes of the set-out table are driven: tapes from two fixed marks of the ground to
 * stake P, and a check from one of them to stake Q. Fixed marks are what stays where it is drawn:
 * corners of buildings, trunks, corners of fences and of the site's edge.
 */
import { boundsCentre } from "../geometry/bounds.ts";
import { outlineOf, shapeCorners } from "../geometry/outline.ts";
import { type Point, directionDeg, pointDistance } from "../geometry/point.ts";
import type { LengthUnit } from "../model/length.ts";
import type { Plan } from "../model/plan.ts";
import { type SetOut, toTape } from "./set-out.ts";
import { compassWord } from "../words/compass-words.ts";
import { markWords } from "./job-words.ts";

export interface FixedMark {
  /** `north-west corner of Tool shed`. */
  readonly name: string;
  readonly place: Point;
}

export interface StakeTies {
  readonly marks: readonly [FixedMark, FixedMark];
  /** Tapes from each mark to stake P, and from the first to stake Q for a check; metres, as taped. */
  readonly toP: readonly [number, number];
  readonly checkToQ: number;
  /** On which side of the line between the marks stake P lies: the tapes meet on both. */
  readonly side: string;
}

/** Tapes that cross flatter than this at the stake let it slide; degrees. */
const FLATTEST_DEG = 30;
/** Farther than this many baselines nobody tapes. */
const MOST_BASELINES = 4;

/** Null where the plan draws fewer than two marks in reach whose tapes cross well. */
export function stakeTies(
  plan: Pick<Plan, "site" | "surroundings">,
  { p, q, baselineM }: Pick<SetOut, "p" | "q" | "baselineM">,
  unit: LengthUnit,
): StakeTies | null {
  const reach = Math.max(baselineM, 5) * MOST_BASELINES;
  const marks = fixedMarks(plan).filter(({ place }) => pointDistance(place, p) <= reach);
  let best: { readonly pair: readonly [FixedMark, FixedMark]; readonly cost: number } | null = null;
  for (const [index, one] of marks.entries()) {
    for (const other of marks.slice(index + 1)) {
      const angle = crossingDeg(one.place, other.place, p);
      if (angle < FLATTEST_DEG) continue;
      const lengths = [one, other].map(({ place }) => pointDistance(place, p));
      // A millimetre of tape moves the stake by one over the sine of the crossing.
      const cost = lengths.reduce((sum, length) => sum + length, 0) / Math.sin(toRadians(angle));
      if (best === null || cost < best.cost - 1e-9) best = { pair: [one, other], cost };
    }
  }
  if (best === null) return null;
  const [one, other] = best.pair;
  return {
    marks: best.pair,
    toP: [toTape(pointDistance(one.place, p), unit), toTape(pointDistance(other.place, p), unit)],
    checkToQ: toTape(pointDistance(one.place, q), unit),
    side: compassWord(sideDeg(one.place, other.place, p) + plan.site.upBearingDeg),
  };
}

/** Square to the line between two marks, towards a place; degrees clockwise from the sheet's up. */
function sideDeg(one: Point, other: Point, place: Point): number {
  const along = directionDeg(one, other);
  const turn = (directionDeg(one, place) - along + 360) % 360;
  return along + (turn < 180 ? 90 : 270);
}

/** Angle between the two tapes at the stake, 0 to 90 degrees. */
function crossingDeg(one: Point, other: Point, stake: Point): number {
  const turn = Math.abs(directionDeg(stake, one) - directionDeg(stake, other)) % 180;
  return Math.min(turn, 180 - turn);
}

function toRadians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

function fixedMarks({ site, surroundings }: Pick<Plan, "site" | "surroundings">) {
  const cornersOf = (shape: (typeof surroundings)[number]["outline"], name: string) => {
    const middle = boundsCentre(outlineOf(shape).bounds);
    return shapeCorners(shape).map((place): FixedMark => {
      const side = compassWord(directionDeg(middle, place) + site.upBearingDeg);
      return { name: markWords.corner(side, name), place };
    });
  };
  return [
    ...surroundings.flatMap((item): readonly FixedMark[] => {
      if (item.what === "building" || item.what === "fence") {
        const name = item.label === "" ? markWords.unnamed[item.what] : item.label;
        return cornersOf(item.outline, name);
      }
      if (item.what !== "tree") return [];
      const place = boundsCentre(outlineOf(item.outline).bounds);
      return [
        {
          name: item.label === "" ? markWords.unnamed.tree : markWords.trunk(item.label),
          place,
        },
      ];
    }),
    ...(site.outline ? cornersOf(site.outline, markWords.siteEdge) : []),
  ];
}
