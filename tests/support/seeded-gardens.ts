/** Gardens of 10 to 60 plantings from a seed, planted without a thought for what crosses. */
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { sensibleStarts } from "../../src/core/arrange/sensible-starts.ts";
import type { Bed, Plan, Planting, RectangleShape } from "../../src/core/model/plan.ts";
import { bed, day, firstLayout, gardenPlan, variety } from "./arrange-garden.ts";
import { seeded } from "../bench/field.ts";

const KINDS = [
  "tomato",
  "common-bean",
  "pea",
  "lettuce",
  "pepper",
  "cucumber",
  "summer-squash",
  "winter-squash",
  "beet",
  "carrot",
  "maize",
  "radish",
] as const;

/** Number of plantings of the 20 gardens, by seed from 1. */
export const gardenSizes: readonly number[] = Array.from({ length: 20 }, (_, index) =>
  Math.round(10 + (index * 50) / 19),
);

export function seededGarden(seed: number, plantings: number): Plan {
  const next = seeded(seed);
  const pick = <T>(list: readonly T[]) => list[Math.floor(next() * list.length)] as T;
  const kinds = Array.from({ length: 4 + Math.round(plantings / 10) }, () => pick(KINDS));
  const varieties = Array.from({ length: plantings }, (_, index) =>
    variety(
      `v${index}`,
      pick(kinds),
      next() < 0.3 ? { isolationM: 3 + Math.round(next() * 20) } : {},
    ),
  );
  const beds = Array.from({ length: Math.ceil(plantings / 2) + 2 }, (_, index) =>
    bed(`b${index}`, (index % 8) * 2, Math.floor(index / 8) * 12, 1.2, 9),
  );
  const site = {
    name: "Garden",
    upBearingDeg: 0,
    lastSpringFrost: day("2027-05-10"),
    firstAutumnFrost: day("2027-10-12"),
  };
  const empty = gardenPlan(varieties, beds, [], { site });
  const book = cropBook();
  const laid = varieties.map((each, index): Planting => {
    const kind = book.kind(each.kind);
    if (!kind) throw new Error(`no kind ${each.kind}`);
    const home = beds[Math.floor(index / 2)] as Bed;
    const { x, y } = home.outline as RectangleShape;
    const start = sensibleStarts(empty, firstLayout(empty), each, kind).usual;
    return {
      id: `p${index}`,
      code: `${home.code}-${(index % 2) + 1}`,
      variety: each.id,
      bed: home.id,
      outline: {
        shape: "rectangle",
        x,
        y: y + (index % 2 === 0 ? -2.25 : 2.25),
        widthM: 1.2,
        lengthM: 1.5 + Math.round(next() * 6) / 2,
        turnDeg: 0,
      },
      purpose: next() < 0.85 ? "seed" : "food",
      flowering: "yes",
      cover: "none",
      plants: 6 + Math.floor(next() * 40),
      rows: 2,
      ...(start ? { start } : {}),
      ...(next() < 0.05 ? { locked: true } : {}),
    };
  });
  return gardenPlan(varieties, beds, laid, { site });
}
