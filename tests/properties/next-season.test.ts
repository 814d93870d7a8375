/** The step to the next season over arbitrary plans: nothing of the one before changes or is lost. */
import * as fc from "fast-check";
import { expect, test, vi } from "vitest";
import { layoutOf } from "../../src/core/model/layouts.ts";
import { problemText } from "../../src/core/model/problem.ts";
import { readPlan, writePlan } from "../../src/core/model/read-plan.ts";
import type { Plan } from "../../src/core/model/plan.ts";
import { lotsFromBefore, takeLots } from "../../src/core/seasons/lots-from-before.ts";
import { nextSeason } from "../../src/core/seasons/next-season.ts";
import { fates } from "../../src/core/seasons/plot-fate.ts";
import { chosenFates, offeredChoices } from "../../src/core/seasons/season-choices.ts";
import { arbitraryPlan } from "./arbitrary-plan.ts";

vi.setConfig({ testTimeout: 60_000 });

function asFile(plan: Plan): Plan {
  const read = readPlan(writePlan(plan), "next.json", () => true);
  if (!read.ok) throw new Error(read.problems.map(problemText).join("\n"));
  return read.value;
}

const choosing = fc.record({
  laterDays: fc.integer({ min: -400, max: 400 }),
  picks: fc.array(fc.constantFrom(...fates), { maxLength: 8 }),
});

function chosen(
  plan: Plan,
  { laterDays, picks }: { laterDays: number; picks: readonly (typeof fates)[number][] },
) {
  const choices = offeredChoices(plan, { id: "the-next", on: plan.season.last + laterDays });
  const { plantings } = layoutOf(plan, choices.layout);
  const picked = picks.flatMap((fate, index) => {
    const planting = plantings[index];
    return planting ? [[planting.id, fate] as const] : [];
  });
  return { ...choices, fates: new Map(picked) };
}

test("the plan made reads back equal, with ids of its own", () => {
  fc.assert(
    fc.property(arbitraryPlan, choosing, (plan, how) => {
      const next = nextSeason(plan, chosen(plan, how));
      expect(asFile(next)).toEqual(next);
      expect(next.id).not.toBe(plan.id);
      expect(next.cameFrom?.plan).toBe(plan.id);
      expect(next.season.first).toBeGreaterThan(plan.season.last);
    }),
    { numRuns: 150 },
  );
});

test("the plan before is left as it was, and making it again gives the same", () => {
  fc.assert(
    fc.property(arbitraryPlan, choosing, (plan, how) => {
      const before = writePlan(plan);
      const choices = chosen(plan, how);
      const made = writePlan(nextSeason(plan, choices));
      expect(writePlan(plan)).toBe(before);
      expect(writePlan(nextSeason(asFile(plan), choices))).toBe(made);
    }),
    { numRuns: 100 },
  );
});

test("every plot is an earlier crop of the very ground it had, or stands there, or never was", () => {
  let standing = 0;
  let crops = 0;
  fc.assert(
    fc.property(arbitraryPlan, choosing, (plan, how) => {
      const choices = chosen(plan, how);
      const next = nextSeason(plan, choices);
      const [layout] = next.layouts;
      for (const { planting, variety, fate, year } of chosenFates(plan, choices)) {
        const stands = layout?.plantings.find(({ id }) => id === planting.id);
        expect(stands !== undefined).toBe(fate === "standing");
        if (stands) {
          expect(stands.outline).toEqual(planting.outline);
          standing += 1;
        }
        if (fate !== "over" && fate !== "lifted") continue;
        crops += 1;
        const name = variety.name === "" ? undefined : variety.name;
        expect(next.earlierCrops).toContainEqual(
          expect.objectContaining({ outline: planting.outline, kind: variety.kind, year }),
        );
        expect(
          next.earlierCrops.some((crop) => crop.varietyName === name && crop.kind === variety.kind),
        ).toBe(true);
      }
      // What was known of the ground before is known still.
      for (const crop of plan.earlierCrops) expect(next.earlierCrops).toContain(crop);
    }),
    { numRuns: 150 },
  );
  expect(standing).toBeGreaterThan(20);
  expect(crops).toBeGreaterThan(100);
});

test("seven seasons on no lot, place, variety, own kind or earlier crop is lost", () => {
  fc.assert(
    fc.property(arbitraryPlan, (plan) => {
      let now = plan;
      for (let year = 1; year <= 7; year += 1) {
        const next = nextSeason(
          now,
          offeredChoices(now, { id: `plan-${year}`, on: now.season.last + 20 }),
        );
        expect(next.earlierCrops.length).toBeGreaterThanOrEqual(now.earlierCrops.length);
        now = asFile(next);
      }
      expect(now.lots).toEqual(plan.lots);
      expect(now.storagePlaces).toEqual(plan.storagePlaces);
      expect(now.ownKinds).toEqual(plan.ownKinds);
      expect(now.varieties.map(({ id }) => id).toSorted()).toEqual(
        plan.varieties.map(({ id }) => id).toSorted(),
      );
      for (const crop of plan.earlierCrops) expect(now.earlierCrops).toContainEqual(crop);
    }),
    { numRuns: 60 },
  );
});

test("bringing two shelves together loses no lot of either, and reads back", () => {
  fc.assert(
    fc.property(arbitraryPlan, arbitraryPlan, (plan, before) => {
      const brought = lotsFromBefore(plan, before);
      const after = asFile(takeLots(brought, "Take").apply(plan));
      for (const lot of plan.lots) expect(after.lots).toContainEqual(lot);
      const shown = new Set(brought.recoded.map(({ from }) => from));
      for (const { code } of before.lots) {
        const isThere = after.lots.some((lot) => lot.code === code);
        expect(isThere || shown.has(code)).toBe(true);
      }
      expect(after.lots.length).toBe(plan.lots.length + brought.lots.length);
      expect(lotsFromBefore(after, before).lots, "a second time").toEqual([]);
    }),
    { numRuns: 100 },
  );
});
