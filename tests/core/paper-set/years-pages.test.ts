/** The years as printed for the wall, of the sample of sixty varieties. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { dayFromIso } from "../../../src/core/model/day.ts";
import { readPlan } from "../../../src/core/model/read-plan.ts";
import { pageFrame } from "../../../src/core/page/page-frame.ts";
import { pdfWriter } from "../../../src/core/page/pdf-writer.ts";
import { allMarks } from "../../../src/core/page/scene.ts";
import { printedDay, yearsPages, yearsPdf } from "../../../src/core/paper-set/years-pages.ts";
import { firstAnswer } from "../../../src/core/renewal/first-answer.ts";
import { setYears, takeYears } from "../../../src/core/renewal/years-edits.ts";
import { yearsOfPlan } from "../../../src/core/renewal/years-of-plan.ts";
import { fonts, textOf } from "../../support/printed.ts";

const file = new URL("../../../sample-plots/seed-collection.json", import.meta.url);
const read = readPlan(
  readFileSync(file, "utf8"),
  "x.json",
  (id) => cropBook().kind(id) !== undefined,
);
if (!read.ok) throw new Error("the sample does not open");
const sample = read.value;
const TODAY = printedDay("2026-12-01 10:02", 0);
const years = yearsOfPlan(
  sample,
  sample.layouts[0] as (typeof sample.layouts)[number],
  cropBook(),
  TODAY,
);
const plan = takeYears(years.rows, firstAnswer(years.problem), "").apply(sample);
const { ruler } = pdfWriter("", "", fonts);

function pagesOf(of: typeof plan, paper: "A4" | "Letter") {
  const frame = pageFrame(paper, "portrait");
  return yearsPages(checkLayout(of, "layout-1"), TODAY, { plan: of, frame, stamp: "", ruler });
}

test("the day of the printing is read from its stamp", () => {
  expect(TODAY).toBe(dayFromIso("2026-12-01"));
});

test.each(["A4", "Letter"] as const)(
  "sixty varieties and five seasons are one page of %s",
  (paper) => {
    const pages = pagesOf(plan, paper);
    expect(pages).toHaveLength(1);
    const { widthMm, heightMm } = pageFrame(paper, "portrait").size;
    for (const mark of allMarks(pages[0]?.marks ?? [])) {
      if (mark.kind !== "text" || mark.text === "") continue;
      expect(mark.sizePt).toBeGreaterThanOrEqual(6);
      expect(mark.at.x).toBeLessThan(widthMm - 5);
      expect(mark.at.y).toBeLessThan(heightMm - 5);
    }
  },
);

test("it says who is grown when, who is not taken for alive, and what stands against it", async () => {
  const words = textOf(await yearsPdf(checkLayout(plan, "layout-1"), "2026-12-01 10:02", fonts));
  for (const { name } of plan.varieties) expect(words).toContain(name.split(" ")[0]);
  expect(words).toMatch(/Marl Pit MP-X \?/);
  expect(words).toContain("Nothing stands against these years");
  const bare = setYears({ bags: undefined }, "").apply(plan);
  const against = textOf(await yearsPdf(checkLayout(bare, "layout-1"), "2026-12-01 10:02", fonts));
  expect(against).toMatch(/stands? against these years:/);
  expect(against).toContain("Cottage garden");
});
