/** What a season's plots took from the shelf, against numbers put into the plan by hand. */
import { expect, test } from "vitest";
import type { Lot, Plan } from "../../../src/core/model/plan.ts";
import { sownWords } from "../../../src/core/seasons/next-season-words.ts";
import { nextSeason } from "../../../src/core/seasons/next-season.ts";
import { lotsSown } from "../../../src/core/seasons/lots-sown.ts";
import { chosenFates, offeredChoices } from "../../../src/core/seasons/season-choices.ts";
import { day, trialPlan } from "../../support/trial-plan.ts";

const lot = (id: string, variety: string, amount?: Lot["amount"]): Lot => ({
  id,
  code: id.toUpperCase(),
  variety,
  harvestYear: 2026,
  state: "in stock",
  // 80 of 100 came up: its germination is known.
  tests: [{ id: "t1", date: day("2027-03-01"), sown: 100, sprouted: 80 }],
  seedsPerGram: 4,
  ...(amount ? { amount } : {}),
});

/** Every seed that can germinate comes up, and none is spare: seeds = plants / germination. */
const sowing = { emergence: 1, trayEmergence: 1, spare: 0 };
const plan: Plan = trialPlan(
  {
    a: { at: 0, kind: "common-bean", plants: 40, lots: ["weighed"] },
    b: { at: 2, kind: "common-bean", plants: 8, lots: ["counted"] },
    c: { at: 4, kind: "common-bean", plants: 10 },
    d: { at: 6, kind: "common-bean", plants: 10, lots: ["open"] },
  },
  [],
  {
    sowing,
    lots: [
      lot("weighed", "v-a", { unit: "g", value: 100 }),
      lot("counted", "v-b", { unit: "seeds", value: 12 }),
      lot("proposed", "v-c", { unit: "seeds", value: 500 }),
      lot("open", "v-d"),
    ],
  },
);
const choices = offeredChoices(plan, { id: "next", on: day("2028-01-10") });
const plots = chosenFates(plan, choices);

test("lots named for a plot give what it took; proposed and uncounted ones stay", () => {
  const sown = lotsSown(plan, "layout-1", plots);
  expect(sown.map((each) => each.lot.id)).toEqual(["weighed", "counted"]);
  const [weighed, counted] = sown;
  // Germination ages a little from test to sowing: at least 40 / 0.8 = 50 seeds, 12.5 g.
  expect(weighed?.taken.unit).toBe("g");
  expect(weighed?.taken.value).toBeGreaterThanOrEqual(12.5);
  expect(weighed?.taken.value).toBeLessThan(16);
  expect((weighed?.taken.value ?? 0) + (weighed?.left.value ?? 0)).toBeCloseTo(100, 6);
  expect(counted?.taken.value).toBeGreaterThanOrEqual(10);
  expect((counted?.taken.value ?? 0) + (counted?.left.value ?? 0)).toBe(12);
  expect(sownWords(sown)).toMatch(/^WEIGHED 1\d[.\d]* g, 8[.\d]+ g left; COUNTED 1\d seeds, /);
});

test("what was never sown took nothing", () => {
  const never = plots.map((plot) => ({ ...plot, fate: "never" as const }));
  expect(lotsSown(plan, "layout-1", never)).toEqual([]);
});

test("it is taken off the shelf when asked for, and not unasked", () => {
  expect(nextSeason(plan, choices).lots).toBe(plan.lots);
  const next = nextSeason(plan, { ...choices, takesSown: true });
  expect(next.lots.map(({ id }) => id)).toEqual(plan.lots.map(({ id }) => id));
  expect(next.lots[0]?.amount?.value).toBeLessThan(88);
  expect(next.lots.slice(2)).toEqual(plan.lots.slice(2));
});
