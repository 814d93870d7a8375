/** Outlines of a file on the sheet; distances against geodesics (geographiclib). */
import { Geodesic } from "geographiclib-geodesic";
import { describe, expect, test } from "vitest";
import { bedCornersGpx } from "../../../src/core/files/gpx.ts";
import { outlineArea, outlineOf, shapeCorners } from "../../../src/core/geometry/outline.ts";
import {
  importOutlines,
  importProblems,
  placedTraces,
  suggestedRole,
} from "../../../src/core/outlines/import-outlines.ts";
import type { TraceRole } from "../../../src/core/outlines/place-trace.ts";
import { readTraces } from "../../../src/core/outlines/read-traces.ts";
import { simplifiedLine, simplifiedRing } from "../../../src/core/outlines/simplified-line.ts";
import type { Trace } from "../../../src/core/outlines/trace.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { LAYOUT, layoutOf, littlePlan } from "../../support/little-plan.ts";

const POSITION = { longitude: 7.1134, latitude: 50.7701 };
const located: Plan = { ...littlePlan, site: { ...littlePlan.site, position: POSITION } };

function readAll(text: string): readonly Trace[] {
  const read = readTraces(text, "field.gpx");
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

function track(places: readonly (readonly [number, number])[], name = "Walked"): readonly Trace[] {
  const points = places.map(([lon, lat]) => `<trkpt lat="${lat}" lon="${lon}"/>`).join("");
  return readAll(`<gpx><trk><name>${name}</name><trkseg>${points}</trkseg></trk></gpx>`);
}

function taken(plan: Plan, traces: readonly Trace[], role: TraceRole, widthM = 2, toleranceM = 0) {
  const imported = placedTraces(plan, traces, () => ({ role, widthM }), toleranceM);
  return {
    problems: importProblems(plan, imported),
    plan: importOutlines(LAYOUT, traces, imported, "field.gpx").apply(plan),
  };
}

test("beds written as GPX come back where they were, with their codes", () => {
  const turned: Plan = { ...located, site: { ...located.site, upBearingDeg: 31 } };
  const traces = readAll(bedCornersGpx(turned, layoutOf(turned)));
  const areas = traces.filter((trace) => suggestedRole(trace) === "bed");
  expect(areas.map(({ name }) => name)).toEqual(["A01", "A02"]);
  const [layout] = turned.layouts;
  const bare: Plan = layout
    ? { ...turned, layouts: [{ ...layout, beds: [], plantings: [] }] }
    : turned;
  const back = layoutOf(taken(bare, areas, "bed").plan).beds;
  expect(back.map(({ code }) => code)).toEqual(["A01", "A02"]);
  back.forEach(({ outline }, index) => {
    const was = layoutOf(turned).beds[index]?.outline;
    if (outline.shape !== "rectangle" || was?.shape !== "rectangle")
      throw new Error("no rectangle");
    // GPX is written to eight places of a degree: about a millimetre.
    expect(outline.widthM).toBeCloseTo(was.widthM, 2);
    expect(outline.lengthM).toBeCloseTo(was.lengthM, 2);
    expect(Math.hypot(outline.x - was.x, outline.y - was.y)).toBeLessThan(0.003);
    expect(Math.abs(Math.sin(((outline.turnDeg - was.turnDeg) * Math.PI) / 180))).toBeLessThan(
      1e-3,
    );
  });
});

test("sides on the sheet are as long as on the ellipsoid", () => {
  const places = [
    [7.1134, 50.7701],
    [7.1171, 50.7703],
    [7.1168, 50.7729],
    [7.1129, 50.7722],
  ] as const;
  const { plan } = taken(located, track(places), "site");
  const corners = plan.site.outline ? shapeCorners(plan.site.outline) : [];
  expect(corners).toHaveLength(4);
  places.forEach(([lon, lat], index) => {
    const [nextLon, nextLat] = places[(index + 1) % 4] ?? [0, 0];
    const truth = Geodesic.WGS84.Inverse(lat, lon, nextLat, nextLon).s12 ?? 0;
    const [a, b] = [corners[index], corners[(index + 1) % 4]];
    const drawn = a && b ? Math.hypot(b.x - a.x, b.y - a.y) : 0;
    expect(Math.abs(drawn - truth) / truth).toBeLessThan(1e-4);
  });
});

test("a track walked round to where it began is offered as a bed, an open one as nothing", () => {
  const corner = (longitude: number, latitude: number) =>
    `<trkpt lat="${latitude}" lon="${longitude}"/>`;
  const open = corner(9, 55) + corner(9.001, 55) + corner(9.001, 55.001);
  const walked = (points: string) => `<trk><name>Field</name><trkseg>${points}</trkseg></trk>`;
  const traces = readAll(`<gpx>${walked(open + corner(9, 55))}${walked(open)}</gpx>`);
  expect(traces.map(suggestedRole)).toEqual(["bed", "skip"]);
});

test("a line becomes a strip as wide as was typed; an open track is closed to a bed", () => {
  const line = track([
    [7.1134, 50.7701],
    [7.1144, 50.7701],
  ]);
  const hedge = taken(located, line, "hedge", 1.5).plan.surroundings.at(-1);
  const length = Geodesic.WGS84.Inverse(50.7701, 7.1134, 50.7701, 7.1144).s12 ?? 0;
  expect(hedge).toMatchObject({ what: "hedge", label: "Walked" });
  expect(hedge && outlineArea(outlineOf(hedge.outline))).toBeCloseTo(length * 1.5, 0);
  const bed = taken(
    located,
    track([
      [7.1134, 50.7701],
      [7.1144, 50.7701],
      [7.1139, 50.7709],
    ]),
    "bed",
  );
  expect(bed.problems).toEqual([]);
  expect(layoutOf(bed.plan).beds.at(-1)).toMatchObject({ code: "Walked" });
});

test("an outline that crosses itself is named and refused", () => {
  const bow = track([
    [7, 50],
    [7.001, 50.001],
    [7.001, 50],
    [7, 50.001],
  ]);
  const plan = { ...located, site: { ...located.site, position: { longitude: 7, latitude: 50 } } };
  expect(taken(plan, bow, "bed").problems).toEqual([
    expect.stringMatching(/^Number 1, Walked is an outline that crosses or touches itself/),
  ]);
});

test("a file from another country is refused with how far it lies", () => {
  const far = track([
    [2, 48],
    [2.001, 48],
    [2, 48.001],
  ]);
  expect(taken(located, far, "bed").problems).toEqual([
    expect.stringMatching(/lies \d+ km from the site\.$/),
  ]);
});

test("a pollen source takes the first variety's kind, and waits for one", () => {
  const spot = readAll('<gpx><wpt lat="50.7701" lon="7.1134"><name>Wild stand</name></wpt></gpx>');
  expect(taken(located, spot, "pollen").plan.surroundings.at(-1)).toMatchObject({
    label: "Wild stand",
    kind: "tomato",
  });
  expect(taken({ ...located, varieties: [] }, spot, "pollen").problems).toHaveLength(1);
});

test("a site without a position gets the middle of the file, in the same step", () => {
  const { plan } = taken(
    littlePlan,
    track([
      [7, 50],
      [7.002, 50],
      [7.002, 50.001],
    ]),
    "site",
  );
  expect(plan.site.position?.longitude).toBeCloseTo(7.001, 12);
  expect(plan.site.position?.latitude).toBeCloseTo(50.0005, 12);
});

describe("fewer corners", () => {
  const circle = Array.from({ length: 1000 }, (_, index) => ({
    x: 20 * Math.cos((index * 2 * Math.PI) / 1000),
    y: 20 * Math.sin((index * 2 * Math.PI) / 1000),
  }));

  test("no place lies farther from the thinned outline than was typed", () => {
    const thin = simplifiedRing(circle, 0.2);
    expect(thin.length).toBeLessThan(60);
    // A chord of a circle of 20 m with the sagitta 0.2 m: 2 * acos(1 - 0.2 / 20) of turn.
    expect(thin.length).toBeGreaterThanOrEqual(
      Math.floor((2 * Math.PI) / (2 * Math.acos(1 - 0.2 / 20))),
    );
    const nearest = circle.map((place) =>
      Math.min(
        ...thin.map((a, index) => {
          const b = thin[(index + 1) % thin.length] ?? a;
          const [dx, dy] = [b.x - a.x, b.y - a.y];
          const share = ((place.x - a.x) * dx + (place.y - a.y) * dy) / (dx * dx + dy * dy);
          const held = Math.min(1, Math.max(0, share));
          return Math.hypot(place.x - a.x - held * dx, place.y - a.y - held * dy);
        }),
      ),
    );
    expect(Math.max(...nearest)).toBeLessThanOrEqual(0.2 + 1e-9);
  });

  test("zero keeps every corner, and the ends of a line always stay", () => {
    expect(simplifiedRing(circle, 0)).toEqual(circle);
    expect(simplifiedLine(circle.slice(0, 10), 1000)).toEqual([circle[0], circle[9]]);
  });
});
