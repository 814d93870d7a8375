import { describe, expect, test } from "vitest";
import { LIMITS } from "../../../src/core/model/limits.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import {
  changedGarden,
  isKnownKind,
  refusalOf,
  refusalOfText,
  smallGardenText,
} from "../../support/small-garden.ts";
import { emptyPng, lyingPng } from "../../support/png.ts";

const BED = ["layouts", 0, "beds", 0] as const;
const EARLIER = {
  id: "e1",
  kind: "beet",
  year: 2025,
  outline: { shape: "rectangle", x: 2, y: 5, widthM: 1, lengthM: 2, turnDeg: 0 },
};
const PICTURE = {
  name: "sketch.png",
  data: "iVBORw0KGgo=",
  mediaType: "image/png",
  widthPx: 10,
  heightPx: 10,
  x: 0,
  y: 0,
  metresPerPixel: 0.1,
};
const HUGE_PNG = lyingPng(emptyPng(10, 10), 22_000, 22_000).toString("base64");
const PLANTING = ["layouts", 0, "plantings", 0] as const;
const POLYGON_BED = ["layouts", 0, "beds", 1, "outline", "corners"] as const;

test("the small garden is read, its dates as day numbers and its defaults filled in", () => {
  const read = readPlan(smallGardenText, "plan.json", isKnownKind);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const [planting, eaten] = read.value.layouts[0]?.plantings ?? [];
  expect(planting?.start?.date).toBe(Date.UTC(2027, 4, 20) / 86_400_000);
  expect([planting?.flowering, planting?.cover, eaten?.cover]).toEqual(["yes", "none", "cage"]);
});

describe("a plan is refused with its place:", () => {
  test.each<[string, readonly (string | number)[], unknown, string]>([
    ["no format", ["format"], undefined, 'format: got nothing, expected "wideberth-plan"'],
    [
      "another format",
      ["format"],
      "FeatureCollection",
      'format: got "FeatureCollection", expected "wideberth-plan"',
    ],
    [
      "a newer version",
      ["version"],
      4,
      "version: got 4, written by a newer Wideberth, expected at most 3",
    ],
    ["a broken version", ["version"], "1", 'version: got "1", expected a whole number from 1'],
    ["version zero", ["version"], 0, "version: got 0, expected a whole number from 1"],
    ["a missing title", ["title"], undefined, "title: got nothing, expected text"],
    ["a missing list", ["varieties"], undefined, "varieties: got nothing, expected a list"],
    ["an object for a list", ["layouts"], {}, "layouts: got an object, expected a list"],
    ["a list for an object", ["site"], [], "site: got a list of 0, expected an object"],
    ["no layouts", ["layouts"], [], "layouts: got a list of 0, expected at least 1 item"],
    [
      "text for a number",
      [...BED, "outline", "lengthM"],
      "8",
      'layouts[0].beds[0] "A01", outline.lengthM: got "8", expected a finite number',
    ],
    [
      "a missing number",
      [...BED, "outline", "lengthM"],
      undefined,
      'layouts[0].beds[0] "A01", outline.lengthM: got nothing, expected a finite number',
    ],
    [
      "null",
      [...BED, "outline", "x"],
      null,
      'layouts[0].beds[0] "A01", outline.x: got null, expected a finite number',
    ],
    [
      "a size of nothing",
      [...BED, "outline", "widthM"],
      0,
      'layouts[0].beds[0] "A01", outline.widthM: got 0, expected more than 0',
    ],
    [
      "a negative size",
      [...BED, "outline", "widthM"],
      -1,
      "outline.widthM: got -1, expected more than 0",
    ],
    ["NaN", [...BED, "outline", "x"], Number.NaN, "outline.x: got NaN, expected a finite number"],
    [
      "infinity",
      [...BED, "outline", "x"],
      Infinity,
      "outline.x: got Infinity, expected a finite number",
    ],
    [
      "a huge place",
      [...BED, "outline", "x"],
      1e300,
      "outline.x: got 1e+300, expected at most 100000",
    ],
    [
      "a turn of many turns",
      [...BED, "outline", "turnDeg"],
      1e6,
      "outline.turnDeg: got 1000000, expected at most 360",
    ],
    [
      "an unknown shape",
      [...BED, "outline"],
      { shape: "circle", x: 0, y: 0 },
      'layouts[0].beds[0] "A01", outline.shape: got "circle", expected one of "rectangle", "polygon"',
    ],
    [
      "a bed that is a point",
      [...BED, "outline"],
      { shape: "point", x: 0, y: 0 },
      'outline.shape: got "point", expected one of "rectangle", "polygon"',
    ],
    [
      "two corners",
      POLYGON_BED,
      [
        [0, 0],
        [1, 1],
      ],
      'layouts[0].beds[1] "A02", outline.corners: got a list of 2, expected at least 3 items',
    ],
    [
      "a corner of three numbers",
      [...POLYGON_BED, 1],
      [1, 2, 3],
      'layouts[0].beds[1] "A02", outline.corners[1]: got a list of 3, expected at most 2 items',
    ],
    [
      "a corner of text",
      [...POLYGON_BED, 1],
      ["1", 2],
      'outline.corners[1][0]: got "1", expected a finite number',
    ],
    [
      "a self-crossing outline",
      POLYGON_BED,
      [
        [0, 0],
        [4, 4],
        [4, 0],
        [0, 4],
      ],
      'layouts[0].beds[1] "A02", outline: got an outline that crosses or touches itself (edges 1 and 3), expected a simple outline',
    ],
    [
      "a self-crossing hole",
      [...BED, "outline"],
      {
        shape: "polygon",
        corners: [
          [0, 0],
          [9, 0],
          [9, 9],
          [0, 9],
        ],
        holes: [
          [
            [1, 1],
            [4, 4],
            [4, 1],
            [1, 4],
          ],
        ],
      },
      'layouts[0].beds[0] "A01", outline.holes[0]: got an outline that crosses',
    ],
    [
      "30 February",
      [...PLANTING, "start", "date"],
      "2027-02-30",
      'layouts[0].plantings[0] "A01-1", start.date: got "2027-02-30", expected a real date as YYYY-MM-DD',
    ],
    [
      "a date of another form",
      ["site", "lastSpringFrost"],
      "12/05/2027",
      'site.lastSpringFrost: got "12/05/2027", expected a real date as YYYY-MM-DD',
    ],
    ["a number for a date", ["season", "first"], 20_000, "season.first: got 20000, expected text"],
    [
      "a season that ends first",
      ["season", "last"],
      "2026-01-01",
      "season: got an object, expected the season not to end before it starts",
    ],
    [
      "a bloom that ends first",
      ["layouts", 0, "plantings", 1, "bloom", "last"],
      "2027-01-01",
      'layouts[0].plantings[1] "A02-1", bloom: got an object, expected the last day not to be before the first',
    ],
    [
      "an unknown purpose",
      [...PLANTING, "purpose"],
      "sale",
      'layouts[0].plantings[0] "A01-1", purpose: got "sale", expected one of "seed", "food", "other"',
    ],
    [
      "an unknown cover",
      [...PLANTING, "cover"],
      "fleece",
      'cover: got "fleece", expected one of "none", "cage", "bags", "hand"',
    ],
    [
      "a count of halves",
      [...PLANTING, "plants"],
      1.5,
      'layouts[0].plantings[0] "A01-1", plants: got 1.5, expected a whole number',
    ],
    ["a count past counting", [...PLANTING, "plants"], 1e300, "plants: got 1e+300, expected"],
    [
      "yes for true",
      ["varieties", 0, "hybrid"],
      "yes",
      'varieties[0] "Plum Lantern", hybrid: got "yes", expected true or false',
    ],
    [
      "a range the wrong way round",
      ["varieties", 1, "bloomDays"],
      [50, 30],
      'varieties[1] "Old Kiln", bloomDays: got a list of 2, expected [least, most] with least first',
    ],
    [
      "a bloom of no days",
      ["varieties", 1, "bloomDays"],
      [0, 0],
      'varieties[1] "Old Kiln", bloomDays[0]: got 0, expected at least 1',
    ],
    [
      "an id with spaces",
      ["varieties", 0, "id"],
      "v 1",
      'varieties[0] "Plum Lantern", id: got "v 1", expected an id of letters',
    ],
    [
      "a name past reading",
      ["varieties", 0, "name"],
      "x".repeat(LIMITS.name + 1),
      "expected at most 200 characters",
    ],
    [
      "an unknown kind",
      ["varieties", 0, "kind"],
      "dragonfruit",
      'varieties[0] "Plum Lantern", kind: got "dragonfruit", expected a known kind',
    ],
    [
      "an unknown kind outside",
      ["surroundings", 1, "kind"],
      "triffid",
      'surroundings[1] "Wild tomatoes on the heap", kind: got "triffid", expected a known kind',
    ],
    [
      "pollen of no kind",
      ["surroundings", 1, "kind"],
      undefined,
      'surroundings[1] "Wild tomatoes on the heap", kind: got nothing, expected the kind that flowers there',
    ],
    [
      "an earlier crop of an unknown kind",
      ["earlierCrops"],
      [{ ...EARLIER, kind: "triffid" }],
      'earlierCrops[0] "triffid 2025", kind: got "triffid", expected a known kind',
    ],
    [
      "two earlier crops of one id",
      ["earlierCrops"],
      [EARLIER, EARLIER],
      "expected an id of its own (earlierCrops[0] has it already)",
    ],
    [
      "a picture of a sort that is not kept",
      ["picture"],
      { ...PICTURE, mediaType: "image/svg+xml" },
      "picture.mediaType",
    ],
    [
      "a picture with more dots than are stated",
      ["picture"],
      // The header of a PNG of 22,000 by 22,000 (W3C Portable Network Graphics, 11.2.1).
      { ...PICTURE, mediaType: "image/png", data: HUGE_PNG },
      'picture "sketch.png", data: got a picture of 22000 x 22000 dots',
    ],
    [
      "a variety that is not there",
      [...PLANTING, "variety"],
      "v9",
      'layouts[0].plantings[0] "A01-1", variety: got "v9", expected the id of a variety in this plan',
    ],
    [
      "a bed that is not there",
      [...PLANTING, "bed"],
      "b9",
      'layouts[0].plantings[0] "A01-1", bed: got "b9", expected the id of a bed in this layout',
    ],
    [
      "a layout that is not there",
      ["chosenLayout"],
      "layout-9",
      'chosenLayout: got "layout-9", expected the id of a layout',
    ],
    [
      "two varieties of one id",
      ["varieties", 1, "id"],
      "v1",
      'varieties[1] "Old Kiln", id: got "v1", expected an id of its own (varieties[0] has it already)',
    ],
    [
      "two plantings of one id",
      ["layouts", 0, "plantings", 1, "id"],
      "p1",
      'layouts[0].plantings[1] "A02-1", id: got "p1", expected an id of its own (layouts[0].plantings[0] "A01-1" has it already)',
    ],
    [
      "a planting and a hedge of one id",
      [...PLANTING, "id"],
      "s1",
      'layouts[0].plantings[0] "A01-1", id: got "s1", expected an id of its own (surroundings[0] "Hedge by the lane" has it already)',
    ],
    [
      "a bed called site",
      [...BED, "id"],
      "site",
      'layouts[0].beds[0] "A01", id: got "site", expected an id of its own (the site has it already)',
    ],
  ])("%s", (_, path, value, message) => {
    const refusal = refusalOf(changedGarden(path, value));
    expect(refusal.startsWith("plan.json: ")).toBe(true);
    expect(refusal).toContain(message);
  });

  test.each([
    ["no object", "[]", "plan.json: got a list of 0, expected a plan object."],
    ["a number", "3", "plan.json: got 3, expected a plan object."],
    ["null", "null", "plan.json: got null, expected a plan object."],
    ["an empty file", "", "plan.json: got an empty file, expected JSON text."],
    [
      "half a file",
      smallGardenText.slice(0, 900),
      /^plan.json: got text that stops in the middle, at line \d+/,
    ],
    [
      "a number past all numbers",
      smallGardenText.replace('"x": 2', '"x": 1e999'),
      /beds\[0\] "A01", outline.x: got Infinity, expected a finite number/,
    ],
    [
      "__proto__ deep inside",
      smallGardenText.replace('"plants": 12', '"__proto__": {"a": 1}'),
      /^plan.json: layouts\[0\].plantings\[0\].__proto__: got a forbidden name/,
    ],
    [
      "5,000 brackets",
      smallGardenText.replace('"plants": 12', `"note": ${"[".repeat(5000)}${"]".repeat(5000)}`),
      /deeper than 64 at line \d+/,
    ],
  ])("%s", (_, text, message) => {
    expect(refusalOfText(text)).toMatch(message);
  });
});

test("every problem is listed, up to fifty", () => {
  const broken = changedGarden(
    ["layouts", 0, "plantings"],
    Array.from({ length: 80 }, () => ({})),
  );
  const lines = refusalOf(broken).split("\n");
  expect(lines).toHaveLength(50);
  expect(lines[0]).toBe("plan.json: layouts[0].plantings[0], id: got nothing, expected text.");
});

test("unknown fields are kept through reading and writing, at every depth", () => {
  let value = changedGarden(["weather station"], { brand: "x", readings: [1, 2, [3]] });
  const also = (path: readonly (string | number)[]) => {
    let holder = value as Record<string | number, unknown>;
    for (const key of path) holder = holder[key] as Record<string | number, unknown>;
    holder["soil"] = { ph: 6.5 };
  };
  [
    ["site"],
    ["season"],
    ["varieties", 0],
    ["surroundings", 0, "outline"],
    PLANTING,
    [...PLANTING, "start"],
    [...BED, "outline"],
    ["accepted", 0],
  ].forEach(also);
  const read = readPlan(JSON.stringify(value), "plan.json", isKnownKind);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  value = { ...(value as object) };
  expect(JSON.parse(writePlan(read.value))).toMatchObject(value as object);
});

test("a written plan ends with a line break and reads back as it was", () => {
  const read = readPlan(smallGardenText, "plan.json", isKnownKind);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const text = writePlan(read.value);
  expect(text.endsWith("}\n")).toBe(true);
  expect(readPlan(text, "plan.json", isKnownKind)).toEqual(read);
});
