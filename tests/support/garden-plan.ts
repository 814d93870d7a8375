/** A small valid plan with something of everything; names and people are invented. */
import { dayFromCivil } from "../../src/core/model/day.ts";
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type { Bed, Plan, Planting, Variety } from "../../src/core/model/plan.ts";

export const LAYOUT = "layout-1";

const VARIETIES: readonly Variety[] = [
  { id: "v1", name: "Amber Lantern", kind: "tomato" },
  { id: "v2", name: "Old Ferry", kind: "tomato", isolationM: 12 },
  { id: "v3", name: "Tarn Coral", kind: "beet" },
  { id: "v4", name: "Silverleaf Tarn", kind: "chard" },
  { id: "v5", name: "Long Meadow", kind: "carrot" },
  { id: "v6", name: "Kettle Dun", kind: "common-bean" },
];

export function bed(number: number): Bed {
  return {
    id: `bed-${number}`,
    code: `B${String(number).padStart(2, "0")}`,
    outline: { shape: "rectangle", x: number * 4, y: 0, widthM: 1.2, lengthM: 12, turnDeg: 0 },
  };
}

export function planting(
  number: number,
  variety = `v${(number % VARIETIES.length) + 1}`,
): Planting {
  const bedNumber = Math.ceil(number / 2);
  return {
    id: `planting-${number}`,
    code: `B${String(bedNumber).padStart(2, "0")}-${((number - 1) % 2) + 1}`,
    variety,
    bed: `bed-${bedNumber}`,
    outline: {
      shape: "rectangle",
      x: bedNumber * 4,
      y: number % 2 === 0 ? 3 : -3,
      widthM: 1.2,
      lengthM: 4,
      turnDeg: 0,
    },
    purpose: "seed",
    flowering: "yes",
    start: {
      method: "transplanted",
      date: dayFromCivil({ year: 2027, month: 5, day: 10 + (number % 3) }),
    },
    plants: 20,
    cover: "none",
  };
}

/** Beds side by side, two plantings in each. */
export function gardenPlan(plantings = 6): Plan {
  const beds = Math.ceil(plantings / 2);
  return {
    ...emptyPlan("garden", 2027),
    title: "Garden",
    site: { name: "Fallow End", upBearingDeg: 0 },
    varieties: VARIETIES,
    surroundings: [
      {
        id: "wild-1",
        label: "wild carrot, roadside",
        what: "pollen",
        outline: { shape: "point", x: 30, y: 20 },
        kind: "wild-carrot",
        flowering: "yes",
        cover: "none",
      },
    ],
    layouts: [
      {
        id: LAYOUT,
        name: "Layout 1",
        beds: Array.from({ length: beds }, (_, index) => bed(index + 1)),
        plantings: Array.from({ length: plantings }, (_, index) => planting(index + 1)),
      },
    ],
  };
}
