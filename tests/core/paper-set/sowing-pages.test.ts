/** The sowing list as printed and as CSV, against seeds reckoned by hand. */
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { sowingCsv } from "../../../src/core/files/sowing-csv.ts";
import { sowingListPdf, sowingPages } from "../../../src/core/paper-set/sowing-pages.ts";
import type { Lot, Plan } from "../../../src/core/model/plan.ts";
import { pageFrame } from "../../../src/core/page/page-frame.ts";
import { pdfWriter } from "../../../src/core/page/pdf-writer.ts";
import { type Mark, allMarks } from "../../../src/core/page/scene.ts";
import { csvRecords } from "../../support/csv-records.ts";
import { fonts, textOf } from "../../support/printed.ts";
import { day, trialPlan } from "../../support/trial-plan.ts";

const tested = (sprouted: number) => [{ id: "t1", date: day("2027-04-10"), sown: 100, sprouted }];
const lot = (id: string, variety: string, more: Partial<Lot>): Lot => ({
  id,
  code: id.toUpperCase(),
  variety,
  state: "in stock",
  ...more,
});

/** Lettuce in place on the day of its test; tomato in trays; pea treated; a bed without a count. */
const trial = trialPlan({
  later: {
    at: 0,
    kind: "tomato",
    plants: 20,
    start: { method: "transplanted", date: day("2027-05-20") },
  },
  first: {
    at: 30,
    kind: "lettuce",
    plants: 100,
    start: { method: "sown", date: day("2027-04-10") },
  },
  pea: { at: 60, kind: "pea", plants: 30, start: { method: "sown", date: day("2027-04-12") } },
  open: { at: 90, kind: "beet" },
});
const plan: Plan = {
  ...trial,
  varieties: [
    ...trial.varieties.map((each) => (each.id === "v-pea" ? { ...each, lots: ["pe-1"] } : each)),
    { id: "v-other", kind: "pea", name: "Tall Linnet" },
  ],
  storagePlaces: [{ id: "box", name: "Blue box" }],
  lots: [
    lot("le-1", "v-first", {
      tests: tested(80),
      amount: { unit: "seeds", value: 115 },
      stored: [{ place: "box" }],
    }),
    lot("le-2", "v-first", { tests: tested(40), amount: { unit: "seeds", value: 115 } }),
    lot("pe-1", "v-other", {
      tests: tested(90),
      treatedWith: "thiram",
      amount: { unit: "g", value: 500 },
    }),
  ],
};
const input = checkLayout(plan, plan.layouts[0]?.id ?? "");

describe("as CSV", () => {
  const rows = csvRecords(sowingCsv(input));
  const of = (kind: string) => rows.filter((row) => row.kind === kind);

  test("comes in order of sowing, what has no day last", () => {
    expect(rows.map(({ kind }) => kind)).toEqual(["tomato", "lettuce", "lettuce", "pea", "beet"]);
    expect(rows.map(({ date }) => date)).toEqual([
      "2027-04-08",
      "2027-04-10",
      "2027-04-10",
      "2027-04-12",
      "",
    ]);
  });

  test("takes the better lot first, and the weaker for what is left", () => {
    // 100 x 1.1 / (0.8 x 0.6) = 229.2 -> 230 seeds; 115 of them serve 50 plants, and the other 50
    // take 50 x 1.1 / (0.4 x 0.6) = 229.2 -> 230 of the weaker lot, which has 115: 25 plants short.
    const [good, weak] = of("lettuce");
    expect([good?.lot, good?.seeds, good?.["kept at"]]).toEqual(["LE-1", "115", "Blue box"]);
    expect([weak?.lot, weak?.seeds]).toEqual(["LE-2", "115"]);
    expect(good?.["seeds missing"]).toBe(String(Math.ceil((25 * 1.1) / (0.8 * 0.6))));
    expect(weak?.["seeds missing"]).toBe("");
  });

  test("says what is treated, what is proposed, and that trays are sown before their date", () => {
    expect(of("pea")[0]).toMatchObject({
      treated: "thiram",
      "lot named": "yes",
      "lot of another variety": "Tall Linnet",
    });
    expect(of("tomato")[0]).toMatchObject({
      date: "2027-04-08",
      method: "under glass, about this day",
      "set out": "2027-05-20",
    });
    expect(of("beet")[0]).toMatchObject({ plants: "", seeds: "", lot: "" });
    expect(rows.every(({ sown }) => sown === "")).toBe(true);
  });
});

test("printed: a box for each lot, its place, what to look out for, and the caution", async () => {
  const words = textOf(await sowingListPdf(input, "2027-03-02", fonts)).replace(/\s+/g, " ");
  const { ruler } = pdfWriter("", "", fonts);
  const frame = pageFrame("A4", "landscape");
  const [page] = sowingPages(input, { plan, frame, stamp: "", ruler });
  const isTick = (mark: Mark) =>
    mark.kind === "area" && mark.fill === null && mark.rings[0]?.length === 4;
  expect(allMarks(page?.marks ?? []).filter(isTick)).toHaveLength(5);
  for (const part of [
    "Blue box",
    "LE-2",
    "under glass about 8 Apr, out 20 May",
    "LOT OF TALL LINNET",
    "TREATED WITH THIRAM",
    "lot proposed",
    "no seed for 25 plants",
    "number of plants not given",
    "never for food or feed",
  ]) {
    expect(words).toContain(part);
  }
});

test("a layout without plantings says so", async () => {
  const bare = trialPlan({});
  const nothing = checkLayout(bare, bare.layouts[0]?.id ?? "");
  expect(textOf(await sowingListPdf(nothing, "2027-03-02", fonts))).toContain("Nothing is sown");
});
