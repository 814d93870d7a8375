import { expect, test } from "vitest";
import { farSources, farSourceText } from "../../../src/core/map/far-sources.ts";
import { mapGrid } from "../../../src/core/map/map-grid.ts";
import { plotRows } from "../../../src/core/map/plot-rows.ts";
import {
  day,
  gardenPlan,
  mapInput,
  planOf,
  planting,
  rectangle,
  source,
  variety,
} from "../../support/paper-garden.ts";

const grid = mapGrid({ minX: 0, maxX: 40, minY: 0, maxY: 20 }, 200, "m");

test("a row says what a helper needs", () => {
  const rows = plotRows(mapInput(gardenPlan()), grid);
  expect(rows.find(({ code }) => code === "B02-1")).toEqual({
    id: "p-B02-1",
    code: "B02-1",
    walk: "8",
    square: "c2",
    lot: "",
    kind: "tomato",
    variety: "Amber Lantern",
    purpose: ["seed"],
    isEaten: false,
    plants: "40 in 2 rows",
    plantCount: 40,
    size: "1.2 × 5 m",
    start: "set out 20 May",
    bloom: expect.stringMatching(/^from \d+ Jun on$/),
    nearest: "B03-1",
    nearestDistance: expect.stringMatching(/^1\.7 of 7\.6 m$/),
  });
  expect(rows.find(({ code }) => code === "B03-1")?.purpose).toEqual(["seed", "bags"]);
  expect(rows.find(({ code }) => code === "B03-2")?.bloom).toBe("cut before bloom");
  expect(rows.find(({ code }) => code === "A04-1")?.nearest).toBe("");
});

test("rows come in the order of the walk, whatever their codes", () => {
  const codes = ["B10-1", "B2-1", "A1", "B2-10", "B2-9"];
  const plan = planOf(
    { varieties: [variety("v", "Ash", "carrot")] },
    [],
    codes.map((code, index) => planting(`p${index}`, code, "v", rectangle(index * 5, 0, 2, 2))),
  );
  expect(plotRows(mapInput(plan), grid).map(({ code }) => code)).toEqual([
    "B10-1",
    "B2-1",
    "A1",
    "B2-10",
    "B2-9",
  ]);
});

test("years are written when the season runs over New Year; polygons have an area", () => {
  const corners: [number, number][] = [
    [0, 0],
    [4, 0],
    [0, 3],
  ];
  const plan = planOf(
    {
      season: { name: "2026/27", first: day("2026-09-01"), last: day("2027-04-30") },
      varieties: [variety("v", "Ash", "carrot", { hybrid: true })],
    },
    [],
    [
      planting(
        "p",
        "P1",
        "v",
        { shape: "polygon", corners },
        { start: { method: "sown", date: day("2026-10-02") } },
      ),
    ],
  );
  const [row] = plotRows(mapInput(plan), grid);
  expect(row).toMatchObject({
    start: "sow 2 Oct 2026",
    size: "6 m²",
    variety: "Ash (hybrid)",
    plants: "",
  });
});

test("far pollen sources: distance and true bearing from the nearest plot they could cross with", () => {
  const plan = planOf(
    {
      site: { name: "Fallow End", upBearingDeg: 30 },
      varieties: [variety("v", "Ash", "carrot"), variety("w", "Elder", "lettuce")],
      surroundings: [
        source("north", "wild carrots", { shape: "point", x: 0, y: 301 }, { kind: "carrot" }),
        source("east", "lettuces", { shape: "point", x: 121, y: 10 }, { kind: "lettuce" }),
        source("near", "seen on the map", { shape: "point", x: 2, y: 2 }, { kind: "carrot" }),
        source("wall", "barn", rectangle(500, 0, 5, 5), { what: "building" }),
      ],
    },
    [],
    [
      planting("p", "P1", "v", rectangle(0, 0, 2, 2)),
      planting("q", "P2", "w", rectangle(0, 10, 2, 2)),
    ],
  );
  const found = farSources(mapInput(plan), ({ id }) => id !== "near");
  expect(
    found.map(({ surrounding, distanceM, bearingDeg, from }) => [
      surrounding.id,
      distanceM,
      bearingDeg,
      from,
    ]),
  ).toEqual([
    ["east", 120, expect.closeTo(120, 6), "P2"],
    ["north", 300, expect.closeTo(30, 1), "P1"],
  ]);
  expect(found.map((each) => farSourceText(each, "m"))).toEqual([
    "lettuces (lettuce): 120 m south-east of P2, true bearing 120°",
    "wild carrots (carrot): 300 m north-east of P1, true bearing 30°",
  ]);
});
