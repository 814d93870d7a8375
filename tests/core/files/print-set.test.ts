/** What is printed of a plan as a whole: which parts, their pages, and what is said of them. */
import { describe, expect, test } from "vitest";
import {
  isUsuallyPrinted,
  printFileName,
  printHindrance,
  printParts,
} from "../../../src/core/files/print-list.ts";
import {
  type PrintSettings,
  planRemarks,
  printedPart,
  printedPdf,
} from "../../../src/core/files/print-set.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { usualLabelSize } from "../../../src/core/labels/label-sizes.ts";
import { MOST_SHEETS, planSheets } from "../../../src/core/map/page-plan.ts";
import { pdfWriter } from "../../../src/core/page/pdf-writer.ts";
import { gardenPlan, mapInput } from "../../support/paper-garden.ts";
import { a4, fonts, textOf } from "../../support/printed.ts";
import { withLots } from "../../support/with-lots.ts";

const garden = mapInput(withCopy(withLots(gardenPlan(), (index) => `26-AB-${index}`)));
const { ruler } = pdfWriter("", "", fonts);

function withCopy(plan: Plan): Plan {
  return {
    ...plan,
    layouts: plan.layouts.flatMap((each) => [
      each,
      { ...each, id: `${each.id}-copy`, name: `${each.name} (copied)` },
    ]),
  };
}

const labels = (isPacket: boolean) => ({
  size: usualLabelSize("m", isPacket),
  startAt: 1,
  hasQr: false,
  treatment: "",
});
const settings: PrintSettings = { ...a4, stakes: labels(false), packets: labels(true) };

test("there is everything a season's paper needs, each by one name", () => {
  const ids = printParts.map(({ id }) => id);
  for (const id of [
    "map",
    "bed-cards",
    "calendar",
    "sowing-list",
    "stakes",
    "packets",
    "shelf",
    "isolation",
  ]) {
    expect(ids).toContain(id);
  }
  expect(new Set(ids).size).toBe(ids.length);
});

describe.each(printParts.map((part) => [part.id, part] as const))("%s", (id, part) => {
  test("has pages, and becomes a PDF of just those", async () => {
    const { pages } = await printedPart(id, garden, settings, ruler);
    expect(pages.length).toBeGreaterThan(0);
    const bytes = await printedPdf(garden, { title: part.title, pages }, "2027-03-02", fonts);
    expect(textOf(bytes).length).toBeGreaterThan(50);
    expect(bytes.length).toBeGreaterThan(2000);
  });
});

describe("what is ticked to begin with", () => {
  const usual = (input: typeof garden) =>
    printParts.map(({ id }) => id).filter((id) => isUsuallyPrinted(id, input.plan, input.layout));

  test("is the sensible set: no table for setting out, packets where there are lots", () => {
    expect(usual(garden)).toEqual(expect.arrayContaining(["map", "stakes", "packets", "shelf"]));
    expect(usual(garden)).not.toContain("set-out");
    const bare = usual(mapInput(gardenPlan()));
    expect(bare).not.toContain("shelf");
    expect(bare).not.toContain("packets");
  });

  test("layouts are compared when asked for, where there are two", () => {
    expect(usual(garden)).not.toContain("layouts");
    expect(printHindrance("layouts", garden.plan, garden.layout)).toBe(null);
    expect(printHindrance("layouts", gardenPlan(), garden.layout)).toBe("there is one layout");
  });

  test("is only what there is something of, and the rest says why", () => {
    const plan = gardenPlan();
    const [layout] = plan.layouts;
    if (!layout) throw new Error("no layout");
    const empty = mapInput({ ...plan, layouts: [{ ...layout, beds: [], plantings: [] }] });
    expect(usual(empty)).toEqual(["map"]);
    for (const { id } of printParts) {
      const why = printHindrance(id, empty.plan, empty.layout);
      expect(why === null).toBe(id === "map");
    }
  });
});

test("open conflicts and missing names are said before printing", () => {
  expect(planRemarks(garden, ruler).join()).toMatch(/conflicts? (is|are) open/);
  const nameless = mapInput({ ...garden.plan, site: { ...garden.plan.site, name: "" } });
  expect(planRemarks(nameless, ruler)).toContain("The site has no name");
});

test("a map of more than 200 sheets is made only when it is asked for", async () => {
  const fine = { ...settings, ratio: 5 };
  const { rows, columns } = planSheets(garden.plan, garden.layout, fine, 5);
  expect(rows * columns).toBeGreaterThan(200);
  await expect(printedPart("map", garden, fine, ruler)).rejects.toThrow(/more than 200/);
  const { sheets } = planSheets(
    garden.plan,
    garden.layout,
    { ...fine, mostSheets: MOST_SHEETS },
    5,
  );
  expect(sheets.length).toBeGreaterThan(100);
});

test("files are named after place, season, layout, what, and revision", () => {
  expect(printFileName(garden.plan, garden.layout, "stakes")).toMatch(
    /^fallow-end-2027-layout-1-stakes-rev-[0-9a-z]{5}\.pdf$/,
  );
});
