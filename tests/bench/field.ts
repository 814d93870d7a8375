/** Made-up fields of many plantings for benchmarks, the same for the same seed. */
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type { Plan, Planting, Variety } from "../../src/core/model/plan.ts";

export const book = cropBook();

/** A small seeded generator (mulberry32), numbers from 0 to below 1. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

const KINDS = [
  "tomato",
  "lettuce",
  "common-bean",
  "beet",
  "carrot",
  "maize",
  "summer-squash",
  "onion",
];

/** Distance every planting of a made-up field needs, metres. */
export const REQUIRED_M = 10;

/**
 * Plantings of 1 by 3 m, each 10 m from what it crosses with by requirement, spread so thinly that
 * each has about eight neighbours within its distance.
 * @param groups crossing groups the plantings are dealt to, 1 to 8
 */
export function fieldPlan(count: number, groups: number, seed = 1): Plan {
  const next = seeded(seed);
  const side = Math.sqrt((count * Math.PI * 13 ** 2) / (8 * groups));
  const varieties: readonly Variety[] = Array.from({ length: count }, (_, index) => ({
    id: `v${index}`,
    name: `Variety ${index}`,
    kind: KINDS[index % groups] ?? "tomato",
    isolationM: REQUIRED_M,
  }));
  const plantings: readonly Planting[] = varieties.map((variety, index) => ({
    id: `p${index}`,
    code: `P-${index}`,
    variety: variety.id,
    outline: {
      shape: "rectangle",
      x: next() * side,
      y: next() * side,
      widthM: 1,
      lengthM: 3,
      turnDeg: next() * 180,
    },
    purpose: "seed",
    flowering: "yes",
    cover: "none",
    bloom: { first: 21_000, last: 21_040 },
  }));
  return {
    ...emptyPlan("field", 2027),
    varieties,
    layouts: [{ id: "layout-1", name: "Layout 1", beds: [], plantings }],
  };
}
