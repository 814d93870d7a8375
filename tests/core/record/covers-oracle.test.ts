/**
 * Covers as grown against an oracle that goes through the bloom day by day by the calendar of the
 * JavaScript engine: a cover clears exactly when the plot was under it on every one of those days.
 */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import type { Entry } from "../../../src/core/model/plan.ts";
import { checkAsGrown } from "../../../src/core/record/as-grown.ts";
import { bloom, day, trialPlan } from "../../support/trial-plan.ts";

const FROM = "2027-05-20";
const isoAfter = (days: number) =>
  new Date(Date.parse(`${FROM}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);

interface Step {
  readonly after: number;
  readonly isOn: boolean;
}

/** Whether the plot was covered on a day: by the last of what was written on or before it. */
function isCovered(steps: readonly Step[], iso: string): boolean {
  let isOn = false;
  for (const { after, isOn: next } of steps) if (isoAfter(after) <= iso) isOn = next;
  return isOn;
}

test("a cover clears exactly when it stood on every day of the bloom", () => {
  // Seen from the twelfth of June to the twenty-seventh: days 23 to 38.
  const days = Array.from({ length: 16 }, (_, index) => isoAfter(23 + index));
  expect([days[0], days.at(-1)]).toEqual(["2027-06-12", "2027-06-27"]);
  const step = fc.record({ after: fc.integer({ min: 0, max: 50 }), isOn: fc.boolean() });
  const history = fc
    .uniqueArray(step, { maxLength: 5, selector: ({ after }) => after })
    .map((steps) => steps.sort((a, b) => a.after - b.after));
  let clear = 0;
  fc.assert(
    fc.property(history, (steps) => {
      const seen: Entry[] = [
        { id: "f", of: "p", on: day("2027-06-12"), what: "first flower" },
        { id: "l", of: "p", on: day("2027-06-27"), what: "last flower" },
        ...steps.map(({ after, isOn }, index): Entry => ({
          id: `c${index}`,
          of: "p",
          on: day(isoAfter(after)),
          what: isOn ? "covered" : "uncovered",
        })),
      ];
      const plan = trialPlan(
        {
          p: { at: 0, kind: "carrot", bloom: bloom("06-10", "06-30") },
          q: { at: 6, kind: "carrot", purpose: "food", bloom: bloom("06-10", "06-30") },
        },
        [],
        { entries: seen },
      );
      const { pairs } = checkAsGrown(plan, "layout-1", day("2027-12-01")).result;
      const standing = pairs.find(({ seedParent }) => seedParent === "p")?.standing;
      // A cover put up anew while one stands is another cover: the day it is changed, it is open.
      const changes = steps.filter(
        ({ after, isOn }, index) =>
          isOn && (steps[index - 1]?.isOn ?? false) && days.slice(1).includes(isoAfter(after)),
      );
      const isClear = changes.length === 0 && days.every((iso) => isCovered(steps, iso));
      if (isClear) clear += 1;
      expect(standing).toBe(isClear ? "cover" : "conflict");
    }),
    { numRuns: 600, seed: 16 },
  );
  expect(clear, "both verdicts were tried").toBeGreaterThan(30);
});
