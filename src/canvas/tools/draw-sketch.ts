/** What the tool at work draws: boxes, guides, drafts, measurements. */
import { type Point, pointDistance } from "../../core/geometry/point.ts";
import { type LengthUnit, formatLength } from "../../core/model/length.ts";
import { type Brush, fill, stroke, traceCircle, traceLine, traceOutline } from "../draw/brush.ts";
import { drawDimension } from "../draw/draw-dimensions.ts";
import {
  BOX,
  type Box,
  boxWidth,
  drawBox,
  drawWords,
  isFree,
  wordsWidth,
} from "../draw/draw-text.ts";
import { type Crossing, outlineCrossings } from "./outline-crossings.ts";
import { outlineOf } from "../../core/geometry/outline.ts";
import type { SheetItem } from "../scene/sheet-items.ts";
import type { Guide } from "../snap/guide.ts";
import type { Measurement, Sketch } from "./sketch-store.ts";
import { useTypedValues } from "./typed-values.ts";
import { toPx } from "../scene/viewport.ts";
import * as said from "../scene/tool-words.ts";

/** Where the readout stands to the pointer, pixels: the first place that hides no other words. */
const READOUT_PLACES = [
  { side: "right", down: 16 },
  { side: "left", down: 16 },
  { side: "right", down: -36 },
  { side: "left", down: -36 },
  { side: "right", down: 56 },
  { side: "left", down: 56 },
  { side: "right", down: -76 },
  { side: "left", down: -76 },
] as const;

export function drawSketch(
  brush: Brush,
  sketch: Sketch,
  unit: LengthUnit,
  dropBed: SheetItem | undefined,
  taken: readonly Box[],
): void {
  const { colours, context } = brush;
  if (dropBed) {
    traceOutline(brush, dropBed.outline);
    stroke(brush, { colour: colours.held, widthPx: 4 });
  }
  for (const guide of sketch.guides) drawGuide(brush, guide, unit, sketch.readout?.at ?? null);
  if (sketch.rectangle) {
    traceOutline(brush, outlineOf(sketch.rectangle));
    fill(brush, colours.bed);
    stroke(brush, { colour: colours.held, widthPx: 2 });
  }
  if (sketch.region) {
    const [from, to] = [toPx(brush.view, sketch.region[0]), toPx(brush.view, sketch.region[1])];
    context.beginPath();
    context.rect(from.x, from.y, to.x - from.x, to.y - from.y);
    context.globalAlpha = 0.12;
    fill(brush, colours.held);
    context.globalAlpha = 1;
    stroke(brush, { colour: colours.held, widthPx: 1.25, dash: [5, 3] });
  }
  for (const { from, to, distanceM } of sketch.gaps) {
    // A gap that has become equal to another is written by its guide.
    const isEqual = sketch.guides.some((guide) =>
      guide.gaps?.some((gap) => isAbout(gap, distanceM)),
    );
    if (!isEqual) drawDimension(brush, { from, to, colour: colours.inkSoft }, unit);
  }
  drawDraft(brush, sketch);
  if (sketch.measurement) drawMeasurement(brush, sketch.measurement, unit);
  const { readout } = sketch;
  // The fields of a typed size say the same and stand in the same place.
  if (readout && useTypedValues.getState().owner === null) {
    drawReadout(brush, toPx(brush.view, readout.at), readout.text, taken);
  }
}

function isAbout([from, to]: readonly [Point, Point], distanceM: number): boolean {
  return Math.abs(pointDistance(from, to) - distanceM) < 1e-4;
}

/** @param pointer the words of a guide stand at its end away from there */
function drawGuide(
  brush: Brush,
  { from, to, label, gaps }: Guide,
  unit: LengthUnit,
  pointer: Point | null,
): void {
  const { colours, view } = brush;
  const ends = [toPx(view, from), toPx(view, to)] as const;
  for (const [start, finish] of gaps ?? []) {
    drawDimension(brush, { from: start, to: finish, colour: colours.held }, unit);
  }
  traceLine(brush, ends);
  stroke(brush, { colour: colours.held, widthPx: 1, dash: [3, 3] });
  const upper = ends[0].y < ends[1].y ? ends[0] : ends[1];
  const away = pointer && pointDistance(pointer, from) > pointDistance(pointer, to) ? 0 : 1;
  const end = pointer && pointDistance(from, to) > 0 ? ends[away] : upper;
  const at = { x: Math.min(Math.max(end.x, 40), brush.widthPx - 40), y: Math.max(end.y - 9, 30) };
  drawWords(brush, at, { text: label, face: "plain", colour: colours.held, hasHalo: true });
}

/** From so many corners on they are drawn small. */
const MANY_CORNERS = 24;

/** The outline being clicked together; its first corner is the one that closes it. */
function drawDraft(brush: Brush, { corners, nextCorner, curve }: Sketch): void {
  const { colours, view } = brush;
  if (curve.length > 0) {
    traceLine(
      brush,
      [...corners.slice(-1), ...curve].map((place) => toPx(view, place)),
    );
    stroke(brush, { colour: colours.held, widthPx: 1.5, dash: [6, 4] });
  }
  if (corners.length === 0) return;
  const placed = corners.map((corner) => toPx(view, corner));
  traceLine(brush, placed);
  stroke(brush, { colour: colours.held, widthPx: 2 });
  const last = placed.at(-1);
  if (nextCorner && last) {
    const isNew = !corners.some((corner) => pointDistance(corner, nextCorner) === 0);
    const isCrossing = isNew && outlineCrossings([...corners, nextCorner]).length > 0;
    traceLine(brush, [last, toPx(view, nextCorner)]);
    const colour = isCrossing ? colours.conflict : colours.held;
    stroke(brush, { colour, widthPx: 1.5, dash: [6, 4] });
  }
  for (const crossing of outlineCrossings(corners)) drawCrossing(brush, crossing);
  placed.forEach((corner, index) => {
    // Corners of a curve lie close together.
    traceCircle(brush, corner, index === 0 ? 6 : placed.length > MANY_CORNERS ? 2 : 3.5);
    fill(brush, colours.sheet);
    stroke(brush, { colour: colours.held, widthPx: 1.75 });
  });
}

/** Sides that cross are a fault: heavy and red, with a ringed cross where they do. */
function drawCrossing(brush: Brush, { sides, at }: Crossing): void {
  const { colours, view } = brush;
  for (const side of sides) {
    traceLine(
      brush,
      side.map((end) => toPx(view, end)),
    );
    stroke(brush, { colour: colours.conflict, widthPx: 3 });
  }
  const { x, y } = toPx(view, at);
  traceCircle(brush, { x, y }, 9);
  fill(brush, colours.sheet);
  stroke(brush, { colour: colours.conflict, widthPx: 1.5 });
  for (const turn of [1, -1]) {
    traceLine(brush, [
      { x: x - 4, y: y - 4 * turn },
      { x: x + 4, y: y + 4 * turn },
    ]);
    stroke(brush, { colour: colours.conflict, widthPx: 2 });
  }
  const words = { text: said.sidesCross, face: "bold", colour: colours.conflict } as const;
  drawWords(brush, { x, y: y + 20 }, { ...words, hasHalo: true });
}

/** Words for a measurement: how far, its parts across and up the sheet, and between middles. */
export function measurementText(
  { from, to, isEdgeToEdge, centres }: Measurement,
  unit: LengthUnit,
): readonly string[] {
  const across = Math.abs(to.x - from.x);
  const up = Math.abs(to.y - from.y);
  const whole = formatLength(Math.hypot(across, up), unit);
  return [
    isEdgeToEdge ? said.edgeToEdge(whole) : whole,
    said.acrossAndUp(formatLength(across, unit), formatLength(up, unit)),
    ...(centres ? [said.centreToCentre(formatLength(pointDistance(...centres), unit))] : []),
  ];
}

/** Height of a line of a measurement's words, pixels. */
const LINE_PX = 16.5;

function drawMeasurement(brush: Brush, measurement: Measurement, unit: LengthUnit): void {
  const { colours, view } = brush;
  const from = toPx(view, measurement.from);
  const to = toPx(view, measurement.to);
  if (measurement.centres) {
    traceLine(
      brush,
      measurement.centres.map((end) => toPx(view, end)),
    );
    stroke(brush, { colour: colours.inkSoft, widthPx: 1, dash: [2, 4] });
  }
  traceLine(brush, [from, to]);
  stroke(brush, { colour: colours.sheet, widthPx: 5 });
  traceLine(brush, [from, to]);
  stroke(brush, { colour: colours.ink, widthPx: 1.5 });
  for (const end of [from, to]) {
    traceCircle(brush, end, 3.5);
    fill(brush, colours.sheet);
    stroke(brush, { colour: colours.ink, widthPx: 1.5 });
  }
  const lines = measurementText(measurement, unit);
  const faceOf = (index: number) => (index === 0 ? "bold" : "plain");
  const width = Math.max(...lines.map((text, index) => boxWidth(brush, faceOf(index), text)));
  const height = LINE_PX * lines.length + 4;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const left = Math.min(Math.max(middle.x + 12, 4), brush.widthPx - width - 4);
  const top = Math.min(Math.max(middle.y + 8, 4), brush.heightPx - height - 4);
  drawBox(brush, { left, top, width, height }, colours.ink);
  lines.forEach((text, index) => {
    const at = { x: left + BOX.sidePx, y: top + 10.5 + index * LINE_PX };
    const colour = index === 0 ? colours.ink : colours.inkSoft;
    drawWords(brush, at, { text, face: faceOf(index), colour, align: "left" });
  });
}

/** Words beside the pointer, in a box that stays on the sheet. */
function drawReadout(
  brush: Brush,
  at: { readonly x: number; readonly y: number },
  text: string,
  taken: readonly Box[],
) {
  const width = wordsWidth(brush, "bold", text) + 12;
  const beside = READOUT_PLACES.map(({ side, down }): Box => {
    const wanted = side === "right" ? at.x + 14 : at.x - 14 - width;
    return {
      left: Math.min(Math.max(4, wanted), brush.widthPx - width - 4),
      top: Math.min(Math.max(4, at.y + down), brush.heightPx - 24),
      width,
      height: 20,
    };
  });
  const place = beside.find((box) => isFree(brush, box, taken)) ?? beside[0];
  if (!place) return;
  const { left, top } = place;
  drawBox(brush, { left, top, width, height: 20 }, brush.colours.held);
  drawWords(
    brush,
    { x: left + width / 2, y: top + 10.5 },
    { text, face: "bold", colour: brush.colours.held },
  );
}
