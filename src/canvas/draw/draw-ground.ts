/** Fences, trees and slopes, as a surveyor draws them. */
import { shapeCorners, shapeCentre } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { RectangleShape } from "../../core/model/plan.ts";
import { type Brush, fill, stroke, traceCircle, traceLine, traceOutline } from "./brush.ts";
import type { SurroundingItem } from "../scene/sheet-items.ts";
import { toPx } from "../scene/viewport.ts";

/** Something so much longer than wide is drawn as one line along its middle. */
const LINE_RATIO = 4;
const POST_SPACING_PX = 18;
const POST_PX = 4;
/** A single tree has a crown of this size, whatever the zoom. */
const CROWN_PX = 11;
const HACHURE_SPACING_PX = 13;

/** The two ends of the middle line of a long narrow rectangle, sheet metres; null for any other. */
function middleLine(shape: RectangleShape): readonly [Point, Point] | null {
  const long = Math.max(shape.lengthM, shape.widthM);
  if (long / Math.min(shape.lengthM, shape.widthM) < LINE_RATIO) return null;
  const angle = ((shape.turnDeg + (shape.lengthM >= shape.widthM ? 0 : 90)) * Math.PI) / 180;
  const half = { x: (Math.sin(angle) * long) / 2, y: (Math.cos(angle) * long) / 2 };
  return [
    { x: shape.x - half.x, y: shape.y - half.y },
    { x: shape.x + half.x, y: shape.y + half.y },
  ];
}

/** A thin line with posts: along a narrow rectangle, else around the outline. */
export function drawFence(brush: Brush, { shape }: SurroundingItem): void {
  const ends = shape.shape === "rectangle" ? middleLine(shape) : null;
  const places = (ends ?? shapeCorners(shape)).map((place) => toPx(brush.view, place));
  const runs = ends ? places.slice(1) : [...places.slice(1), ...places.slice(0, 1)];
  runs.forEach((to, index) => drawFenceRun(brush, places[index] ?? to, to));
}

function drawFenceRun(brush: Brush, from: Point, to: Point): void {
  const { context, colours } = brush;
  traceLine(brush, [from, to]);
  stroke(brush, { colour: colours.ink, widthPx: 1 });
  const run = Math.hypot(to.x - from.x, to.y - from.y);
  const posts = Math.min(200, Math.max(1, Math.round(run / POST_SPACING_PX)));
  const across = { x: -(to.y - from.y) / (run || 1), y: (to.x - from.x) / (run || 1) };
  context.beginPath();
  for (let post = 0; post <= posts; post += 1) {
    const x = from.x + ((to.x - from.x) * post) / posts;
    const y = from.y + ((to.y - from.y) * post) / posts;
    context.moveTo(x - across.x * POST_PX, y - across.y * POST_PX);
    context.lineTo(x + across.x * POST_PX, y + across.y * POST_PX);
  }
  stroke(brush, { colour: colours.ink, widthPx: 2 });
}

/** The edge of the crown, and a cross where the trunk stands. */
export function drawTree(brush: Brush, item: SurroundingItem): void {
  const { colours } = brush;
  const trunk = toPx(brush.view, shapeCentre(item.shape));
  const isPoint = item.shape.shape === "point";
  if (isPoint) traceCircle(brush, trunk, CROWN_PX);
  else traceOutline(brush, item.outline);
  fill(brush, colours.sheet);
  stroke(brush, { colour: colours.clear, widthPx: 1.75, dash: [5, 3] });
  const arm = isPoint ? 3 : 5;
  for (const turn of [1, -1]) {
    traceLine(brush, [
      { x: trunk.x - arm, y: trunk.y - arm * turn },
      { x: trunk.x + arm, y: trunk.y + arm * turn },
    ]);
    stroke(brush, { colour: colours.ink, widthPx: 1.75 });
  }
}

/** Strokes that run down from the upper edge, and an arrow the way the ground falls. */
export function drawSlope(brush: Brush, item: SurroundingItem): void {
  const { colours, context, view } = brush;
  traceOutline(brush, item.outline);
  stroke(brush, { colour: colours.inkSoft, widthPx: 1, dash: [10, 4] });
  if (item.shape.shape !== "rectangle") return;
  const { x, y, widthM, lengthM, turnDeg } = item.shape;
  const angle = (turnDeg * Math.PI) / 180;
  const centre = toPx(view, { x, y });
  const half = { across: (widthM / 2) * view.scale, along: (lengthM / 2) * view.scale };
  /** Pixels across and down the fall from the middle. */
  const place = (across: number, along: number): Point => ({
    x: centre.x + across * Math.cos(angle) + along * Math.sin(angle),
    y: centre.y + across * Math.sin(angle) - along * Math.cos(angle),
  });
  context.beginPath();
  const strokes = Math.min(120, Math.floor((half.across * 2) / HACHURE_SPACING_PX));
  for (let index = 0; index <= strokes; index += 1) {
    const across = -half.across + ((index + 0.5) * half.across * 2) / (strokes + 1);
    const depth = half.along * (index % 2 === 0 ? 0.55 : 0.3);
    const [from, to] = [place(across, -half.along), place(across, -half.along + depth)];
    context.moveTo(from.x, from.y);
    context.lineTo(to.x, to.y);
  }
  stroke(brush, { colour: colours.inkSoft, widthPx: 1 });
  const reach = Math.min(half.along * 0.8, 60);
  const barb = Math.min(7, reach / 2);
  traceLine(brush, [place(0, -reach), place(0, reach)]);
  stroke(brush, { colour: colours.ink, widthPx: 1.5 });
  traceLine(brush, [place(-barb, reach - barb), place(0, reach), place(barb, reach - barb)]);
  stroke(brush, { colour: colours.ink, widthPx: 1.5 });
}
