import { readdirSync, readFileSync } from "node:fs";
import { expect, test, describe } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { openPlanText } from "../../../src/core/exchange/open-plan.ts";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { featureIds } from "../../../src/core/exchange/geojson-plan.ts";
import { planProblems } from "../../../src/core/model/plan-problems.ts";
import { problemText } from "../../../src/core/model/problem.ts";
import type { Layout, Plan } from "../../../src/core/model/plan.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import { day } from "../../support/paper-garden.ts";

const folder = new URL("../../fixtures/geojson/", import.meta.url);
const book = cropBook();

function textOf(name: string): string {
  return readFileSync(new URL(name, folder), "utf8");
}

function read(text: string, file = "FILE") {
  return openPlanText(text, file, book);
}

function planFrom(name: string): { readonly plan: Plan; readonly layout: Layout } {
  const opened = read(textOf(`valid/${name}.geojson`), `${name}.geojson`);
  if (!opened.ok) throw new Error(opened.problems.map(problemText).join("\n"));
  const [layout] = opened.value.plan.layouts;
  if (!layout) throw new Error("no layout");
  expect(opened.value.from).toBe("geojson");
  return { plan: opened.value.plan, layout };
}

describe("invalid files are refused with the place", () => {
  const messages = JSON.parse(textOf("messages.json")) as Record<string, readonly string[]>;
  const names = readdirSync(new URL("invalid/", folder)).map((name) =>
    name.replace(".geojson", ""),
  );

  test("every fixture has its message", () => {
    expect(names.toSorted()).toEqual(Object.keys(messages).toSorted());
  });

  test.each(names)("%s", (name) => {
    const opened = read(textOf(`invalid/${name}.geojson`));
    expect(opened.ok ? [] : opened.problems.map(problemText)).toEqual(messages[name]);
  });

  test("nesting of 5,000 brackets", () => {
    const deep = `{"type":"FeatureCollection","features":${"[".repeat(5000)}${"]".repeat(5000)}}`;
    const opened = read(deep);
    expect(opened.ok ? [] : opened.problems.map(problemText)).toEqual([
      "FILE: got brackets nested deeper than 64 at line 1, expected at most 64 levels.",
    ]);
  });

  test("no more than fifty problems are listed", () => {
    const feature = { type: "Feature", geometry: null, properties: null };
    const features = Array.from({ length: 400 }, () => feature);
    const opened = read(JSON.stringify({ type: "FeatureCollection", features }));
    expect(opened.ok ? 0 : opened.problems.length).toBe(50);
  });
});

describe("valid files", () => {
  test.each(readdirSync(new URL("valid/", folder)))(
    "%s is a plan that can be saved and read again",
    (name) => {
      const opened = read(textOf(`valid/${name}`), name);
      if (!opened.ok) throw new Error(opened.problems.map(problemText).join("\n"));
      const isKnown = (kind: string) => book.kind(kind) !== undefined;
      expect(planProblems(opened.value.plan, name, isKnown)).toEqual([]);
      expect(readPlan(writePlan(opened.value.plan), name, isKnown)).toEqual({
        ok: true,
        value: opened.value.plan,
      });
    },
  );

  test("two carrots become two plantings of two varieties", () => {
    const { plan, layout } = planFrom("two-carrots");
    expect(plan.title).toBe("two-carrots");
    expect(plan.varieties).toEqual([
      { id: "variety-1", name: "Long Meadow", kind: "carrot" },
      { id: "variety-2", name: "Rook Red", kind: "carrot" },
    ]);
    expect(layout.beds).toEqual([]);
    const [first, second] = layout.plantings;
    expect(first).toMatchObject({
      id: "a",
      code: "a",
      variety: "variety-1",
      purpose: "seed",
      flowering: "yes",
      cover: "none",
      bloom: { first: day("2027-06-20"), last: day("2027-08-01") },
    });
    expect(first).not.toHaveProperty("isolationM");
    expect(second).toMatchObject({ id: "b", isolationM: 50 });
    expect(plan.season).toEqual({
      name: "2027",
      first: day("2027-01-01"),
      last: day("2027-12-31"),
    });
    expect(plan.site.position?.longitude).toBeCloseTo(-2.90945, 9);
    expect(plan.site.position?.latitude).toBeCloseTo(54.200025, 9);
  });

  test("every property is read, other ids are made, the rest is kept", () => {
    const { plan, layout } = planFrom("everything");
    expect(plan.title).toBe("Fallow End");
    expect(layout.plantings.map(({ id }) => id)).toEqual(["p1", "7", "feature-3", "feature-4"]);
    expect(layout.plantings[0]).toMatchObject({
      isolationM: 200.5,
      cover: "bags",
      level: "sale",
      properties: { soil: "clay loam", tags: ["north", "terrace"] },
    });
    expect(layout.plantings[0]?.outline).toHaveProperty("holes");
    // The same kind and name in other letters is the same variety.
    expect(layout.plantings[1]).toMatchObject({
      variety: layout.plantings[0]?.variety,
      purpose: "food",
    });
    expect(layout.plantings[2]).toMatchObject({ purpose: "seed", flowering: "cut", cover: "cage" });
    expect(layout.plantings[2]).not.toHaveProperty("bloom");
    expect(plan.varieties.map(({ name, hybrid }) => [name, hybrid])).toEqual([
      ["Flint Ember", undefined],
      ["", undefined],
      ["Storm Pop", true],
    ]);
    expect(plan.surroundings).toEqual([
      expect.objectContaining({
        id: "feature-5",
        what: "pollen",
        kind: "maize",
        label: "feature-5 maize",
        properties: { note: "volunteers on the old clamp" },
      }),
    ]);
    const idOf = featureIds(plan, layout);
    expect(["p1", "7", "feature-3", "feature-4", "feature-5"].map(idOf)).toEqual([
      "p1",
      7,
      "plot 3/b",
      "feature-4",
      "feature-5",
    ]);
  });

  test("places either side of the date line lie side by side", () => {
    const { layout } = planFrom("across-the-date-line");
    const xs = layout.plantings.flatMap(({ outline }) =>
      outline.shape === "polygon" ? outline.corners.map(([x]) => x) : [],
    );
    expect(Math.max(...xs) - Math.min(...xs)).toBeLessThan(40);
  });

  test("a corner given twice in a row counts once", () => {
    const { layout } = planFrom("clockwise-with-a-corner-twice");
    const outline = layout.plantings[0]?.outline;
    expect(outline?.shape === "polygon" && outline.corners.length).toBe(4);
  });

  test("half a bloom window is kept but not used", () => {
    const text = textOf("valid/two-carrots.geojson")
      .replace('"bloomEnd": "2027-08-01", ', "")
      .replace(', "bloomEnd": "2027-08-01"', "");
    const opened = read(text);
    if (!opened.ok) throw new Error(opened.problems.map(problemText).join("\n"));
    const planting = opened.value.plan.layouts[0]?.plantings[0];
    expect(planting).not.toHaveProperty("bloom");
    expect(planting).toMatchObject({ properties: { bloomStart: "2027-06-20" } });
  });

  test("a perennial flowers every year, whichever year its dates are of", () => {
    const chives = (id: string, x: number, year: number) => ({
      type: "Feature",
      id,
      properties: {
        kind: "chives",
        variety: id,
        bloomStart: `${year}-05-20`,
        bloomEnd: `${year}-06-20`,
      },
      geometry: {
        type: "Polygon",
        coordinates: [
          [
            [x, 0],
            [x + 1e-5, 0],
            [x + 1e-5, 1e-5],
            [x, 1e-5],
            [x, 0],
          ],
        ],
      },
    });
    const opened = read(
      JSON.stringify({
        type: "FeatureCollection",
        features: [chives("old", 10, 2026), chives("new", 10.0001, 2027)],
      }),
    );
    if (!opened.ok) throw new Error(opened.problems.map(problemText).join("\n"));
    const { plan } = opened.value;
    const checked = checkLayout(plan, plan.layouts[0]?.id ?? "");
    expect(checked.result.pairs.map(({ standing }) => standing)).toEqual(["conflict", "conflict"]);
    // Both years: 32 days of May and June, twice.
    expect(checked.result.pairs.map(({ overlapDays }) => overlapDays)).toEqual([64, 64]);
  });

  test("a plan file is told from GeoJSON by what is in it", () => {
    const { plan } = planFrom("two-carrots");
    const opened = read(writePlan(plan));
    expect(opened).toMatchObject({ ok: true, value: { from: "plan", plan } });
  });
});

/** Geometry objects of RFC 7946, appendix A, moved to a garden's size. */
describe("the shapes of RFC 7946, appendix A", () => {
  const small = ([longitude = 0, latitude = 0]: readonly number[]) => [
    100 + (longitude - 100) / 1000,
    latitude / 1000,
  ];
  const collection = (type: string, coordinates: unknown) =>
    JSON.stringify({
      type: "FeatureCollection",
      features: [
        { type: "Feature", geometry: { type, coordinates }, properties: { kind: "carrot" } },
      ],
    });
  const outer = [
    [100, 0],
    [101, 0],
    [101, 1],
    [100, 1],
    [100, 0],
  ].map(small);
  const hole = [
    [100.8, 0.8],
    [100.8, 0.2],
    [100.2, 0.2],
    [100.2, 0.8],
    [100.8, 0.8],
  ].map(small);

  test.each([
    ["Point", small([100, 0])],
    ["Polygon", [outer]],
    ["Polygon", [outer, hole]],
  ])("a %s is read", (type, coordinates) => {
    expect(read(collection(type, coordinates)).ok).toBe(true);
  });

  test("a Polygon keeps its hole", () => {
    const opened = read(collection("Polygon", [outer, hole]));
    const outline = opened.ok ? opened.value.plan.layouts[0]?.plantings[0]?.outline : undefined;
    expect(outline).toMatchObject({ shape: "polygon", holes: [expect.any(Array)] });
  });

  test.each([
    [
      "LineString",
      [
        [100, 0],
        [101, 1],
      ],
    ],
    [
      "MultiPoint",
      [
        [100, 0],
        [101, 1],
      ],
    ],
    [
      "MultiLineString",
      [
        [
          [100, 0],
          [101, 1],
        ],
        [
          [102, 2],
          [103, 3],
        ],
      ],
    ],
    ["MultiPolygon", [[outer], [outer, hole]]],
  ])("a %s is refused by name", (type, coordinates) => {
    const opened = read(collection(type, coordinates));
    expect(opened.ok ? "" : opened.problems.map(problemText)[0]).toContain(`got "${type}"`);
  });
});

test.each([
  [true, "conflict"],
  [false, undefined],
])("a neighbour's plant of the same name, hybrid: %s", (hybrid, standing) => {
  const shared = { kind: "tomato", variety: "Old Ferry", bloomStart: "2027-07-01" };
  const feature = (id: string, geometry: object, more: object) => ({
    type: "Feature",
    id,
    geometry,
    properties: { ...shared, bloomEnd: "2027-08-01", ...more },
  });
  const ring = [
    [0, 50],
    [0.00001, 50],
    [0.00001, 50.00001],
    [0, 50.00001],
    [0, 50],
  ];
  const opened = read(
    JSON.stringify({
      type: "FeatureCollection",
      features: [
        feature("p", { type: "Polygon", coordinates: [ring] }, {}),
        feature("s", { type: "Point", coordinates: [0.00002, 50] }, { hybrid }),
      ],
    }),
  );
  if (!opened.ok) throw new Error(opened.problems.map(problemText).join("; "));
  const { result } = checkLayout(opened.value.plan, "layout-1");
  expect(result.pairs[0]?.standing).toBe(standing);
});
