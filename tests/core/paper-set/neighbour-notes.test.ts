/** Notes to neighbours: who is asked, and what. */
import { expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { pageFrame } from "../../../src/core/page/page-frame.ts";
import { pdfWriter } from "../../../src/core/page/pdf-writer.ts";
import { allMarks } from "../../../src/core/page/scene.ts";
import {
  neighbourNotePages,
  neighboursToAsk,
} from "../../../src/core/paper-set/neighbour-notes.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { fonts } from "../../support/printed.ts";
import { source, squareAt, trialPlan } from "../../support/trial-plan.ts";

const { ruler } = pdfWriter("", "", fonts);
const at = (x: number) => ({ shape: "point", x, y: 0 }) as const;
const garden = (): Plan =>
  trialPlan({ p: { at: 0, kind: "chard" }, q: { at: 40, kind: "summer-squash" } }, [
    source("chard", "chard", squareAt(10)),
    source("squash", "pumpkin", squareAt(60)),
    source("ours", "beet", at(5), { reach: "ours" }),
    source("maize", "maize", squareAt(20)),
    source("weed", "sea-beet", at(8)),
  ]);

function pagesOf(plan: Plan): readonly string[] {
  const frame = pageFrame("A4", "portrait");
  const setting = { plan, frame, stamp: "", ruler };
  return neighbourNotePages(checkLayout(plan, "layout-1"), setting).map(({ marks }) =>
    allMarks(marks)
      .flatMap((mark) => ("text" in mark ? [mark.text] : []))
      .join(" "),
  );
}

test("asked is whoever grows what crosses: no weed, nothing of ours, nothing that cannot cross", () => {
  const asked = neighboursToAsk(checkLayout(garden(), "layout-1"));
  expect(asked.map(({ stand }) => stand.id)).toEqual(["chard", "squash"]);
});

test("each has a page that asks for what he could do", () => {
  const [chard = "", squash = ""] = pagesOf(garden());
  expect(chard).toContain("Source chard");
  expect(chard).toContain("cut before it flowers");
  expect(chard).toContain("Variety p");
  expect(squash).toContain("Source squash");
  expect(squash).not.toContain("cut before it flowers");
});

test("where nobody need be asked one page says so", () => {
  const pages = pagesOf(trialPlan({ p: { at: 0, kind: "chard" } }));
  expect(pages.length).toBe(1);
  expect(pages[0]).toContain("Nobody around need be asked");
});
