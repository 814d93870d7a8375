/** A large seed shelf, made up: lots of all kinds with a known life, most of them tested. */
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { dayFromCivil } from "../../src/core/model/day.ts";
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type { Lot, Plan } from "../../src/core/model/plan.ts";

export const SHELF_LOTS = 5000;
export const today = dayFromCivil({ year: 2027, month: 1, day: 15 });
const kinds = cropBook().kinds.filter(({ seedLifeYears }) => seedLifeYears !== undefined);

export function shelfPlan(): Plan {
  const varieties = Array.from({ length: 500 }, (_, index) => ({
    id: `v${index}`,
    name: `Variety ${index}`,
    kind: kinds[index % kinds.length]?.id ?? "tomato",
  }));
  const lots = Array.from({ length: SHELF_LOTS }, (_, index): Lot => {
    const sown = 50 + (index % 3) * 50;
    const harvestYear = 2015 + (index % 9);
    // Nothing is moved or tested before it was harvested.
    const first = dayFromCivil({ year: harvestYear, month: 10, day: 1 });
    return {
      id: `lot-${index}`,
      code: `L-${index}`,
      variety: `v${index % varieties.length}`,
      state: "in stock",
      harvestYear,
      stored: [
        { place: "room" },
        { place: "box", from: Math.max(first, today - 900 + (index % 400)) },
      ],
      ...(index % 3 === 0
        ? {}
        : {
            tests: [
              {
                id: "t1",
                date: Math.max(first, today - (index % 1500)),
                sown,
                sprouted: sown - (index % 40),
              },
            ],
          }),
    };
  });
  return {
    ...emptyPlan("shelf", 2027),
    varieties,
    lots,
    storagePlaces: [
      {
        id: "room",
        name: "Room",
        conditions: [
          { fromMonth: 5, temperatureC: 20, humidityPct: 55 },
          { fromMonth: 10, temperatureC: 12, humidityPct: 45 },
        ],
      },
      { id: "box", name: "Box", conditions: [{ fromMonth: 1, temperatureC: -18, moisturePct: 6 }] },
    ],
  };
}
