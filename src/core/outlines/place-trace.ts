/** A trace on the sheet: projected, thinned, closed or widened to what the grower says it is. */
import { EndType, JoinType, inflatePaths } from "clipper2-ts";
import type { LocalFrame, LonLat } from "../geometry/local-frame.ts";
import { rectangleCorners } from "../geometry/outline.ts";
import { type Point, directionDeg, pointDistance } from "../geometry/point.ts";
import type { PolygonShape, RectangleShape, Shape } from "../model/plan.ts";
import { type Corner, ringProblem, signedArea } from "../model/ring.ts";
import { LIMITS } from "../model/limits.ts";
import { simplifiedLine, simplifiedRing } from "./simplified-line.ts";
import type { Trace, TraceSort } from "./trace.ts";
import { counted } from "../words/plurals.ts";

export const traceRoles = [
  "skip",
  "bed",
  "site",
  "hedge",
  "fence",
  "path",
  "building",
  "water",
  "tree",
  "pollen",
  "other",
] as const;
export type TraceRole = (typeof traceRoles)[number];

/** Roles whose lines run on and get a width; of others a line is the outline, closed. */
const STRIPS: readonly TraceRole[] = ["hedge", "fence", "path"];
const POINT_ROLES: readonly TraceRole[] = ["skip", "tree", "pollen", "other"];

/** What each sort of trace can become. */
export function rolesFor(sort: TraceSort): readonly TraceRole[] {
  return sort === "point" ? POINT_ROLES : traceRoles;
}

export function needsWidth(sort: TraceSort, role: TraceRole): boolean {
  return sort === "line" && STRIPS.includes(role);
}

export interface TraceChoice {
  readonly role: TraceRole;
  /** Of a strip along a line, metres. */
  readonly widthM: number;
}

export type PlacedTrace =
  | { readonly ok: true; readonly shape: Shape }
  | { readonly ok: false; readonly problem: string };

/** Farther from the sheet's origin the projection is no longer true to 1 part in 10,000. */
const MAX_REACH_M = 50_000;
/** Four corners so near to a rectangle's become one, with a width and a length to type. */
const RECTANGLE_M = 0.02;
const STEPS_PER_M = 10_000;

/**
 * @param toleranceM how far a corner may lie from the thinned outline, metres; 0 keeps all
 */
export function placeTrace(
  trace: Trace,
  choice: TraceChoice,
  frame: LocalFrame,
  toleranceM: number,
): PlacedTrace {
  const project = (places: readonly LonLat[]) =>
    places.map((place) => onMicrometre(frame.toSheet(place)));
  const places = project(trace.places);
  const reach = Math.max(...places.map(({ x, y }) => Math.hypot(x, y)));
  if (reach > MAX_REACH_M) {
    return refused(`lies ${Math.round(reach / 1000)} km from the site`);
  }
  const [first] = places;
  if (!first) return refused("holds no place");
  if (trace.sort === "point") return { ok: true, shape: { shape: "point", ...first } };
  if (needsWidth(trace.sort, choice.role)) {
    return strip(simplifiedLine(places, toleranceM), choice.widthM);
  }
  const open = pointDistance(first, places.at(-1) ?? first) === 0 ? places.slice(0, -1) : places;
  return polygon(
    [open, ...trace.holes.map(project)].map((ring) => simplifiedRing(ring, toleranceM)),
  );
}

function refused(problem: string): PlacedTrace {
  return { ok: false, problem };
}

function onMicrometre({ x, y }: Point): Point {
  return { x: Math.round(x * 1e6) / 1e6, y: Math.round(y * 1e6) / 1e6 };
}

function polygon(rings: readonly (readonly Point[])[]): PlacedTrace {
  const cornerRings = rings.map((ring) => ring.map(({ x, y }): Corner => [x, y]));
  const [corners = [], ...holes] = cornerRings;
  const most = Math.max(...cornerRings.map((ring) => ring.length));
  if (most > LIMITS.corners) {
    return refused(`has ${most} corners, at most ${LIMITS.corners}: let more of them go`);
  }
  const least = Math.min(...cornerRings.map((ring) => ring.length));
  if (least < 3)
    return refused(`has ${counted(least, { one: "corner", other: "corners" })}, too few`);
  const problem = cornerRings.map(ringProblem).find((each) => each !== null);
  if (problem !== undefined && problem !== null) return refused(`is ${problem}`);
  const rectangle = holes.length === 0 ? rectangleOf(rings[0] ?? []) : null;
  const outline: PolygonShape = {
    shape: "polygon",
    corners,
    ...(holes.length === 0 ? {} : { holes }),
  };
  return { ok: true, shape: rectangle ?? outline };
}

/** The rectangle four corners are meant to be, or null. */
function rectangleOf(ring: readonly Point[]): RectangleShape | null {
  const [a, b, c, d] = ring;
  if (!a || !b || !c || !d || ring.length !== 4) return null;
  const sides = [
    (pointDistance(a, b) + pointDistance(c, d)) / 2,
    (pointDistance(b, c) + pointDistance(d, a)) / 2,
  ];
  const [along = 0, across = 0] = sides;
  const isAlong = along >= across;
  const shape: RectangleShape = {
    shape: "rectangle",
    ...onMicrometre({ x: (a.x + b.x + c.x + d.x) / 4, y: (a.y + b.y + c.y + d.y) / 4 }),
    widthM: Math.round(Math.min(along, across) * 1e6) / 1e6,
    lengthM: Math.round(Math.max(along, across) * 1e6) / 1e6,
    turnDeg: isAlong ? directionDeg(a, b) : directionDeg(b, c),
  };
  const off = rectangleCorners(shape).map((corner) =>
    Math.min(...ring.map((place) => pointDistance(corner, place))),
  );
  return Math.max(...off) <= RECTANGLE_M ? shape : null;
}

/** The ground along a line, half the width to either side, cut straight at its ends. */
function strip(line: readonly Point[], widthM: number): PlacedTrace {
  if (!(widthM > 0)) return refused("needs a width");
  const path = line.map(({ x, y }) => ({
    x: Math.round(x * STEPS_PER_M),
    y: Math.round(y * STEPS_PER_M),
  }));
  const grown = inflatePaths([path], (widthM / 2) * STEPS_PER_M, JoinType.Miter, EndType.Butt);
  const rings = grown.map((ring) =>
    ring.map(({ x, y }): Corner => [x / STEPS_PER_M, y / STEPS_PER_M]),
  );
  const outer = rings.filter((ring) => signedArea(ring) > 0);
  if (outer.length !== 1) return refused("encloses no ground");
  const holes = rings.filter((ring) => signedArea(ring) < 0);
  return polygon([...outer, ...holes].map((ring) => ring.map(([x, y]) => ({ x, y }))));
}
