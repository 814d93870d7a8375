/**
 * The check of GeoJSON against a second, plain implementation: distances by JSTS on the projected
 * corners, windows by arithmetic of its own, distances on the ellipsoid by geographiclib.
 */
import { Geodesic } from "geographiclib-geodesic";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import { describe, expect, test } from "vitest";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { checkReport } from "../../../src/core/files/check-report.ts";
import type { ReportPair } from "../../../src/core/files/report-pair.ts";
import { openPlanText } from "../../../src/core/exchange/open-plan.ts";
import { localFrame, middlePlace } from "../../../src/core/geometry/local-frame.ts";
import { type SeededRandom, seededRandom } from "../../properties/seeded-random.ts";

const book = cropBook();

interface Sample {
  readonly id: string;
  readonly isPoint: boolean;
  /** Longitude and latitude of each corner, first not repeated. */
  readonly corners: readonly (readonly [number, number])[];
  readonly kind: string;
  readonly variety: string;
  readonly purpose: string;
  readonly window: readonly [number, number] | null;
  readonly isolationM: number;
  readonly cover: string;
}

const iso = (dayOfYear: number) =>
  new Date(Date.UTC(2027, 0, 1) + dayOfYear * 86_400_000).toISOString().slice(0, 10);

/** A star-shaped outline about a place; concave as often as not. */
function outline(random: SeededRandom, longitude: number, latitude: number, sizeM: number) {
  const count = random.whole(3, 8);
  const degreesM = 111_320;
  return Array.from({ length: count }, (_, index): readonly [number, number] => {
    const angle = ((index + 0.8 * random.next()) * 2 * Math.PI) / count;
    const reach = sizeM * (0.4 + 0.6 * random.next());
    return [
      longitude + (reach * Math.cos(angle)) / (degreesM * Math.cos((latitude * Math.PI) / 180)),
      latitude + (reach * Math.sin(angle)) / degreesM,
    ];
  });
}

function sampleField(seed: number): readonly Sample[] {
  const random = seededRandom(seed);
  const next = () => random.next();
  const [middleLon, middleLat] = [next() * 340 - 170, next() * 130 - 65];
  return Array.from({ length: 24 }, (_, index) => {
    const isPoint = next() < 0.15;
    const longitude = middleLon + (next() - 0.5) * 0.004;
    const latitude = middleLat + (next() - 0.5) * 0.003;
    const first = 150 + Math.floor(next() * 90);
    return {
      id: `f${index}`,
      isPoint,
      corners: isPoint
        ? [[longitude, latitude]]
        : outline(random, longitude, latitude, 2 + next() * 20),
      kind: random.pick(["carrot", "maize", "lettuce"]),
      variety: random.pick(["Ash", "Birch", "Elder", "elder "]),
      purpose: random.pick(["seed", "seed", "food", "other"]),
      window: next() < 0.1 ? null : [first, first + Math.floor(next() * 40)],
      isolationM: Math.floor(next() * 300),
      cover: random.pick(["none", "none", "none", "cage", "bags", "hand"]),
    };
  });
}

/** Longitudes of a file run from -180 to 180. */
function wrapped(corners: Sample["corners"]): Sample["corners"] {
  return corners.map(([longitude, latitude]) => [
    longitude > 180 ? longitude - 360 : longitude,
    latitude,
  ]);
}

function geojsonOf(samples: readonly Sample[]): string {
  return JSON.stringify({
    type: "FeatureCollection",
    features: samples.map(({ corners, ...sample }) => ({
      type: "Feature",
      id: sample.id,
      geometry: sample.isPoint
        ? { type: "Point", coordinates: wrapped(corners)[0] }
        : { type: "Polygon", coordinates: [wrapped([...corners, ...corners.slice(0, 1)])] },
      properties: {
        kind: sample.kind,
        variety: sample.variety,
        purpose: sample.purpose,
        ...(sample.window
          ? { bloomStart: iso(sample.window[0]), bloomEnd: iso(sample.window[1]) }
          : {}),
        isolationM: sample.isolationM,
        cover: sample.cover,
      },
    })),
  });
}

function reportOf(text: string, isAll: boolean): readonly ReportPair[] {
  const opened = openPlanText(text, "field.geojson", book);
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  const { plan } = opened.value;
  const [layout] = plan.layouts;
  if (!layout) throw new Error("no layout");
  const result = runChecks(plan, layout, book);
  return checkReport({ file: "field.geojson", plan, layout, book, result, isAll }).pairs;
}

const factory = new GeometryFactory();

function geometryOf(samples: readonly Sample[]) {
  const places = samples.flatMap(({ corners }) =>
    corners.map(([longitude, latitude]) => ({ longitude, latitude })),
  );
  const frame = localFrame(middlePlace(places));
  return samples.map(({ corners }) => {
    const flat = corners.map(([longitude, latitude]) => {
      const { x, y } = frame.toSheet({ longitude, latitude });
      return new Coordinate(x, y);
    });
    const [first] = flat;
    if (!first) throw new Error("no corner");
    return flat.length === 1
      ? factory.createPoint(first)
      : factory.createPolygon(factory.createLinearRing([...flat, first]), []);
  });
}

const plain = (name: string) => name.trim().toLowerCase();
const isMesh = (cover: string, kind: string) => cover === "cage" && kind !== "maize";
/** Bags and tape leave other flowers of their plants open: they guard a seed parent alone. */
const guards = (cover: string, kind: string) =>
  cover === "bags" || cover === "hand" || isMesh(cover, kind);

/** A cage takes ground to stand between two. */
function isKeptOff(parent: Sample, source: Sample, distance: number): boolean {
  if (distance > 0) {
    return guards(parent.cover, parent.kind) || isMesh(source.cover, source.kind);
  }
  return parent.cover !== "cage" && guards(parent.cover, parent.kind);
}

/** Every directed pair, judged from the words of the rule alone. */
function expectedPairs(samples: readonly Sample[]) {
  const shapes = geometryOf(samples);
  return samples.flatMap((parent, i) =>
    samples.flatMap((source, j) => {
      const isParent = !parent.isPoint && parent.purpose === "seed";
      const isSame = parent.kind === source.kind && plain(parent.variety) === plain(source.variety);
      if (i === j || !isParent || parent.kind !== source.kind || isSame) return [];
      const distance = DistanceOp.distance(shapes[i], shapes[j]);
      const guard = book.kind(parent.kind)?.guardDays?.value ?? 7;
      const [a, b] = [parent.window, source.window];
      const isDated = a !== null && b !== null;
      const overlap = isDated ? Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0]) + 1) : null;
      const gap = isDated ? Math.max(0, Math.max(a[0], b[0]) - Math.min(a[1], b[1]) - 1) : null;
      const standing =
        distance >= parent.isolationM
          ? "distance"
          : isDated && overlap === 0 && (gap ?? 0) >= guard
            ? "time"
            : isKeptOff(parent, source, distance)
              ? "cover"
              : isDated
                ? "conflict"
                : "unknown";
      return [
        {
          seedParent: parent.id,
          pollenSource: source.id,
          distance,
          requiredM: parent.isolationM,
          overlapDays: overlap,
          gapDays: gap,
          standing,
        },
      ];
    }),
  );
}

describe("pairs agree with a plain second implementation", () => {
  const seeds = Array.from({ length: 40 }, (_, index) => 1000 + index);

  test.each(seeds)("field of seed %i", (seed) => {
    const samples = sampleField(seed);
    const expected = expectedPairs(samples);
    const all = reportOf(geojsonOf(samples), true);
    expect(all.length).toBe(expected.length);
    const byIds = new Map(all.map((pair) => [`${pair.seedParent} ${pair.pollenSource}`, pair]));
    for (const { distance, ...wanted } of expected) {
      const got = byIds.get(`${wanted.seedParent} ${wanted.pollenSource}`);
      expect(got).toMatchObject(wanted);
      expect(Math.abs((got?.distanceM ?? 0) - distance)).toBeLessThan(1e-9 * Math.max(1, distance));
    }
    const near = reportOf(geojsonOf(samples), false);
    expect(near).toEqual(all.filter(({ standing }) => standing !== "distance"));
  });

  test("all standings were met", () => {
    const met = new Set(
      seeds.flatMap((seed) => expectedPairs(sampleField(seed)).map((pair) => pair.standing)),
    );
    expect([...met].toSorted()).toEqual(["conflict", "cover", "distance", "time", "unknown"]);
  });
});

describe("distances from longitude and latitude are metres on the ellipsoid", () => {
  test.each([
    [-2.91, 54.2],
    [0, 0],
    [179.99, -17],
    [25, 69.9],
    [-70, -54],
  ])("about %d, %d", (longitude, latitude) => {
    const random = seededRandom(Math.round(longitude * 100 + latitude));
    for (let run = 0; run < 50; run += 1) {
      // Up to about 5 km; every tenth time up to 70 km.
      const spread = run % 10 === 0 ? 0.8 : 0.06;
      const place = () =>
        [
          longitude + (random.next() - 0.5) * spread,
          latitude + (random.next() - 0.5) * spread,
        ] as const;
      const [one, two] = [place(), place()];
      const text = geojsonOf([
        {
          id: "one",
          isPoint: false,
          corners: outline(random, one[0], one[1], 0.003),
          kind: "carrot",
          variety: "A",
          purpose: "seed",
          window: null,
          isolationM: 100_000,
          cover: "none",
        },
        {
          id: "two",
          isPoint: true,
          corners: [two],
          kind: "carrot",
          variety: "B",
          purpose: "other",
          window: null,
          isolationM: 0,
          cover: "none",
        },
      ]);
      const [pair] = reportOf(text, true);
      const geodesicM = Geodesic.WGS84.Inverse(one[1], one[0], two[1], two[0]).s12 ?? 0;
      expect(Math.abs((pair?.distanceM ?? 0) - geodesicM)).toBeLessThan(0.003 + geodesicM * 1e-4);
      const [from, to] = pair?.closest.lonLat ?? [];
      expect(from?.[1]).toBeCloseTo(one[1], 6);
      expect(to?.[1]).toBeCloseTo(two[1], 8);
    }
  });
});
