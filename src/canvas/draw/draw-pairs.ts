/** Closest-point lines with their measures, as a surveyor writes them. */
import type { Point } from "../../core/geometry/point.ts";
import { type LabelBox, directions } from "../../core/page/label-box.ts";
import { type Brush, around, stroke, traceCircle, traceLine } from "./brush.ts";
import { type Box, BOX, boxWidth, drawBox, drawWords, isFree } from "./draw-text.ts";
import type { PairLine, Tone } from "./pair-lines.ts";
import type { Colours } from "./sheet-colours.ts";
import { toPx } from "../scene/viewport.ts";

/** Boxes are tried so far beside their line, pixels. */
const BESIDE_PX = [12, 26, 44] as const;
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
 * @param words what the crosses keep off
 * @param within where alone it shows, pixels
 */
export function* drawRestingPairs(
  brush: Brush,
  lines: readonly PairLine[],
  words: readonly LabelBox[] = [],
  within: Box = { left: 0, top: 0, width: brush.widthPx, height: brush.heightPx },
): Generator<undefined, void> {
  const seen = lines.filter((line) => isInView(brush, line));
  if (seen.length > LINES_MOST) {
    yield* drawCrossesOnly(brush, seen, within);
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
    const share = crossShare(length, shown);
    drawCross(brush, crossPlace(from, to, [share, ...shares(shown)], words), line.tone);
  }
}

/** So many lines are gone through in one step. */
const STEP_LINES = 1000;

/** One cross for each stand, at the end of its worst pair. */
function* drawCrossesOnly(
  brush: Brush,
  lines: readonly PairLine[],
  within: Box,
): Generator<undefined, void> {
  const done = new Set<string>();
  const stamps = new Map<Tone, HTMLCanvasElement>();
  const { context, ratio, view } = brush;
  const { left, top, width, height } = within;
  const onPixel = (px: number) => Math.round((px - STAMP_PX / 2) * ratio) / ratio;
  for (const [place, { ids, ends, tone }] of lines.entries()) {
    if (place % STEP_LINES === STEP_LINES - 1) yield;
    for (const at of [0, 1] as const) {
      if (done.has(ids[at])) continue;
      done.add(ids[at]);
      const { x, y } = toPx(view, ends[at]);
      if (Math.abs(x - left - width / 2) > width / 2 + STAMP_PX) continue;
      if (Math.abs(y - top - height / 2) > height / 2 + STAMP_PX) continue;
      const stamp = stamps.get(tone) ?? crossStamp(brush, tone);
      stamps.set(tone, stamp);
      context.drawImage(stamp, onPixel(x), onPixel(y), STAMP_PX, STAMP_PX);
    }
  }
}

/** Side of the picture of a cross. */
const STAMP_PX = 16;

/** A cross drawn once, to be put down thousands of times. */
function crossStamp(brush: Brush, tone: Tone): HTMLCanvasElement {
  const canvas = document.createElement("canvas");
  canvas.width = Math.ceil(STAMP_PX * brush.ratio);
  canvas.height = canvas.width;
  const context = canvas.getContext("2d");
  if (context) {
    context.scale(canvas.width / STAMP_PX, canvas.height / STAMP_PX);
    drawCross({ ...brush, context }, { x: STAMP_PX / 2, y: STAMP_PX / 2 }, tone);
  }
  return canvas;
}

/** Shares of a line at which a cross may stand, in the part that is seen. */
function shares([first, last]: readonly [number, number]): readonly number[] {
  return [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9, 0, 1].map(
    (share) => first + (last - first) * share,
  );
}

/** On the line where no words are, else beside it, else at the first share. */
function crossPlace(
  from: Point,
  to: Point,
  tried: readonly number[],
  words: readonly LabelBox[],
): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const out = { x: (from.y - to.y) / length, y: (to.x - from.x) / length };
  const [first = 0.5] = tried;
  for (const aside of [0, 11, -11, 18, -18]) {
    for (const share of tried) {
      const on = between(from, to, share);
      const at = { x: on.x + out.x * aside, y: on.y + out.y * aside };
      if (!words.some((label) => isOn(label, at, SIGN_RADIUS_PX))) return at;
    }
  }
  return between(from, to, first);
}

/** Whether a place lies on a box of words, or within some pixels of it. */
function isOn({ centre, width, height, turnDeg }: LabelBox, at: Point, reachPx: number): boolean {
  const { right, down } = directions(turnDeg);
  const [dx, dy] = [at.x - centre.x, at.y - centre.y];
  return (
    Math.abs(dx * right.x + dy * right.y) < width / 2 + reachPx &&
    Math.abs(dx * down.x + dy * down.y) < height / 2 + reachPx
  );
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
 * @param words codes and names: lines run under them and measures stand off them
 * @returns the same with the boxes of the measures
 */
export function drawHeldPairs(
  brush: Brush,
  lines: readonly PairLine[],
  taken: readonly Box[],
  words: readonly LabelBox[],
): readonly Box[] {
  const { colours } = brush;
  const seen = lines.filter((line) => isInView(brush, line)).slice(0, HELD_MOST);
  around(brush, words, () => {
    for (const line of seen.toReversed()) drawHeldLine(brush, line);
  });
  const boxes = [...taken, ...words.map(({ bounds }) => bounds)];
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

function drawHeldLine(brush: Brush, line: PairLine): void {
  const { colours } = brush;
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

function endsPx({ view }: Brush, line: PairLine): readonly [Point, Point] {
  return [toPx(view, line.ends[0]), toPx(view, line.ends[1])];
}

/** Asked of thousands: nothing is made for it. */
function isInView({ view, widthPx, heightPx }: Brush, { ends: [a, b] }: PairLine): boolean {
  return (
    view.x + Math.max(a.x, b.x) * view.scale >= 0 &&
    view.x + Math.min(a.x, b.x) * view.scale <= widthPx &&
    view.y - Math.min(a.y, b.y) * view.scale >= 0 &&
    view.y - Math.max(a.y, b.y) * view.scale <= heightPx
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
  for (const awayPx of BESIDE_PX) {
    for (const share of [0.5, 0.35, 0.65, 0.2, 0.8]) {
      const at = between(from, to, shown[0] + (shown[1] - shown[0]) * share);
      for (const place of besidePlaces(at, width, awayPx, isSteep)) {
        const box = { ...place, width, height: BOX.heightPx };
        if (isFree(brush, box, taken)) return box;
      }
    }
  }
  return null;
}

function besidePlaces({ x, y }: Point, width: number, awayPx: number, isSteep: boolean) {
  const sides = [
    { left: x + awayPx, top: y - BOX.heightPx / 2 },
    { left: x - awayPx - width, top: y - BOX.heightPx / 2 },
  ];
  const ends = [
    { left: x - width / 2, top: y - awayPx - BOX.heightPx },
    { left: x - width / 2, top: y + awayPx },
  ];
  return isSteep ? [...sides, ...ends.toReversed()] : [...ends, ...sides];
}
