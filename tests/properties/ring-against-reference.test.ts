/** Which rings are outlines of a piece of ground, against JSTS IsValidOp. */
import { expect, test, vi } from "vitest";
import { type Corner, ringProblem, signedArea } from "../../src/core/model/ring.ts";
import { isReferenceValid } from "../support/reference-geometry.ts";
import { type SeededRandom, seededRandom } from "./seeded-random.ts";

vi.setConfig({ testTimeout: 60_000 });

const RINGS = 20_000;

/** Rings on a coarse grid: many touch, repeat, fold back and cross. */
function gridRing(random: SeededRandom): readonly Corner[] {
  return Array.from({ length: random.whole(3, 8) }, (): Corner => [
    random.whole(0, 5),
    random.whole(0, 5),
  ]);
}

function freeRing(random: SeededRandom): readonly Corner[] {
  const far = random.pick([0, 100, 10_000]);
  return Array.from({ length: random.whole(3, 7) }, (): Corner => [
    far + random.between(-5, 5),
    far + random.between(-5, 5),
  ]);
}

/** A ring with corners in order of their direction from a middle: always simple. */
function starRing(random: SeededRandom): readonly Corner[] {
  const count = random.whole(3, 30);
  return Array.from({ length: count }, (_, index): Corner => {
    const angle = ((index + random.between(0.1, 0.9)) / count) * 2 * Math.PI;
    const reach = random.between(1, 5);
    return [reach * Math.cos(angle), reach * Math.sin(angle)];
  });
}

function repeatsCorner(ring: readonly Corner[]): boolean {
  return ring.some(([x, y], index) => {
    const [nextX, nextY] = ring[(index + 1) % ring.length] as Corner;
    return x === nextX && y === nextY;
  });
}

test("rings are refused exactly when the reference calls them no valid outline", () => {
  const faults: string[] = [];
  let valid = 0;
  for (let seed = 1; seed <= RINGS; seed += 1) {
    const random = seededRandom(seed);
    const ring = random.pick([gridRing, gridRing, freeRing, starRing])(random);
    // A corner given twice running is a slip we refuse; the reference lets it pass.
    if (repeatsCorner(ring)) {
      expect(ringProblem(ring)).toMatch(/twice in a row/);
      continue;
    }
    const isValid = isReferenceValid(ring);
    if (isValid) valid += 1;
    const problem = ringProblem(ring);
    if ((problem === null) !== isValid) {
      faults.push(`seed ${seed}: ${problem ?? "no problem"} ${JSON.stringify(ring)}`);
    }
  }
  expect(faults).toEqual([]);
  expect(valid).toBeGreaterThan(RINGS / 5);
  expect(valid).toBeLessThan(RINGS * 0.8);
});

test("the signed area is the same from every corner on and turns with the direction", () => {
  for (let seed = 1; seed <= 500; seed += 1) {
    const ring = starRing(seededRandom(seed));
    const area = signedArea(ring);
    expect(area).toBeGreaterThan(0);
    expect(signedArea([...ring.slice(1), ring[0] as Corner])).toBeCloseTo(area, 9);
    expect(signedArea([...ring].reverse())).toBeCloseTo(-area, 9);
  }
});

test("rings of thousands of corners are judged as by comparing every pair of edges", () => {
  for (let seed = 1; seed <= 60; seed += 1) {
    const random = seededRandom(seed);
    const count = random.whole(41, 400);
    const ring = Array.from({ length: count }, (_, index): Corner => {
      const angle = (index / count) * 2 * Math.PI;
      const reach = random.between(4, 5);
      return [reach * Math.cos(angle), reach * Math.sin(angle)];
    });
    expect(ringProblem(ring)).toBeNull();
    // One corner goes astray: the same edges are named as among few.
    const astray = ring.with(random.whole(0, count - 1), [random.between(-6, 6), 0.123]);
    expect(ringProblem(astray) === null).toBe(isReferenceValid(astray));
  }
  // The most corners an outline may have: every pair compared would be two million.
  const comb = Array.from({ length: 2000 }, (_, index): Corner => [
    Math.floor(index / 2) * 0.01,
    index % 4 === 1 || index % 4 === 2 ? 1 : 0.1,
  ]);
  expect(ringProblem([...comb, [10, 0], [0, 0]])).toBeNull();
});
