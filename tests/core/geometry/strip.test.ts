/** Strips of ground against JSTS, which intersects any two polygons. */
import { describe, expect, test } from "vitest";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import OverlayOp from "jsts/org/locationtech/jts/operation/overlay/OverlayOp.js";
import type { Point } from "../../../src/core/geometry/point.ts";
import { type Ring, ringArea, stripParts } from "../../../src/core/geometry/strip.ts";

const factory = new GeometryFactory();

function polygon(rings: readonly Ring[]) {
  const [outer, ...holes] = rings.map((ring) =>
    factory.createLinearRing([...ring, ring[0] as Point].map(({ x, y }) => new Coordinate(x, y))),
  );
  return factory.createPolygon(outer, holes);
}

/** Area of the ground between two lines, square metres, and how many pieces it falls into. */
function reference(rings: readonly Ring[], fromY: number, toY: number) {
  const band = [
    { x: -1000, y: fromY },
    { x: 1000, y: fromY },
    { x: 1000, y: toY },
    { x: -1000, y: toY },
  ];
  const both = OverlayOp.intersection(polygon(rings), polygon([band]));
  return { area: both.getArea() as number, pieces: both.getNumGeometries() as number };
}

const horseshoe: Ring = [
  { x: 0, y: 0 },
  { x: 6, y: 0 },
  { x: 6, y: 8 },
  { x: 4, y: 8 },
  { x: 4, y: 2 },
  { x: 2, y: 2 },
  { x: 2, y: 7 },
  { x: 0, y: 7 },
];

describe("parts of ground between two lines", () => {
  test("of a horseshoe: its foot is one piece, its arms are two", () => {
    expect(stripParts([horseshoe], 0, 1).map(ringArea)).toEqual([6]);
    expect(stripParts([horseshoe], 3, 5).map(ringArea)).toEqual([4, 4]);
    expect(stripParts([horseshoe], 7.5, 9).map(ringArea)).toEqual([1]);
    expect(stripParts([horseshoe], 9, 10)).toEqual([]);
  });

  test("of ground with a hole, cut at the hole's middle", () => {
    const outer: Ring = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: 4 },
      { x: 0, y: 4 },
    ];
    const hole: Ring = [
      { x: 1, y: 1 },
      { x: 3, y: 1 },
      { x: 3, y: 3 },
      { x: 1, y: 3 },
    ];
    const [lower] = stripParts([outer, hole], 0, 2);
    expect(lower && ringArea(lower)).toBeCloseTo(6, 9);
    expect(stripParts([outer, hole], 1.2, 1.8).map(ringArea)).toHaveLength(2);
    // A line along the hole's edge parts the ground beside it.
    expect(stripParts([outer, hole], 2.5, 3).map(ringArea)).toEqual([0.5, 0.5]);
    expect(stripParts([outer, hole], 1, 1.5).map(ringArea)).toEqual([0.5, 0.5]);
  });

  test("of a thousand random outlines: the area JSTS finds, and as many pieces", () => {
    let seed = 20270401;
    const random = () => {
      seed = (seed * 1664525 + 1013904223) % 4294967296;
      return seed / 4294967296;
    };
    let several = 0;
    for (let turn = 0; turn < 1000; turn += 1) {
      // A star about the origin is always simple; its arms make many pieces.
      const count = 5 + Math.floor(random() * 20);
      const star: Ring = Array.from({ length: count }, (_, index) => {
        const angle = (2 * Math.PI * (index + 0.8 * random())) / count;
        const reach = 0.5 + 9 * random();
        return { x: reach * Math.cos(angle), y: reach * Math.sin(angle) };
      });
      const fromY = -9 + 14 * random();
      const toY = fromY + 0.1 + 5 * random();
      const parts = stripParts([turn % 2 === 0 ? star : [...star].reverse()], fromY, toY);
      const { area, pieces } = reference([star], fromY, toY);
      expect(parts.reduce((sum, part) => sum + ringArea(part), 0)).toBeCloseTo(area, 7);
      if (area > 1e-6) expect(parts, `turn ${turn}`).toHaveLength(pieces);
      if (parts.length > 1) several += 1;
    }
    expect(several).toBeGreaterThan(100);
  });
});
