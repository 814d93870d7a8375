/**
 * Tags of what is printed, by our own reading of the file (tests/support/pdf-tags.ts): no validator
 * of PDF/UA is to be had from the registries. Rules after ISO 14289-1, clause 7.
 */
import { describe, expect, test } from "vitest";
import { comparePdf } from "../../../src/core/compare/compare-pdf.ts";
import { copyLayout } from "../../../src/core/edits/layout-edits.ts";
import { usualLabelSize } from "../../../src/core/labels/label-sizes.ts";
import { labelsPdf } from "../../../src/core/labels/labels-pdf.ts";
import { companionIds } from "../../../src/core/map/companion-ids.ts";
import { sowingListPdf } from "../../../src/core/paper-set/sowing-pages.ts";
import { checkLayouts } from "../../../src/core/checks/checked-layout.ts";
import { gardenPlan, mapInput } from "../../support/paper-garden.ts";
import { infoOf, tagsOf, unmarkedOf } from "../../support/pdf-tags.ts";
import { a4, fonts, print } from "../../support/printed.ts";
import { withLots } from "../../support/with-lots.ts";

const plan = {
  ...withLots(gardenPlan(), (index) => `26-AB-${index}`),
  title: "Beans & roots <north>",
};
const garden = mapInput(plan);
const labels = { size: usualLabelSize("m", true), startAt: 1, hasQr: true, treatment: "" };

async function compared(): Promise<Uint8Array> {
  const two = copyLayout("layout-1", "layout-2", "Second").apply(plan);
  const settings = { paper: "A4" as const, isOverlaid: true, printedAt: "2027" };
  return (await comparePdf(checkLayouts(two, two.layouts), settings, fonts)).bytes;
}

const DOCUMENTS: readonly (readonly [string, () => Promise<Uint8Array>])[] = [
  ["plot map", async () => (await print(garden, { ...a4, companions: companionIds })).bytes],
  ["sowing list", () => sowingListPdf(garden, "2027-03-02", fonts)],
  ["stakes", async () => (await labelsPdf(garden, "stakes", labels, "2027", fonts)).bytes],
  ["packets", async () => (await labelsPdf(garden, "packets", labels, "2027", fonts)).bytes],
  ["layouts compared", compared],
];

describe.each(DOCUMENTS)("%s", (_, make) => {
  const made = make();

  test("says it is tagged, has a title that is shown, a language, and the mark of PDF/UA-1", async () => {
    const bytes = await made;
    const info = infoOf(bytes);
    expect(info).toMatch(/^Tagged: +yes$/m);
    expect(info).toMatch(/^Title: +\S/m);
    expect(info).toMatch(/^Metadata Stream: yes$/m);
    const text = Buffer.from(bytes).toString("latin1");
    expect(text).toContain("/Lang (en)");
    expect(text).toContain("/DisplayDocTitle true");
    expect(text).toContain("<pdfuaid:part>1</pdfuaid:part>");
    // Names with signs of markup do not break the packet.
    expect(text).not.toMatch(/<rdf:li xml:lang="x-default">[^<]*&(?!amp;|lt;|gt;|quot;|#39;)/);
  });

  test("has all that is painted in a tag or marked as decoration, nothing in two", async () => {
    expect(unmarkedOf(await made)).toEqual([]);
  });

  test("begins its headings at the first level and skips none", async () => {
    const levels = tagsOf(await made).flatMap(({ name }) => /^H(\d)$/.exec(name)?.[1] ?? []);
    expect(levels.length).toBeGreaterThan(0);
    let before = 0;
    for (const level of levels.map(Number)) {
      expect(level).toBeLessThanOrEqual(before + 1);
      before = level;
    }
  });

  test("has tables of rows, each with as many cells as the first, under head cells", async () => {
    const tags = tagsOf(await made);
    const tables = tags.flatMap((tag, index) => (tag.name === "Table" ? [index] : []));
    for (const start of tables) {
      const rows: string[][] = [];
      for (const tag of tags.slice(start + 1)) {
        if (tag.depth <= (tags[start]?.depth ?? 0)) break;
        if (tag.name === "TR") rows.push([]);
        else if (/^T[HD]$/.test(tag.name)) rows.at(-1)?.push(tag.name);
      }
      const [head = []] = rows;
      expect(new Set(head)).toEqual(new Set(["TH"]));
      for (const row of rows) expect(row).toHaveLength(head.length);
    }
  });

  test("has words in the place of every figure", async () => {
    const text = Buffer.from(await made).toString("latin1");
    const figures = text.match(/\/S \/Figure[\s\S]*?endobj/g) ?? [];
    const said = figures.filter((element) => /\/Alt [(<]/.test(element));
    expect(said).toHaveLength(figures.length);
  });
});

test("the plot map is read title first, then its chapters; drawings have words", async () => {
  const { bytes } = await print(garden, { ...a4, companions: companionIds });
  const headings = tagsOf(bytes).filter(({ name }) => /^H[12]$/.test(name));
  const words = headings.map((tag) => tag.words.trim());
  expect(words[0]).toBe("Seed plots, Fallow End, season 2027");
  expect(words.filter((each) => each === words[0])).toHaveLength(1);
  const order = ["Notes", "Plot list", "Season calendar", "Isolation report", "Set-out table"];
  const places = order.map((chapter) => words.findIndex((each) => each.startsWith(chapter)));
  expect(places).not.toContain(-1);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  const figures = Buffer.from(bytes)
    .toString("latin1")
    .match(/\/Alt \(Drawing of the ground/g);
  expect(figures?.length).toBeGreaterThan(0);
});
