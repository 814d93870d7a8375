/** The map as SVG: well formed, harmless, and the same drawing as on paper. */
import { describe, expect, test } from "vitest";
import { drawingSvg, pageSvg } from "../../../src/core/paper-set/drawing-svg.ts";
import { numberedWords } from "../../../src/core/map/finding-items.ts";
import { allMarks } from "../../../src/core/page/scene.ts";
import { oneSheetSettings } from "../../../src/core/paper-set/suggested-map.ts";
import { gardenPlan, mapInput } from "../../support/paper-garden.ts";
import { fonts, scenes } from "../../support/printed.ts";
import { xmlTags } from "../../support/xml-tags.ts";

const ALLOWED: Readonly<Record<string, readonly string[]>> = {
  svg: ["xmlns", "width", "height", "viewBox", "role"],
  title: [],
  defs: [],
  rect: ["x", "y", "width", "height", "fill"],
  clipPath: ["id"],
  g: ["clip-path"],
  path: ["d", "fill", "fill-rule", "clip-rule", "stroke", "stroke-width", "stroke-dasharray"],
  circle: ["cx", "cy", "r", "fill", "stroke", "stroke-width", "stroke-dasharray"],
  text: [
    "x",
    "y",
    "font-family",
    "font-size",
    "font-weight",
    "text-anchor",
    "textLength",
    "lengthAdjust",
    "transform",
  ],
};

const WHEN = "2027-03-02 09:40";
const hostile = `<script>alert("1")</script>&'"]]>\u0000<a href="javascript:x">`;

function hostilePlan() {
  const plan = gardenPlan();
  return {
    ...plan,
    title: hostile,
    site: { ...plan.site, name: hostile },
    surroundings: plan.surroundings.map((item) => ({ ...item, label: hostile })),
    layouts: plan.layouts.map((layout) => ({
      ...layout,
      name: hostile,
      beds: layout.beds.map((bed) => ({ ...bed, code: `<${bed.code}>` })),
    })),
  };
}

describe.each([
  ["page", pageSvg],
  ["drawing", drawingSvg],
])("the %s", (_, make) => {
  test.each([
    ["usual", gardenPlan()],
    ["hostile", hostilePlan()],
  ])("of a plan with %s names holds only what is allowed", async (__, plan) => {
    const svg = await make(mapInput(plan), WHEN, fonts);
    const tags = xmlTags(svg);
    expect(tags[0]?.name).toBe("svg");
    expect(tags[0]?.attributes.get("xmlns")).toBe("http://www.w3.org/2000/svg");
    for (const tag of tags) {
      expect(Object.keys(ALLOWED)).toContain(tag.name);
      for (const name of tag.attributes.keys()) expect(ALLOWED[tag.name]).toContain(name);
      const clip = tag.attributes.get("clip-path");
      if (clip !== undefined) expect(clip).toMatch(/^url\(#clip-\d+\)$/);
    }
    const ids = tags.flatMap((tag) => tag.attributes.get("id") ?? []);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

test("a hostile name is written as the words it is", async () => {
  const tags = xmlTags(await pageSvg(mapInput(hostilePlan()), WHEN, fonts));
  const words = tags.filter(({ name }) => name === "text").map(({ text }) => text);
  expect(words.some((text) => text.includes("<script>"))).toBe(true);
  expect(words).toContain("<A01>");
});

test("the page holds every finding in full, below the map", async () => {
  const input = mapInput(gardenPlan());
  const tags = xmlTags(await pageSvg(input, WHEN, fonts));
  const words = tags
    .filter(({ name }) => name === "text")
    .map(({ text }) => text)
    .join(" ");
  const all = numberedWords(input);
  expect(all.length).toBeGreaterThan(2);
  for (const { words: said } of all) {
    expect(words).toContain(said.title);
    for (const sentence of said.sentences) expect(words).toContain(sentence);
  }
  expect(words).toContain("What the checks say: ");
  const height = Number(/^[\d.]+/.exec(tags[0]?.attributes.get("height") ?? "")?.[0]);
  expect(height).toBeGreaterThan(210);
  for (const { name, attributes } of tags) {
    if (name === "text") expect(Number(attributes.get("y"))).toBeLessThan(height - 9);
  }
});

test("the page carries every word of the sheet, at its place", async () => {
  const input = mapInput(gardenPlan());
  const [page] = scenes(input, oneSheetSettings(input, WHEN));
  const marks = allMarks(page?.marks ?? []).filter((mark) => mark.kind === "text");
  const tags = xmlTags(await pageSvg(input, WHEN, fonts)).filter(({ name }) => name === "text");
  const isWritten = (words: string, x: number, y: number) =>
    tags.some(
      ({ text, attributes }) =>
        text === words &&
        Math.abs(Number(attributes.get("x")) - x) < 0.001 &&
        Math.abs(Number(attributes.get("y")) - y) < 0.001,
    );
  const missing = marks.filter(({ text, at }) => text !== "" && !isWritten(text, at.x, at.y));
  expect(missing).toEqual([]);
});
