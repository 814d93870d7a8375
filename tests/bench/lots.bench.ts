/** The band of every lot on a large shelf, and what to renew of it, against one frame of a screen. */
import { expect, test } from "vitest";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { estimateOf } from "../../src/core/lots/estimate.ts";
import { renewals } from "../../src/core/lots/renewal.ts";
import { dayFromCivil } from "../../src/core/model/day.ts";
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type { Lot, Plan } from "../../src/core/model/plan.ts";
import { reportRow } from "./report.ts";
import { bestMs } from "./timing.ts";

const LOTS = 5000;
const FRAME_MS = 1000 / 60;
const book = cropBook();
const kinds = book.kinds.filter(({ seedLifeYears }) => seedLifeYears !== undefined);
const today = dayFromCivil({ year: 2027, month: 1, day: 15 });

function shelf(): Plan {
  const varieties = Array.from({ length: 500 }, (_, index) => ({
    id: `v${index}`,
    name: `Variety ${index}`,
    kind: kinds[index % kinds.length]?.id ?? "tomato",
  }));
  const lots = Array.from({ length: LOTS }, (_, index): Lot => {
    const sown = 50 + (index % 3) * 50;
    return {
      id: `lot-${index}`,
      code: `L-${index}`,
      variety: `v${index % varieties.length}`,
      state: "in stock",
      harvestYear: 2015 + (index % 11),
      stored: [{ place: "room" }, { place: "box", from: today - 900 + (index % 400) }],
      ...(index % 3 === 0
        ? {}
        : {
            tests: [
              { id: "t1", date: today - (index % 1500), sown, sprouted: sown - (index % 40) },
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

test("the bands of 5,000 lots within one frame", () => {
  const plan = shelf();
  const kindOf = new Map(plan.varieties.map(({ id, kind }) => [id, book.kind(kind)]));
  // Each run gets lots of its own: what is known of a lot is kept with it.
  const { ms } = bestMs(9, () =>
    plan.lots.map((lot) => {
      const kind = kindOf.get(lot.variety);
      return kind ? estimateOf({ ...lot }, kind, plan.storagePlaces)?.at(today) : undefined;
    }),
  );
  const { ms: renewMs, made } = bestMs(9, () => renewals({ ...plan }, book, today));
  expect(made.length).toBeGreaterThan(0);
  const size = `${LOTS.toLocaleString("en")} lots`;
  const section = "Seed lots";
  reportRow({
    section,
    size,
    what: "bands of all, as a part of one frame of a 60 Hz screen",
    value: ms / FRAME_MS,
    unit: "x",
    budget: "at most 1 x",
    isMet: ms <= FRAME_MS,
  });
  reportRow({
    section,
    size,
    what: "what to renew, as a part of one frame",
    value: renewMs / FRAME_MS,
    unit: "x",
  });
});
