/** What the tool at work draws: boxes, guides, drafts, measurements. */
import type { Point } from "../core/geometry/point.ts";
import { type LengthUnit, formatLength } from "../core/model/length.ts";
import { type Brush, fill, stroke, traceCircle, traceLine, traceOutline } from "./brush.ts";
import { drawReadout } from "./draw-furniture.ts";
import { BOX, boxWidth, drawBox, drawWords } from "./draw-words.ts";
import { outlineFor, type SheetItem } from "./sheet-items.ts";
import type { Measurement, Sketch } from "./sketch-store.ts";
import { toPx } from "./viewport.ts";

export function drawSketch(
  brush: Brush,
  sketch: Sketch,
  unit: LengthUnit,
  dropBed: SheetItem | undefined,
): void {
  const { colours, context } = brush;
  if (dropBed) {
    traceOutline(brush, dropBed.outline);
    stroke(brush, { colour: colours.held, widthPx: 4 });
  }
  for (const guide of sketch.guides) drawGuide(brush, guide.from, guide.to, guide.label);
  if (sketch.rectangle) {
    traceOutline(brush, outlineFor(sketch.rectangle));
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
  drawDraft(brush, sketch);
  if (sketch.measurement) drawMeasurement(brush, sketch.measurement, unit);
  if (sketch.readout) drawReadout(brush, toPx(brush.view, sketch.readout.at), sketch.readout.text);
}

function drawGuide(brush: Brush, from: Point, to: Point, label: string): void {
  const { colours, view } = brush;
  const ends = [toPx(view, from), toPx(view, to)] as const;
  traceLine(brush, ends);
  stroke(brush, { colour: colours.held, widthPx: 1, dash: [3, 3] });
  const end = ends[0].y < ends[1].y ? ends[0] : ends[1];
  const at = { x: Math.min(Math.max(end.x, 40), brush.widthPx - 40), y: Math.max(end.y - 9, 30) };
  drawWords(brush, at, { text: label, face: "plain", colour: colours.held, hasHalo: true });
}

/** The outline being clicked together; its first corner is the one that closes it. */
function drawDraft(brush: Brush, { corners, nextCorner }: Sketch): void {
  if (corners.length === 0) return;
  const { colours, view } = brush;
  const placed = corners.map((corner) => toPx(view, corner));
  traceLine(brush, placed);
  stroke(brush, { colour: colours.held, widthPx: 2 });
  const last = placed.at(-1);
  if (nextCorner && last) {
    traceLine(brush, [last, toPx(view, nextCorner)]);
    stroke(brush, { colour: colours.held, widthPx: 1.5, dash: [6, 4] });
  }
  placed.forEach((corner, index) => {
    traceCircle(brush, corner, index === 0 ? 6 : 3.5);
    fill(brush, colours.sheet);
    stroke(brush, { colour: colours.held, widthPx: 1.75 });
  });
}

/** Words for a measurement: how far, and its parts across and up the sheet. */
export function measurementText(
  { from, to, isEdgeToEdge }: Measurement,
  unit: LengthUnit,
): readonly string[] {
  const across = Math.abs(to.x - from.x);
  const up = Math.abs(to.y - from.y);
  const whole = formatLength(Math.hypot(across, up), unit);
  return [
    isEdgeToEdge ? `${whole} edge to edge` : whole,
    `${formatLength(across, unit)} across, ${formatLength(up, unit)} up`,
  ];
}

function drawMeasurement(brush: Brush, measurement: Measurement, unit: LengthUnit): void {
  const { colours, view } = brush;
  const from = toPx(view, measurement.from);
  const to = toPx(view, measurement.to);
  traceLine(brush, [from, to]);
  stroke(brush, { colour: colours.sheet, widthPx: 5 });
  traceLine(brush, [from, to]);
  stroke(brush, { colour: colours.ink, widthPx: 1.5 });
  for (const end of [from, to]) {
    traceCircle(brush, end, 3.5);
    fill(brush, colours.sheet);
    stroke(brush, { colour: colours.ink, widthPx: 1.5 });
  }
  const [first = "", second = ""] = measurementText(measurement, unit);
  const width = Math.max(boxWidth(brush, "bold", first), boxWidth(brush, "plain", second));
  const height = BOX.heightPx * 2 - 2;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const left = Math.min(Math.max(middle.x + 12, 4), brush.widthPx - width - 4);
  const top = Math.min(Math.max(middle.y + 8, 4), brush.heightPx - height - 4);
  drawBox(brush, { left, top, width, height }, colours.ink);
  const x = left + BOX.sidePx;
  drawWords(
    brush,
    { x, y: top + 10.5 },
    { text: first, face: "bold", colour: colours.ink, align: "left" },
  );
  drawWords(
    brush,
    { x, y: top + 27 },
    { text: second, face: "plain", colour: colours.inkSoft, align: "left" },
  );
}
