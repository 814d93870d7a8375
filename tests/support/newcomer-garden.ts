/**
 * A newcomer's garden of our own scenario: 24 varieties of invented names, 14 beds of which one is
 * curved, on 34 by 17 m, with the frosts of a mild inland place. Nothing is placed.
 */
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type { Bed, Plan, Variety } from "../../src/core/model/plan.ts";
import { bed, day } from "./arrange-garden.ts";

/** Name, kind, plants wanted; as they stand in the CSV. */
export const newcomerRows: readonly (readonly [string, string, number])[] = [
  ["Amber Fen", "tomato", 8],
  ["Old Weir", "tomato", 8],
  ["Dusk Pippin", "tomato", 6],
  ["Tarn Fire", "tomato", 6],
  ["Kettle Brown", "common bean", 40],
  ["Hob Stripe", "common bean", 40],
  ["Wren Egg", "common bean", 30],
  ["Scarlet Rail", "runner bean", 24],
  ["Low Bield", "pea", 60],
  ["Thorn Gate", "pea", 60],
  ["Slate Ear", "lettuce", 24],
  ["Fold Green", "lettuce", 24],
  ["Mire Red", "lettuce", 20],
  ["Crag Pale", "cucumber", 10],
  ["Moss Lantern", "summer squash", 8],
  ["Harvest Moon Rake", "pepo pumpkin", 8],
  ["Garth Flint", "maize", 60],
  ["Cream Lintel", "sweet corn", 40],
  ["Ruddle", "beet", 30],
  ["Beck Stem", "chard", 30],
  ["Nantling", "carrot", 40],
  ["Ember Horn", "pepper", 10],
  ["Nightjar", "eggplant", 8],
  ["Sun Kist Lane", "sunflower", 20],
];

/** A bed that bends, with the corners of a drawn curve. */
export const curvedBed: Bed = {
  id: "b14",
  code: "C01",
  outline: { shape: "polygon", corners: bend() },
};

function bend(): [number, number][] {
  const at = (radius: number, step: number): [number, number] => {
    const angle = (Math.PI / 2) * (step / 8);
    return [24 + radius * Math.cos(angle), 6 + radius * Math.sin(angle)];
  };
  const outer = Array.from({ length: 9 }, (_, step) => at(8, step));
  const inner = Array.from({ length: 9 }, (_, step) => at(6.6, 8 - step));
  return [...outer, ...inner];
}

export function newcomerGarden(more: Partial<Plan> = {}): Plan {
  const kindIds = new Map([
    ["common bean", "common-bean"],
    ["pepo pumpkin", "pumpkin"],
  ]);
  const beds = Array.from({ length: 13 }, (_, index) =>
    index < 7
      ? { ...bed(`b${index + 1}`, index * 1.8, 0, 1.2, 9), code: `A0${index + 1}` }
      : { ...bed(`b${index + 1}`, (index - 7) * 1.8, 11, 1.2, 8), code: `B0${index - 6}` },
  );
  const varieties = newcomerRows.map(([name, kind, wantedPlants], index): Variety => ({
    id: `v${index + 1}`,
    name,
    kind: kindIds.get(kind) ?? kind.replaceAll(" ", "-"),
    wantedPlants,
  }));
  const base = emptyPlan("newcomer", 2027);
  return {
    ...base,
    site: {
      ...base.site,
      lastSpringFrost: day("2027-05-10"),
      firstAutumnFrost: day("2027-10-12"),
    },
    varieties,
    layouts: [{ id: "layout-1", name: "Layout 1", beds: [...beds, curvedBed], plantings: [] }],
    ...more,
  };
}
