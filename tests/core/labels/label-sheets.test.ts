/** Sheets of labels as they come from the printer: read back from the PDF, and its dots. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import type { CheckedLayout } from "../../../src/core/checks/checked-layout.ts";
import type { IsolationPair } from "../../../src/core/checks/isolation-pair.ts";
import { isolationWords } from "../../../src/core/labels/label-words.ts";
import { labelsPdf } from "../../../src/core/labels/labels-pdf.ts";
import { stakeLabels } from "../../../src/core/labels/stake-facts.ts";
import type { LabelUse } from "../../../src/core/labels/label-facts.ts";
import { labelBoxOf, labelSizes, usualLabelSize } from "../../../src/core/labels/label-sizes.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { readPlan } from "../../../src/core/model/read-plan.ts";
import { day, gardenPlan, mapInput, variety } from "../../support/paper-garden.ts";
import { overlaps, wordsOf } from "../../support/pdf-words.ts";
import { PX_PER_MM, fonts, rasterise } from "../../support/printed.ts";

const plain = { startAt: 1, hasQr: false, treatment: "" };
const book = cropBook();

function sample(name: string): CheckedLayout {
  const file = `sample-plots/${name}.json`;
  const read = readPlan(readFileSync(file, "utf8"), file, (kind) => book.kind(kind) !== undefined);
  if (!read.ok) throw new Error(file);
  return checkLayout(read.value, read.value.chosenLayout ?? read.value.layouts[0]?.id ?? "");
}

/** A garden with what names and dates may do: accents, descenders, two lines, hybrids. */
function crowded(): CheckedLayout {
  const plan = gardenPlan();
  return mapInput({
    ...plan,
    varieties: plan.varieties.map((each, index) =>
      index % 2 === 0
        ? { ...each, name: ["Ågyjpq Ścieżka Égyptienne", "Żółty Gryząg"][index % 4 ? 1 : 0] ?? "" }
        : each,
    ),
  });
}

const SHEETS: readonly (readonly [string, () => CheckedLayout, LabelUse])[] = [
  ...["garden-solved", "garden-to-solve", "lane-field", "two-acre-field"].flatMap((name) =>
    (["stakes", "packets"] as const).map(
      (use) => [`${use} of ${name}`, () => sample(name), use] as const,
    ),
  ),
  ["packets of a shelf", () => sample("two-acre-field"), "lots"],
  ["packets with accents and descenders", crowded, "packets"],
  ["stakes with accents and descenders", crowded, "stakes"],
];

describe.each(SHEETS)("%s", (_, make, use) => {
  const input = make();
  const size = usualLabelSize(input.plan.units, use !== "stakes");
  const made = labelsPdf(input, use, { ...plain, size }, "2027", fonts);

  test("have one size of head and one of words, none under 8 points, none on another", async () => {
    const { bytes, remarks } = await made;
    expect(remarks).toEqual([]);
    const all = wordsOf(bytes);
    const last = Math.max(...all.map(({ page }) => page));
    const pages = use === "stakes" ? last : last - 1;
    const words = all.filter(({ page }) => page <= pages);
    expect(words.length).toBeGreaterThan(20);
    const sizes = [...new Set(words.map(({ sizePt }) => Math.round(sizePt)))].toSorted(
      (a, b) => a - b,
    );
    expect(sizes).toHaveLength(2);
    expect(sizes[0]).toBeGreaterThanOrEqual(8);
    expect(overlaps(words)).toEqual([]);
  });

  test("keep their edges free of ink, descenders too", async () => {
    const { bytes } = await made;
    const raster = rasterise(bytes, 1);
    const { widthMm, heightMm } = size.label;
    const isDark = (x: number, y: number) =>
      raster.at(Math.round(x * PX_PER_MM), Math.round(y * PX_PER_MM)) < 128;
    for (let place = 0; place < size.columns * size.rows; place += 1) {
      const { left, top } = labelBoxOf(size, place);
      for (let along = 1; along < widthMm - 1; along += 0.1) {
        for (const y of [top + 1, top + 1.5, top + heightMm - 1.5, top + heightMm - 1]) {
          expect(isDark(left + along, y), `label ${place + 1}`).toBe(false);
        }
      }
    }
  });
});

test("a label is as large on paper as its sheet says, and lies where it says", async () => {
  const input = sample("two-acre-field");
  const size = labelSizes.find(({ id }) => id === "a4-small");
  if (!size) throw new Error("no size");
  const dark = async (offset: { readonly right: number; readonly down: number }) => {
    const { bytes } = await labelsPdf(input, "stakes", { ...plain, size, offset }, "2027", fonts);
    const raster = rasterise(bytes, 1);
    const columns: number[] = [];
    for (let x = 0; x < raster.width; x += 1) {
      let count = 0;
      for (let y = 100; y < 1000; y += 1) if (raster.at(x, y) < 200) count += 1;
      if (count > 250) columns.push(x / PX_PER_MM);
    }
    return columns;
  };
  const lines = await dark({ right: 0, down: 0 });
  for (const edge of [0, 1, 2, 3]) {
    const wanted = size.left + edge * size.pitchX;
    expect(
      lines.some((x) => Math.abs(x - wanted) < 0.15),
      `${wanted}`,
    ).toBe(true);
  }
  // A printer 2 mm off to the right is met by printing 2 mm to the left.
  const moved = await dark({ right: 2, down: 0 });
  expect(moved.some((x) => Math.abs(x - (size.left - 2)) < 0.15)).toBe(true);
});

describe("what a stake says", () => {
  const plan = gardenPlan();
  const [layout] = plan.layouts;
  if (!layout) throw new Error("no layout");
  const stakes = (entries: (typeof plan)["entries"] = []) =>
    stakeLabels(
      mapInput({
        ...plan,
        entries,
        varieties: plan.varieties.map((each) =>
          each.id === "dun" ? variety("dun", "Kettle Dun", "common-bean", { hybrid: true }) : each,
        ),
        layouts: [
          {
            ...layout,
            plantings: layout.plantings.map((each) =>
              each.code === "A02-1" ? { ...each, flowering: "cut" as const } : each,
            ),
          },
        ],
      }),
    );
  const stake = (code: string, entries: (typeof plan)["entries"] = []) =>
    stakes(entries).find(({ head }) => head === code);

  test("what is cut before bloom says so, and never that it is kept for seed", () => {
    expect(stake("A02-1")?.warning).toBe("Cut before bloom");
    expect(stake("B03-2")?.warning).toBe("Cut before bloom");
  });

  test("a hybrid says so, whatever it is grown for", () => {
    expect(stake("A01-1")?.warning).toBe("Hybrid: keep no seed");
    expect(stake("B01-2")?.warning).toBe("Hybrid: keep no seed");
  });

  test("a day planned says planned; the day of the field record does not", () => {
    const [planting] = layout.plantings.filter(({ code }) => code === "B02-1");
    expect(stake("B02-1")?.lines[0]).toBe("Set out 20 May 2027 (planned)");
    const entry = {
      id: "e1",
      on: day("2027-05-23"),
      of: planting?.id ?? "",
      what: "set out" as const,
    };
    expect(stake("B02-1", [entry])?.lines[0]).toBe("Set out 23 May 2027");
  });
});

describe("isolation on a packet", () => {
  const pair = (more: Partial<IsolationPair>): IsolationPair => ({
    seedParent: "p",
    pollenSource: "q",
    distanceM: 24,
    where: [
      { x: 0, y: 0 },
      { x: 24, y: 0 },
    ],
    requiredM: 10,
    requirement: null,
    relation: "freely",
    overlapDays: 3,
    gapDays: 0,
    exposedShare: 0.1,
    guardDays: 7,
    standing: "distance",
    time: null,
    lacksBloom: [],
    ...more,
  });
  test.each([
    [[], "nothing known near that crosses with it"],
    [[pair({})], "clear, 2.4 times the distance"],
    [[pair({ distanceM: 10 })], "clear, just the distance"],
    [[pair({ distanceM: 29.99 })], "clear, 2.9 times the distance"],
    [[pair({ distanceM: 1000 })], "clear, over 10 times the distance"],
    [[pair({ requiredM: 0 })], "clear, no distance is asked"],
    [[pair({}), pair({ standing: "conflict" })], "not reached"],
    [
      [pair({ standing: "conflict", relation: "rarely" })],
      "not reached from a kind that rarely crosses",
    ],
    [[pair({ standing: "unknown" }), pair({ standing: "cover" })], "not known"],
    [[pair({ standing: "cover" }), pair({})], "clear under cover"],
    [[pair({ standing: "time" }), pair({})], "clear by time of bloom"],
  ])("is said of the weakest pair, in plain words", (pairs, words) => {
    expect(isolationWords(pairs)).toBe(`Isolation planned: ${words}`);
  });
});
