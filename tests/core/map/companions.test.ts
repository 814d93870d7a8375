/** Sheets that go with the map: every bed, every seed planting, and tapes that meet. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CompanionId, companionIds } from "../../../src/core/map/companion-ids.ts";
import { setOut, whereTapesMeet } from "../../../src/core/fieldwork/set-out.ts";
import { tickFields } from "../../../src/core/fieldwork/job-ticks.ts";
import { shortDate } from "../../../src/core/model/day.ts";
import { seasonJobs } from "../../../src/core/fieldwork/season-calendar.ts";
import { allMarks } from "../../../src/core/page/scene.ts";
import { shapeCorners } from "../../../src/core/geometry/outline.ts";
import { gardenPlan, mapInput, planOf, rectangle } from "../../support/paper-garden.ts";
import { a4, darkShare, print, rasterise, scenes, textOf } from "../../support/printed.ts";

const garden = mapInput(gardenPlan());
const plain = scenes(garden, a4);

function pagesWith(...companions: readonly CompanionId[]) {
  return scenes(garden, { ...a4, companions }).slice(plain.length);
}

function wordsOf(page: { readonly marks: Parameters<typeof allMarks>[0] } | undefined) {
  return allMarks(page?.marks ?? []).flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
}

test("only the sheets asked for are added, in the order of the list", () => {
  expect(scenes(garden, { ...a4, companions: [] })).toHaveLength(plain.length);
  const names = scenes(garden, { ...a4, companions: [...companionIds].reverse() })
    .slice(plain.length)
    .map(({ name }) => name.replace(/, .*/, ""));
  expect([...new Set(names)]).toEqual([
    "Bed cards",
    "Season calendar",
    "Harvest list",
    "Isolation report",
    "Set-out table",
  ]);
});

test("the isolation report names every seed planting and every pollen source it could meet", () => {
  const words = pagesWith("isolation").flatMap(wordsOf).join(" ");
  const parents = garden.result.stands.filter(({ isSeedParent }) => isSeedParent);
  for (const { planting } of parents) expect(words).toContain(planting?.code);
  expect(words).toContain("Hollins' beet field");
  expect(words).toContain("Source of the figure: ");
  for (const part of ["Summary", "Grower", "inspector", "Signature"]) expect(words).toContain(part);
  expect(words).toContain("certifies nothing");
});

test("the calendar has its weeks in plain words, each job with a box to tick", () => {
  const pages = pagesWith("calendar");
  const words = pages.flatMap(wordsOf);
  // 12 April 2027 is a Monday, in ISO week 15 (ISO 8601).
  expect(words).toContain("Week 15: 12 to 18 April");
  const jobs = seasonJobs(garden);
  const boxes = pages.flatMap(({ marks }) =>
    allMarks(marks).filter((mark) => mark.kind === "area" && mark.fill === null),
  );
  expect(boxes).toHaveLength(jobs.length);
});

test("the harvest list has each seed planting once, the first to ripen first", () => {
  const words = pagesWith("harvest").flatMap(wordsOf);
  const seed = garden.result.stands.filter(({ isSeedParent }) => isSeedParent);
  const codes = words.filter((word) => seed.some(({ planting }) => planting?.code === word));
  expect(codes).toHaveLength(seed.length);
  const days = codes.map(
    (code) => seed.find(({ planting }) => planting?.code === code)?.ripe?.likely ?? Infinity,
  );
  expect(days).toEqual([...days].sort((a, b) => a - b));
  for (const title of ["Harvested", "taken", "Lot"]) expect(words.join(" ")).toContain(title);
});

test("a job ticked in the field is ticked on paper, with the day and by whom", () => {
  const plan = gardenPlan();
  const [job] = seasonJobs(garden);
  if (!job) throw new Error("no job");
  const entry = { ...tickFields(job, job.day + 2), id: "e1", who: "Mara" };
  const done = mapInput({ ...plan, entries: [entry] });
  const pages = scenes(done, { ...a4, companions: ["calendar"] }).slice(plain.length);
  expect(pages.flatMap(wordsOf)).toContain(`${shortDate(job.day + 2)}, Mara`);
  expect(pagesWith("calendar").flatMap(wordsOf).join(" ")).not.toContain("Mara");
});

describe("two tapes", () => {
  test("meet within a centimetre of every corner of the garden", () => {
    const table = setOut(garden.layout, "m");
    if (!table) throw new Error("no table");
    const corners = garden.layout.beds.flatMap(({ outline }) => shapeCorners(outline));
    expect(table.corners).toHaveLength(corners.length);
    table.corners.forEach(({ fromP, fromQ }, index) => {
      const met = whereTapesMeet(fromP, fromQ, table.baselineM);
      const corner = corners[index];
      expect(Math.abs(table.p.x + met.x - (corner?.x ?? 0))).toBeLessThan(0.01);
      expect(Math.abs(table.p.y + met.y - (corner?.y ?? 0))).toBeLessThan(0.01);
    });
    expect(table.worstM).toBeLessThan(0.01);
  });

  test("do so for beds anywhere, of any size a grower has", () => {
    const place = fc.double({ min: -60, max: 60, noNaN: true });
    const side = fc.double({ min: 0.3, max: 40, noNaN: true });
    const turn = fc.double({ min: -180, max: 180, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place, side, side, turn), { minLength: 1 }), (all) => {
        const beds = all.map(([x, y, widthM, lengthM, turnDeg], index) => ({
          id: `b${index}`,
          code: `B${index}`,
          outline: rectangle(x, y, widthM, lengthM, turnDeg),
        }));
        const [layout] = planOf({}, beds, []).layouts;
        expect(layout && setOut(layout, "m")?.worstM).toBeLessThan(0.01);
      }),
    );
  });

  test("are shown on paper with their stakes on the map", async () => {
    const { bytes } = await print(garden, { ...a4, companions: ["set-out"] });
    expect(textOf(bytes)).toContain("Worked check");
    const [map] = scenes(garden, { ...a4, companions: ["set-out"] });
    expect(wordsOf(map).join(" ")).toContain("stake for tapes");
    expect(wordsOf(plain[0]).join(" ")).not.toContain("stake for tapes");
    const page = rasterise(bytes, plain.length + 1);
    expect(darkShare(page, { left: 10, top: 29, width: 130, height: 150 })).toBeGreaterThan(0.01);
  });
});

test("rows are marked at both ends, one tick each, where there is room", () => {
  const marks = allMarks(scenes(garden, { ...a4, ratio: 100 })[0]?.marks ?? []);
  const ticks = marks.filter(
    (mark) =>
      mark.kind === "line" &&
      mark.points.length === 2 &&
      Math.abs(
        Math.hypot(
          (mark.points[1]?.x ?? 0) - (mark.points[0]?.x ?? 0),
          (mark.points[1]?.y ?? 0) - (mark.points[0]?.y ?? 0),
        ) - 2,
      ) < 1e-6,
  );
  const rows = garden.layout.plantings.reduce((sum, planting) => sum + (planting.rows ?? 0), 0);
  // And three rows in the key.
  expect(ticks.length).toBeGreaterThanOrEqual(rows);
});
