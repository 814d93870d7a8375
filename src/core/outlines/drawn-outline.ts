/** What an outline given corner by corner becomes: a bed, ground around the beds, the site's edge. */
import { nextBedCode } from "../beds/codes.ts";
import { type Edit, drawnIds, nextId } from "../edits/edit.ts";
import { addBed, addSurrounding, changePlan } from "../edits/object-edits.ts";
import { type Point, directionDeg, pointDistance } from "../geometry/point.ts";
import { layoutOf } from "../model/layouts.ts";
import type { Plan, PolygonShape, Shape, SurroundingSort } from "../model/plan.ts";
import { drawSite, outlineTargetWords } from "./drawn-outline-words.ts";

export type OutlineTarget = "bed" | "site" | SurroundingSort;

interface TargetEntry {
  readonly value: OutlineTarget;
  /** Two corners draw a line of this width, metres; null where a line makes no sense. */
  readonly lineM: number | null;
}

/** In the order they are offered. A slope's line runs from its top to its foot. */
const entries: readonly TargetEntry[] = [
  { value: "bed", lineM: null },
  { value: "path", lineM: 1 },
  { value: "hedge", lineM: 1 },
  { value: "fence", lineM: 0.1 },
  { value: "tree", lineM: null },
  { value: "building", lineM: null },
  { value: "water", lineM: 1 },
  { value: "slope", lineM: 4 },
  { value: "pollen", lineM: 1 },
  { value: "other", lineM: null },
  { value: "site", lineM: null },
];

export const outlineTargets: readonly {
  readonly value: OutlineTarget;
  readonly label: string;
}[] = entries.map(({ value }) => ({ value, label: outlineTargetWords[value] }));

function lineWidth(target: OutlineTarget): number | null {
  return entries.find(({ value }) => value === target)?.lineM ?? null;
}

/** Fewest corners that draw something: one for a tree or a stand, two for a line. */
export function leastCorners(target: OutlineTarget): number {
  if (target === "tree" || target === "pollen") return 1;
  return lineWidth(target) === null ? 3 : 2;
}

/** The shape of the corners: a point, a narrow rectangle along a line, an outline. */
export function shapeOfCorners(corners: readonly Point[], lineM: number): Shape {
  const [first = { x: 0, y: 0 }, second] = corners;
  if (!second) return { shape: "point", ...first };
  if (corners.length > 2) return polygonOf(corners);
  return {
    shape: "rectangle",
    x: (first.x + second.x) / 2,
    y: (first.y + second.y) / 2,
    widthM: lineM,
    lengthM: pointDistance(first, second),
    turnDeg: directionDeg(first, second),
  };
}

function polygonOf(corners: readonly Point[]): PolygonShape {
  return { shape: "polygon", corners: corners.map(({ x, y }) => [x, y] as const) };
}

/** The shape that an outline of a sort of ground has. */
export function outlineShape(target: SurroundingSort, corners: readonly Point[]): Shape {
  return shapeOfCorners(corners, lineWidth(target) ?? 1);
}

/** One undo step that keeps the outline, and the id of what it made; null for the site's edge. */
export function keepOutline(
  plan: Plan,
  layoutId: string,
  target: OutlineTarget,
  corners: readonly Point[],
): { readonly edit: Edit; readonly id: string | null } {
  if (target === "site") {
    const site = { ...plan.site, outline: polygonOf(corners) };
    return { edit: changePlan({ site }, drawSite), id: null };
  }
  const layout = layoutOf(plan, layoutId);
  const id = nextId(target === "bed" ? "bed-" : "ground-", drawnIds(plan, layout));
  if (target === "bed") {
    const bed = { id, code: nextBedCode(layout), outline: polygonOf(corners) };
    return { edit: addBed(layoutId, bed), id };
  }
  const edit = addSurrounding({
    id,
    label: outlineTargetWords[target],
    what: target,
    outline: outlineShape(target, corners),
    flowering: "yes",
    cover: "none",
  });
  return { edit, id };
}
