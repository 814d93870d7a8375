/** Files for others, read back by other means than those that wrote them. */
import { booleanClockwise, booleanValid, polygon } from "@turf/turf";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { copyLayout } from "../../../src/core/edits/layout-edits.ts";
import { type ExportMeans, allExports } from "../../../src/core/files/all-exports.ts";
import { exportHindrance, formatFileName } from "../../../src/core/files/export-list.ts";
import { withLots } from "../../support/with-lots.ts";
import { planRevision } from "../../../src/core/page/file-name.ts";
import { bedCornersGpx } from "../../../src/core/files/gpx.ts";
import { type LabelSize, labelSizes } from "../../../src/core/labels/label-sizes.ts";
import { openPlanText } from "../../../src/core/exchange/open-plan.ts";
import { pairsCsv } from "../../../src/core/files/pairs-csv.ts";
import { planGeojson } from "../../../src/core/exchange/plan-geojson.ts";
import { plotsCsv } from "../../../src/core/files/plots-csv.ts";
import { localFrame } from "../../../src/core/geometry/local-frame.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { book, gardenPlan, mapInput } from "../../support/paper-garden.ts";
import { fonts } from "../../support/printed.ts";
import { xmlTags } from "../../support/xml-tags.ts";

interface Written {
  readonly type: string;
  readonly features: readonly {
    readonly type: string;
    readonly id: string;
    readonly geometry: { readonly type: string; readonly coordinates: never };
    readonly properties: Readonly<Record<string, unknown>>;
  }[];
}

const garden = mapInput(gardenPlan());
const text = planGeojson(garden);
const written = JSON.parse(text) as Written;

function reopened(): Plan {
  const read = openPlanText(text, "garden.geojson", book);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.plan;
}

describe("GeoJSON", () => {
  test("keeps the rules of RFC 7946", () => {
    expect(written.type).toBe("FeatureCollection");
    expect(written.features).toHaveLength(25);
    expect(Object.keys(written)).not.toContain("crs");
    const areas = written.features.filter(({ geometry }) => geometry.type !== "Point");
    expect(areas.length).toBeGreaterThan(20);
    for (const { type, geometry, properties, id } of written.features) {
      expect(type).toBe("Feature");
      expect(typeof id).toBe("string");
      expect(properties).not.toBeNull();
      if (geometry.type === "Point") continue;
      expect(geometry.type).toBe("Polygon");
      const rings = geometry.coordinates as [number, number][][];
      rings.forEach((ring, index) => {
        expect(ring.length).toBeGreaterThanOrEqual(4);
        expect(ring.at(-1)).toEqual(ring[0]);
        expect(booleanClockwise(ring)).toBe(index > 0);
        for (const [longitude, latitude] of ring) {
          expect(Math.abs(longitude)).toBeLessThanOrEqual(180);
          expect(Math.abs(latitude)).toBeLessThanOrEqual(90);
        }
      });
      expect(booleanValid(polygon(rings))).toBe(true);
    }
  });

  test("comes back with its ids, codes, kinds, dates, purposes and covers", () => {
    const [layout] = reopened().layouts;
    const facts = (plan: Plan) => {
      const kinds = new Map(plan.varieties.map((each) => [each.id, [each.kind, each.name]]));
      return plan.layouts[0]?.plantings.map((each) => [
        each.id,
        each.code,
        kinds.get(each.variety),
        each.purpose,
        each.cover,
        each.flowering,
        each.start,
        each.plants,
        each.rows,
        each.bed,
      ]);
    };
    expect(facts(reopened())).toEqual(facts(garden.plan));
    expect(layout?.beds.map(({ id, code }) => [id, code])).toEqual(
      garden.layout.beds.map(({ id, code }) => [id, code]),
    );
    expect(reopened().surroundings.map(({ id, what, label }) => [id, what, label])).toEqual(
      garden.plan.surroundings.map(({ id, what, label }) => [id, what, label]),
    );
  });

  test("gives the same findings when it is opened again", () => {
    const plan = reopened();
    const [layout] = plan.layouts;
    if (!layout) throw new Error("no layout");
    const again = runChecks(plan, layout, book);
    const pairs = (result: typeof again) =>
      result.pairs.map((pair) => [
        pair.seedParent,
        pair.pollenSource,
        pair.standing,
        pair.distanceM.toFixed(2),
        pair.requiredM,
        pair.overlapDays,
        pair.gapDays,
      ]);
    expect(pairs(again)).toEqual(pairs(garden.result));
  });

  test("written again after it was read it is the same, but for rounding", () => {
    const round = (source: string) => source.replace(/(\d+\.\d{6})\d+/g, "$1");
    const ids = (source: string) => (JSON.parse(source) as Written).features.map(({ id }) => id);
    const again = planGeojson(mapInput({ ...reopened(), level: garden.plan.level }));
    expect(new Set(ids(again))).toEqual(new Set(ids(text)));
    expect(round(again).length / round(text).length).toBeCloseTo(1, 1);
  });
});

describe("GPX", () => {
  const tags = xmlTags(bedCornersGpx(garden.plan, garden.layout));

  test("keeps the order and the rules of its schema", () => {
    expect(tags[0]?.name).toBe("gpx");
    expect(tags[0]?.attributes.get("version")).toBe("1.1");
    expect(tags[0]?.attributes.get("xmlns")).toBe("http://www.topografix.com/GPX/1/1");
    expect(tags[0]?.attributes.get("creator")).toBe("Wideberth");
    const top = tags.filter(({ path }) => path.length === 1).map(({ name }) => name);
    expect(top).toEqual(["metadata", ...Array.from({ length: 40 }, () => "wpt")]);
    for (const { name, path, attributes } of tags) {
      if (name === "wpt") expect([...attributes.keys()]).toEqual(["lat", "lon"]);
      if (path.at(-1) === "wpt") expect(["name", "desc"]).toContain(name);
    }
  });

  test("puts each corner where it is on the ground, to a millimetre", () => {
    const { position, upBearingDeg } = garden.plan.site;
    if (!position) throw new Error("no position");
    const [first] = tags.filter(({ name }) => name === "wpt");
    const place = localFrame(position, upBearingDeg).toSheet({
      longitude: Number(first?.attributes.get("lon")),
      latitude: Number(first?.attributes.get("lat")),
    });
    const bed = garden.result.bedOutlines.get("bed-A01");
    expect(place.x).toBeCloseTo(bed?.outline.rings[0]?.[0] ?? 0, 2.7);
    expect(place.y).toBeCloseTo(bed?.outline.rings[0]?.[1] ?? 0, 2.7);
  });
});

describe("CSV", () => {
  const read = (csv: string) => {
    const [headings = [], ...rows] = Papa.parse(csv.trimEnd(), { delimiter: "," }).data;
    return rows.map((row) => Object.fromEntries(headings.map((name, at) => [name, row[at] ?? ""])));
  };

  test("of plots has a row for each planting", () => {
    const rows = read(plotsCsv(garden));
    expect(rows.map(({ code }) => code)).toContain("B03-2");
    expect(rows).toHaveLength(garden.layout.plantings.length);
    expect(rows.find(({ code }) => code === "B02-1")).toMatchObject({
      bed: "B02",
      kind: "tomato",
      variety: "Amber Lantern",
      plants: "40",
      rows: "2",
      "width m": "1.2",
      "length m": "5",
      "area m2": "6",
      "start method": "transplanted",
      "start date": "2027-05-20",
    });
  });

  test("of pairs has a row for each pair, with what it rests on", () => {
    const rows = read(pairsCsv(garden));
    const lantern = rows.find(
      (row) => row["seed parent"]?.startsWith("B02-1") && row["pollen source"]?.startsWith("B01-1"),
    );
    expect(lantern?.["standing"]).toBe("conflict");
    expect(Number(lantern?.["distance m"])).toBeLessThan(Number(lantern?.["required m"]));
    expect(lantern?.["required distance from"]).not.toBe("");
  });

  test.each(["=1+1", "+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "\t=1", "\r=1", " =1", "＝1"])(
    "never begins a cell with %j",
    (name) => {
      const plan = gardenPlan();
      const named = mapInput({
        ...plan,
        varieties: plan.varieties.map((variety) => ({ ...variety, name })),
      });
      const [row] = read(plotsCsv(named));
      expect(row?.["variety"]).toBe(`'${name}`);
    },
  );
});

describe("the list of files", () => {
  const means: ExportMeans = {
    printedAt: "2027-03-02 09:40",
    stamp: "20270302T094000Z",
    fonts: async () => fonts,
    labels: { size: labelSizes[0] as LabelSize, startAt: 1, hasQr: true, treatment: "" },
    raster: async (svg) => new TextEncoder().encode(svg.slice(0, 4)),
  };

  test("has no two alike", () => {
    const ids = allExports.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.every((id) => /^[a-z-]+$/.test(id))).toBe(true);
  });

  test.each(allExports.map((format) => [format.id, format] as const))(
    "%s is made of a garden, named after it",
    async (_, format) => {
      const shelf = withLots(garden.plan, (index) => `26-AB-${index}`);
      const two = mapInput(copyLayout("layout-1", "layout-2", "Layout 2").apply(shelf));
      expect(exportHindrance(format, two.plan, true)).toBeNull();
      expect((await format.make(two, means)).length).toBeGreaterThan(3);
      expect(formatFileName(format, two.plan, two.layout)).toMatch(
        new RegExp(
          `^fallow-end-2027-layout(?:-1|s)-(?:a4-)?[a-z-]+-rev-[0-9a-z]{5}\\.${format.extension}$`,
        ),
      );
    },
  );

  test("says what hinders it", () => {
    const { site } = garden.plan;
    const placeless = { ...garden.plan, site: { name: site.name, upBearingDeg: 0 } };
    const hindered = allExports.filter((format) => exportHindrance(format, placeless, false));
    expect(hindered.map(({ id }) => id)).toEqual([
      "lot-labels",
      "compare",
      "png",
      "geojson",
      "gpx",
    ]);
  });
});

test("a change of the plan changes its revision, and nothing else does", () => {
  const { plan, layout } = garden;
  const revision = planRevision(plan, layout);
  expect(revision).toMatch(/^[0-9A-HJKMNP-TV-Z]{5}$/);
  expect(planRevision(structuredClone<Plan>(plan), layout)).toBe(revision);
  expect(planRevision({ ...plan, title: `${plan.title}.` }, layout)).not.toBe(revision);
  expect(planRevision(plan, { ...layout, name: "Layout 2" })).not.toBe(revision);
});
