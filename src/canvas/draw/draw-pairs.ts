/** Closest-point lines with their measures, as a surveyor writes them. */
import type { Point } from "../../core/geometry/point.ts";
import { type Brush, stroke, traceCircle, traceLine } from "./brush.ts";
import { type Box, BOX, boxWidth, drawBox, drawWords, isFree } from "./draw-words.ts";
import type { PairLine, Tone } from "./pair-lines.ts";
import type { Colours } from "./sheet-colours.ts";
import { toPx } from "../scene/viewport.ts";

/** Boxes are tried so far beside their line, pixels. */
const BESIDE_PX = 12;
/** At most so many measures are written; the rest are lines only. */
const WRITTEN_MOST = 24;
/** With more of them in view, lines would hide the plan. */
const LINES_MOST = 120;
const HELD_MOST = 60;
/** A resting line longer than this is dotted between two ends of so many pixels. */
const LONG_PX = 180;
const STUB_PX = 28;
const SIGN_RADIUS_PX = 6.5;

export function toneColour(colours: Colours, tone: Tone): string {
  switch (tone) {
    case "conflict":
      return colours.conflict;
    case "caution":
      return colours.caution;
    case "clear":
      return colours.clear;
    case "unknown":
    case "accepted":
      return colours.inkSoft;
  }
}

/**
 * Conflicts of what is not selected: a thin line with a cross. Of a long line only the ends are
 * drawn through, so that it does not cut up the sheet. Where there are very many, each stand that
 * is in conflict gets a cross instead.
 */
export function drawRestingPairs(brush: Brush, lines: readonly PairLine[]): void {
  const seen = lines.filter((line) => isInView(brush, ...endsPx(brush, line)));
  if (seen.length > LINES_MOST) {
    drawCrossesOnly(brush, seen);
    return;
  }
  for (const line of seen) {
    const [from, to] = endsPx(brush, line);
    const shown = shownPart(brush, from, to);
    if (!shown) continue;
    const colour = toneColour(brush.colours, line.tone);
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    traceLine(brush, [from, to]);
    if (length <= LONG_PX) stroke(brush, { colour, widthPx: 1 });
    else {
      stroke(brush, { colour, widthPx: 1, dash: [1, 7] });
      const stub = STUB_PX / length;
      traceLine(brush, [from, between(from, to, stub)]);
      stroke(brush, { colour, widthPx: 1 });
      traceLine(brush, [to, between(from, to, 1 - stub)]);
      stroke(brush, { colour, widthPx: 1 });
    }
    drawCross(brush, between(from, to, crossShare(length, shown)), line.tone);
  }
}

/** One cross for each stand, at the end of its worst pair. */
function drawCrossesOnly(brush: Brush, lines: readonly PairLine[]): void {
  const done = new Set<string>();
  for (const line of lines) {
    const ends = endsPx(brush, line);
    line.ids.forEach((id, index) => {
      if (done.has(id)) return;
      done.add(id);
      drawCross(brush, ends[index === 0 ? 0 : 1], line.tone);
    });
  }
}

function drawCross(brush: Brush, at: Point, tone: Tone): void {
  const colour = toneColour(brush.colours, tone);
  traceCircle(brush, at, SIGN_RADIUS_PX);
  brush.context.fillStyle = brush.colours.sheet;
  brush.context.fill();
  stroke(brush, { colour, widthPx: 1 });
  drawSign(brush, at, tone, colour);
}

/** Where along a line its cross stands: in the middle, but near the seed parent when it is long. */
function crossShare(length: number, shown: readonly [number, number]): number {
  const share = length > LONG_PX ? (STUB_PX + SIGN_RADIUS_PX) / length : 0.5;
  return shown[0] <= share && share <= shown[1] ? share : (shown[0] + shown[1]) / 2;
}

/** The sign in the ring, drawn with strokes so that it is the same whatever the type. */
function drawSign(brush: Brush, { x, y }: Point, tone: Tone, colour: string): void {
  if (tone === "conflict") {
    traceLine(brush, [
      { x: x - 2.7, y: y - 2.7 },
      { x: x + 2.7, y: y + 2.7 },
    ]);
    stroke(brush, { colour, widthPx: 1.75 });
    traceLine(brush, [
      { x: x + 2.7, y: y - 2.7 },
      { x: x - 2.7, y: y + 2.7 },
    ]);
    stroke(brush, { colour, widthPx: 1.75 });
  } else {
    drawWords(brush, { x, y: y + 0.5 }, { text: "!", face: "bold", colour });
  }
}

/**
 * Pairs of what is selected: the worst first, so that their measures find a place first.
 * @param taken boxes that measures must not cover, such as that of the dragged planting
 * @returns the same with the boxes of the measures
 */
export function drawHeldPairs(
  brush: Brush,
  lines: readonly PairLine[],
  taken: readonly Box[],
): readonly Box[] {
  const { colours } = brush;
  const seen = lines.filter((line) => isInView(brush, ...endsPx(brush, line))).slice(0, HELD_MOST);
  for (const line of seen.toReversed()) {
    const [from, to] = endsPx(brush, line);
    const colour = toneColour(colours, line.tone);
    traceLine(brush, [from, to]);
    stroke(brush, line.isLight ? { colour, widthPx: 1.25, dash: [5, 4] } : { colour, widthPx: 2 });
    for (const end of [from, to]) {
      traceCircle(brush, end, line.isLight ? 2.5 : 3.5);
      brush.context.fillStyle = colours.sheet;
      brush.context.fill();
      stroke(brush, { colour, widthPx: line.isLight ? 1.25 : 1.75 });
    }
  }
  const boxes = [...taken];
  for (const line of seen.slice(0, WRITTEN_MOST)) {
    const width = boxWidth(brush, "bold", line.text);
    const box = placeBox(brush, line, width, boxes);
    if (!box) continue;
    boxes.push(box);
    const colour = toneColour(colours, line.tone);
    drawBox(brush, box, colour, line.isLight ? 1 : 1.5);
    drawWords(
      brush,
      { x: box.left + box.width / 2, y: box.top + box.height / 2 + 0.5 },
      { text: line.text, face: "bold", colour },
    );
  }
  return boxes;
}

function endsPx({ view }: Brush, line: PairLine): readonly [Point, Point] {
  return [toPx(view, line.ends[0]), toPx(view, line.ends[1])];
}

function isInView({ widthPx, heightPx }: Brush, from: Point, to: Point): boolean {
  return (
    Math.max(from.x, to.x) >= 0 &&
    Math.min(from.x, to.x) <= widthPx &&
    Math.max(from.y, to.y) >= 0 &&
    Math.min(from.y, to.y) <= heightPx
  );
}

function between(from: Point, to: Point, share: number): Point {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}

/** The part of a line that is on the drawing, as shares of its length; null when none is. */
function shownPart(brush: Brush, from: Point, to: Point): readonly [number, number] | null {
  let [first, last] = [0, 1];
  const sides = [
    [to.x - from.x, from.x, brush.widthPx],
    [to.y - from.y, from.y, brush.heightPx],
  ] as const;
  for (const [run, start, most] of sides) {
    if (run === 0) continue;
    const cuts = [(0 - start) / run, (most - start) / run].sort((a, b) => a - b);
    first = Math.max(first, cuts[0] ?? 0);
    last = Math.min(last, cuts[1] ?? 1);
  }
  return first <= last ? [first, last] : null;
}

/** A free place for a line's measure beside the part of it that is in view. */
function placeBox(brush: Brush, line: PairLine, width: number, taken: readonly Box[]): Box | null {
  const [from, to] = endsPx(brush, line);
  const shown = shownPart(brush, from, to);
  if (!shown) return null;
  const isSteep = Math.abs(to.y - from.y) >= Math.abs(to.x - from.x);
  for (const share of [0.5, 0.35, 0.65, 0.2, 0.8]) {
    const at = between(from, to, shown[0] + (shown[1] - shown[0]) * share);
    const beside = [
      { left: at.x + BESIDE_PX, top: at.y - BOX.heightPx / 2 },
      { left: at.x - BESIDE_PX - width, top: at.y - BOX.heightPx / 2 },
      { left: at.x - width / 2, top: at.y + BESIDE_PX },
      { left: at.x - width / 2, top: at.y - BESIDE_PX - BOX.heightPx },
    ];
    for (const place of isSteep ? beside : [beside[3], beside[2], beside[0], beside[1]]) {
      if (!place) continue;
      const box = { ...place, width, height: BOX.heightPx };
      if (isFree(brush, box, taken)) return box;
    }
  }
  return null;
}
