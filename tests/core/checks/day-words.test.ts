import { expect, test } from "vitest";
import { pairsLostToShift, timeSlackDays } from "../../../src/core/checks/day-words.ts";
import { bloom, check, pairsOf, trialPlan } from "../../support/trial-plan.ts";

const plan = trialPlan({
  p: { at: 0, kind: "tomato", bloom: bloom("06-01", "06-20") },
  q: { at: 2, kind: "tomato", bloom: bloom("07-01", "07-20") },
  r: { at: 9, kind: "tomato", bloom: bloom("07-28", "08-20") },
});

test("the slack is what the gap has beyond the days wanted", () => {
  const pairs = pairsOf(plan);
  expect(pairs.get("p<-q")).toMatchObject({ standing: "time", gapDays: 10, guardDays: 7 });
  const slack = (name: string) => timeSlackDays(pairs.get(name) ?? failed(name));
  expect(slack("p<-q")).toBe(3);
  expect(slack("q<-r")).toBe(0);
  expect(slack("p<-r")).toBeNull();
});

test("a shift takes the pairs with less slack, the tightest first", () => {
  const lost = (days: number) =>
    pairsLostToShift(check(plan).pairs, days).map(
      ({ seedParent, pollenSource }) => `${seedParent}<-${pollenSource}`,
    );
  expect(lost(0)).toEqual([]);
  expect(lost(1)).toEqual(["q<-r", "r<-q"]);
  expect(lost(4)).toEqual(["q<-r", "r<-q", "p<-q", "q<-p"]);
});

function failed(name: string): never {
  throw new Error(`no pair ${name}`);
}
