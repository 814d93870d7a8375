/** How many plants a planting starts with, against what the kinds' sources print. */
import { expect, test } from "vitest";
import { UNASKED_PLANTS, plantsWanted } from "../../../src/core/edits/new-planting.ts";
import { populationCheck } from "../../../src/core/checks/population.ts";
import { foundBy } from "../../../src/core/checks/run-checks.ts";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { layoutOf, trialPlan } from "../../support/trial-plan.ts";

const kind = (id: string) => cropBook().kind(id);

test("a variety that names no number starts with the plants that keep one of its kind", () => {
  const plan = trialPlan({ p: { at: 0, kind: "maize" } });
  const [variety] = plan.varieties;
  if (!variety) throw new Error("no variety");
  const bare = { ...layoutOf(plan), plantings: [] };
  expect(plantsWanted(bare, variety, kind("maize"))).toBe(100);
  expect(plantsWanted(bare, variety, undefined)).toBe(UNASKED_PLANTS);
  expect(plantsWanted(bare, { ...variety, wantedPlants: 30 }, kind("maize"))).toBe(30);

  const [first] = layoutOf(plan).plantings;
  if (!first) throw new Error("no planting");
  const standing = (plants: number) => ({ ...bare, plantings: [{ ...first, plants }] });
  // The rest of it, and as many again once that stands.
  expect(plantsWanted(standing(60), variety, kind("maize"))).toBe(40);
  expect(plantsWanted(standing(100), variety, kind("maize"))).toBe(100);
  // None of them too few, as the check of populations has it.
  const whole = { ...plan, layouts: [standing(100)] };
  expect(foundBy(checkLayout(whole, bare.id).result, populationCheck)).toEqual([]);
});
