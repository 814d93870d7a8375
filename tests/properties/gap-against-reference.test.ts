/**
 * The shortest distance against JSTS DistanceOp, which measures every facet of one geometry
 * against every facet of the other. 20,000 pairs; WIDEBERTH_PAIRS=1000000 for a million.
 */
import { isDeepStrictEqual } from "node:util";
import { expect, test } from "vitest";
import { boxesOf } from "../../src/core/geometry/boxes.ts";
import { GAP_NUMBERS, gapAt, gapBetween, gapWithin } from "../../src/core/geometry/gap.ts";
import { gapInColumns } from "../../src/core/geometry/outline-columns.ts";
import { outlineOf } from "../../src/core/geometry/outline.ts";
import { pointDistance } from "../../src/core/geometry/point.ts";
import { referenceDistance, referenceOf, referencePoint } from "../support/reference-geometry.ts";
import { pairNames, type ShapePair, shapePair } from "../support/shape-pairs.ts";
import { seededRandom } from "./seeded-random.ts";

const PAIRS = Number(process.env["WIDEBERTH_PAIRS"] ?? 20_000);
const FIRST_SEED = Number(process.env["WIDEBERTH_SEED"] ?? 1);
/** Metres; far distances may differ by this share. */
const TOLERANCE = 1e-9;

const numbers = new Float64Array(GAP_NUMBERS + 1);

/** What is wrong with the measured gap of a pair, or null. */
function faultOf({ a, b }: ShapePair): string | null {
  const [outlineA, outlineB] = [outlineOf(a), outlineOf(b)];
  const [referenceA, referenceB] = [referenceOf(a), referenceOf(b)];
  const expected = referenceDistance(referenceA, referenceB);
  const tolerance = TOLERANCE * Math.max(1, expected);
  const isOff = (got: number, wanted: number) => !(Math.abs(got - wanted) <= tolerance);

  const gap = gapBetween(outlineA, outlineB);
  if (isOff(gap.distanceM, expected)) return `${gap.distanceM} m, the reference ${expected} m`;
  const back = gapBetween(outlineB, outlineA);
  // To the last bit: a whole-plan check measures once for both ways, a carried run each way.
  if (!isDeepStrictEqual(back, { distanceM: gap.distanceM, from: gap.to, to: gap.from })) {
    return `${gap.distanceM} m, back ${back.distanceM} m or between other points`;
  }
  if (!isDeepStrictEqual(gapWithin(outlineA, outlineB, gap.distanceM + 1e-6), gap)) {
    return `${gap.distanceM} m is not found within a micrometre more`;
  }
  const columns = gapInColumns([outlineB, outlineA], boxesOf([outlineB, outlineA]));
  const isFound = columns(1, 0, gap.distanceM + 1e-6, numbers, 1);
  if (!isFound || !isDeepStrictEqual(gapAt(numbers, 1), gap)) return "in columns it is another";
  if (columns(0, 1, gap.distanceM * 0.999, numbers, 0) && gap.distanceM > 1e-3) {
    return `${gap.distanceM} m is found within less in columns`;
  }
  const short = gapWithin(outlineA, outlineB, gap.distanceM * 0.999);
  if (short !== null && gap.distanceM > 1e-3) return `${gap.distanceM} m is found within less`;
  const apart = pointDistance(gap.from, gap.to);
  if (isOff(apart, gap.distanceM)) return `${gap.distanceM} m, but its points lie ${apart} m apart`;
  if (isOff(referenceDistance(referencePoint(gap.from), referenceA), 0)) return "from is not on a";
  if (isOff(referenceDistance(referencePoint(gap.to), referenceB), 0)) return "to is not on b";
  return null;
}

test(`${PAIRS} pairs are as far apart as the reference says, both ways, at the points reported`, () => {
  const faults: string[] = [];
  for (let index = 0; index < PAIRS && faults.length < 20; index += 1) {
    const seed = FIRST_SEED + index;
    const pair = shapePair(index, seededRandom(seed));
    const fault = faultOf(pair);
    if (fault !== null) {
      faults.push(`${pair.name}, seed ${seed}: ${fault} ${JSON.stringify([pair.a, pair.b])}`);
    }
  }
  expect(faults).toEqual([]);
  expect(PAIRS).toBeGreaterThan(pairNames.length);
}, 3_600_000);
