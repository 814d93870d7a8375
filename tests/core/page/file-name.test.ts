/** Files of one plan: what differs on paper differs in name, and the revision is in every name. */
import { expect, test } from "vitest";
import { planRevision, plotMapFileName } from "../../../src/core/page/file-name.ts";
import { paperNames } from "../../../src/core/page/paper.ts";
import { exportById, formatFileName } from "../../../src/core/files/export-list.ts";
import { gardenPlan, mapInput } from "../../support/paper-garden.ts";

const { plan, layout } = mapInput(gardenPlan());
const calendar = exportById("calendar");
const nameOf = (named: typeof plan, of: typeof layout) => formatFileName(calendar, named, of);
const revision = planRevision(plan, layout).toLowerCase();

test("a plot map is named after place, season, layout, paper and revision", () => {
  expect(plotMapFileName(plan, layout, "A4")).toBe(
    `fallow-end-2027-layout-1-a4-plot-map-rev-${revision}.pdf`,
  );
  const names = paperNames.map((paper) => plotMapFileName(plan, layout, paper));
  expect(new Set(names).size).toBe(paperNames.length);
});

test("the season calendar's name changes with the plan", () => {
  expect(nameOf(plan, layout)).toBe(`fallow-end-2027-layout-1-season-calendar-rev-${revision}.ics`);
  const later = { ...plan, title: `${plan.title} again` };
  expect(nameOf(later, layout)).not.toBe(nameOf(plan, layout));
});
