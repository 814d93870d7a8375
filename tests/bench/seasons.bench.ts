/** The next season of a large plan, against one full check of it. */
import { expect, test } from "vitest";
import { checkLayout } from "../../src/core/checks/checked-layout.ts";
import { nextSeason } from "../../src/core/seasons/next-season.ts";
import { offeredChoices } from "../../src/core/seasons/season-choices.ts";
import { gardenPlan } from "../support/garden-plan.ts";
import { reportRow } from "./report.ts";
import { bestMs } from "./timing.ts";

const PLANTINGS = 200;

test("the next season of 200 plantings", () => {
  const plan = gardenPlan(PLANTINGS);
  const layoutId = plan.layouts[0]?.id ?? "";
  // A plan of its own every time: nothing is kept from one run to the next.
  const { ms, made } = bestMs(9, () => {
    const own = { ...plan };
    return nextSeason(own, offeredChoices(own, { id: "next", on: own.season.last }));
  });
  const { ms: checkMs } = bestMs(9, () => checkLayout({ ...plan }, layoutId));
  expect(made.earlierCrops.length).toBe(PLANTINGS);
  reportRow({
    section: "Seasons",
    size: `${PLANTINGS} plantings`,
    what: "the next season begun, against one full check",
    value: ms / checkMs,
    unit: "x",
  });
});
