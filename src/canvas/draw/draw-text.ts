/** Words on the sheet: plain, or in a small box of paper. */
import type { Point } from "../../core/geometry/point.ts";
import type { Colours } from "./sheet-colours.ts";
import { type Brush, turned } from "./brush.ts";

export type Face = "code" | "note" | "plain" | "bold" | "small";

/** By the colours and faces in force: those are read anew when a face of type arrives. */
const measured = new WeakMap<Colours, Map<string, number>>();
/** More than a plan of ten thousand has codes. */
const WIDTHS_MOST = 20_000;

export function fontOf({ colours }: Brush, face: Face): string {
  switch (face) {
    case "code":
      return `bold 12.5px ${colours.mono}`;
    case "note":
      return `italic 13.5px ${colours.serif}`;
    case "plain":
      return `13px ${colours.sans}`;
    case "bold":
      return `bold 13px ${colours.sans}`;
    case "small":
      return `12px ${colours.mono}`;
  }
}

/** Width of words in pixels; measured once for each face and text. */
export function wordsWidth(brush: Brush, face: Face, text: string): number {
  const font = fontOf(brush, face);
  const key = `${font}|${text}`;
  const widths = measured.get(brush.colours) ?? new Map<string, number>();
  measured.set(brush.colours, widths);
  const known = widths.get(key);
  if (known !== undefined) return known;
  if (widths.size >= WIDTHS_MOST) widths.clear();
  brush.context.font = font;
  const width = brush.context.measureText(text).width;
  widths.set(key, width);
  return width;
}

export interface Words {
  readonly text: string;
  readonly face: Face;
  readonly colour: string;
  readonly align?: CanvasTextAlign;
  /** Paper around the letters, so that they can be read over lines. */
  readonly hasHalo?: boolean;
}

/** Words beside or about a place, their middle at its height. */
export function drawWords(brush: Brush, at: Point, words: Words, angle = 0): void {
  const { context, colours } = brush;
  const write = (x: number, y: number) => {
    context.font = fontOf(brush, words.face);
    context.textAlign = words.align ?? "center";
    context.textBaseline = "middle";
    if (words.hasHalo) {
      context.strokeStyle = colours.sheet;
      context.lineWidth = 4;
      context.lineJoin = "round";
      context.strokeText(words.text, x, y);
    }
    context.fillStyle = words.colour;
    context.fillText(words.text, x, y);
  };
  if (angle === 0) write(at.x, at.y);
  else turned(brush, at, angle, () => write(0, 0));
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Height of a box of one line, and the paper left and right of its words. */
export const BOX = { heightPx: 19, sidePx: 6 } as const;

export function boxWidth(brush: Brush, face: Face, text: string): number {
  return Math.ceil(wordsWidth(brush, face, text)) + BOX.sidePx * 2;
}

/** A box of paper with an edge. */
export function drawBox({ context, colours }: Brush, box: Box, edge: string, edgePx = 1): void {
  context.beginPath();
  context.roundRect(box.left, box.top, box.width, box.height, 2.5);
  context.fillStyle = colours.sheet;
  context.fill();
  context.strokeStyle = edge;
  context.lineWidth = edgePx;
  context.setLineDash([]);
  context.stroke();
}

/** Paper without an edge: what is under words shows faintly, and no line runs through them. */
export function drawPaper({ context, colours }: Brush, { left, top, width, height }: Box): void {
  context.save();
  context.globalAlpha *= 0.86;
  context.fillStyle = colours.sheet;
  context.fillRect(left, top + 1, width, height - 2);
  context.restore();
}

/** Whether a box lies wholly on the drawing and clear of others. */
export function isFree({ widthPx, heightPx }: Brush, box: Box, taken: readonly Box[]): boolean {
  const isOnSheet =
    box.left >= 2 &&
    box.top >= 2 &&
    box.left + box.width <= widthPx - 2 &&
    box.top + box.height <= heightPx - 2;
  return isOnSheet && taken.every((other) => !overlaps(box, other));
}

/** Boxes keep so many pixels off each other. */
export const CLEAR_PX = 2;

export function overlaps(a: Box, b: Box): boolean {
  return (
    a.left < b.left + b.width + CLEAR_PX &&
    b.left < a.left + a.width + CLEAR_PX &&
    a.top < b.top + b.height + CLEAR_PX &&
    b.top < a.top + a.height + CLEAR_PX
  );
}
