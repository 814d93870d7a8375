/**
 * Pairs of shapes for measuring between: random ones, and the awkward ones that distance code gets
 * wrong. Every pair is turned and shifted as a whole, up to 10 km from the origin.
 */
import { moveShape, shapeCorners, turnShape } from "../../src/core/geometry/outline.ts";
import { type Point, turnPoint } from "../../src/core/geometry/point.ts";
import type { Shape } from "../../src/core/model/plan.ts";
import type { SeededRandom } from "../properties/seeded-random.ts";

export interface ShapePair {
  readonly name: string;
  readonly a: Shape;
  readonly b: Shape;
}

type Corners = readonly (readonly [number, number])[];

export function polygonOf(corners: Corners, holes: readonly Corners[] = []): Shape {
  const copy = (ring: Corners) => ring.map(([x, y]): [number, number] => [x, y]);
  return {
    shape: "polygon",
    corners: copy(corners),
    ...(holes.length > 0 ? { holes: holes.map(copy) } : {}),
  };
}

export function rectangle(
  x: number,
  y: number,
  widthM: number,
  lengthM: number,
  turnDeg = 0,
): Shape {
  return { shape: "rectangle", x, y, widthM, lengthM, turnDeg };
}

function pointAt(x: number, y: number): Shape {
  return { shape: "point", x, y };
}

/** A simple outline around a middle, every corner at its own distance: mostly concave. */
export function randomStar(random: SeededRandom, x = 0, y = 0, size = 5): Shape {
  const count = random.whole(3, 12);
  const corners = Array.from({ length: count }, (_, index): [number, number] => {
    const angle = ((index + random.between(0.05, 0.9)) / count) * 2 * Math.PI;
    const reach = size * random.between(0.1, 1);
    return [x + reach * Math.cos(angle), y + reach * Math.sin(angle)];
  });
  return polygonOf(corners);
}

function randomRectangle(random: SeededRandom, spread = 10): Shape {
  return rectangle(
    random.between(-spread, spread),
    random.between(-spread, spread),
    random.between(0.2, 4),
    random.between(0.2, 12),
    random.between(-180, 180),
  );
}

function anyShape(random: SeededRandom, spread = 10): Shape {
  const x = random.between(-spread, spread);
  const y = random.between(-spread, spread);
  return random.pick([
    () => pointAt(x, y),
    () => randomRectangle(random, spread),
    () => randomStar(random, x, y, random.between(0.5, 8)),
  ])();
}

/** The second shape moved so that one of its corners falls on a place of the first one's edge. */
function touching(random: SeededRandom, share: number): Pick<ShapePair, "a" | "b"> {
  const a = random.chance(0.5) ? randomRectangle(random) : randomStar(random);
  const b = random.chance(0.5) ? randomRectangle(random) : randomStar(random);
  const corners = shapeCorners(a);
  const index = random.whole(0, corners.length - 1);
  const from = corners[index] as Point;
  const to = corners[(index + 1) % corners.length] as Point;
  const corner = random.pick(shapeCorners(b));
  const onEdge = { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
  return { a, b: moveShape(b, onEdge.x - corner.x, onEdge.y - corner.y) };
}

/** Two stretches of one bed: their long edges lie on the same two lines. */
function stretches(random: SeededRandom, gapM: number): Pick<ShapePair, "a" | "b"> {
  const widthM = random.between(0.5, 2);
  const [first, second] = [random.between(0.5, 6), random.between(0.5, 6)];
  return {
    a: rectangle(0, first / 2, widthM, first),
    b: rectangle(0, first + gapM + second / 2, widthM, second),
  };
}

function hollow(random: SeededRandom): Shape {
  const hole = random.between(3, 6);
  const thick = random.between(0.1, 3);
  const outer = hole + thick;
  const ring = (half: number): Corners => [
    [-half, -half],
    [half, -half],
    [half, half],
    [-half, half],
  ];
  return polygonOf(ring(outer), [ring(hole)]);
}

function sliver(random: SeededRandom): Shape {
  const long = random.between(1, 12);
  const thin = 10 ** random.between(-7, -1);
  return polygonOf([
    [0, 0],
    [long, thin * random.between(-1, 1)],
    [long * random.between(0.2, 0.8), thin],
  ]);
}

/** A U whose arms a bar reaches between without touching them. */
function reachedInto(random: SeededRandom): Pick<ShapePair, "a" | "b"> {
  const [arm, slot, deep] = [random.between(0.5, 2), random.between(1, 3), random.between(2, 6)];
  const half = slot / 2;
  const outer = half + arm;
  const a = polygonOf([
    [-outer, 0],
    [outer, 0],
    [outer, deep],
    [half, deep],
    [half, arm / 2],
    [-half, arm / 2],
    [-half, deep],
    [-outer, deep],
  ]);
  const lift = random.between(-0.2, 1);
  return { a, b: rectangle(0, lift + arm / 2 + 4, slot * random.between(0.1, 1.02), 8) };
}

const makers: Readonly<Record<string, (random: SeededRandom) => Pick<ShapePair, "a" | "b">>> = {
  random: (random) => ({ a: anyShape(random), b: anyShape(random) }),
  "far apart": (random) => ({ a: anyShape(random), b: moveShape(anyShape(random), 900, -700) }),
  "rotated rectangles": (random) => ({ a: randomRectangle(random), b: randomRectangle(random) }),
  "concave outlines": (random) => ({
    a: randomStar(random, -4, 0, 6),
    b: randomStar(random, 4, random.between(-3, 3), 6),
  }),
  "corner on corner": (random) => touching(random, 0),
  "corner on edge": (random) => touching(random, random.next()),
  "sharing an edge": (random) => stretches(random, 0),
  "edges on one line": (random) => stretches(random, 10 ** random.between(-8, 1)),
  "edges nearly on one line": (random) => {
    const { a, b } = stretches(random, 10 ** random.between(-4, 1));
    return { a, b: turnShape(b, { x: 0, y: 0 }, 10 ** random.between(-13, -3)) };
  },
  "parallel edges": (random) => {
    const a = rectangle(0, 0, 1, random.between(1, 8));
    return { a, b: rectangle(1 + 10 ** random.between(-7, 1), random.between(-6, 6), 1, 3) };
  },
  inside: (random) => ({
    a: rectangle(0, 0, 10, 10),
    b: moveShape(anyShape(random, 1), random.between(-2, 2), random.between(-2, 2)),
  }),
  "about a hole": (random) => ({ a: hollow(random), b: anyShape(random, 4) }),
  "crossing without a corner inside": (random) => ({
    a: rectangle(0, 0, random.between(0.1, 2), 12),
    b: rectangle(0, random.between(-3, 3), 12, random.between(0.1, 2), random.between(-30, 30)),
  }),
  slivers: (random) => ({
    a: sliver(random),
    b: turnShape(sliver(random), { x: random.between(0, 4), y: 0 }, random.between(-180, 180)),
  }),
  "one twice": (random) => {
    const a = random.chance(0.5) ? randomStar(random) : randomRectangle(random);
    return { a, b: moveShape(a, random.pick([0, 1e-9, 0.1]), 0) };
  },
  "reaching into a U": reachedInto,
  "points near an outline": (random) => {
    const a = randomStar(random);
    const corner = random.pick(shapeCorners(a));
    const reach = random.pick([0, 1e-9, 1e-6, 0.01]);
    const place = turnPoint({ x: corner.x, y: corner.y + reach }, corner, random.between(0, 360));
    return { a, b: pointAt(place.x, place.y) };
  },
  "two points": (random) => ({
    a: pointAt(random.between(-9, 9), random.between(-9, 9)),
    b: random.chance(0.2) ? pointAt(1, 1) : pointAt(random.between(-9, 9), 3),
  }),
};

export const pairNames: readonly string[] = Object.keys(makers);

/** One pair; every sort of pair comes round in turn. */
export function shapePair(index: number, random: SeededRandom): ShapePair {
  const name = pairNames[index % pairNames.length] as string;
  const made = (makers[name] as (typeof makers)[string])(random);
  const turn = random.pick([0, 90, random.between(-180, 180), random.between(-180, 180)]);
  const far = random.pick([0, 10, 1000, 10_000]);
  const dx = random.between(-far, far);
  const dy = random.between(-far, far);
  const placed = (shape: Shape) => moveShape(turnShape(shape, { x: 0, y: 0 }, turn), dx, dy);
  const [a, b] = [placed(made.a), placed(made.b)];
  return random.chance(0.5) ? { name, a, b } : { name, a: b, b: a };
}
