/** What every drawing function is handed, and the few strokes they all use. Works in pixels. */
import type { Outline } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { Colours } from "./sheet-colours.ts";
import type { Size, View } from "../scene/viewport.ts";

export interface Brush extends Size {
  readonly context: CanvasRenderingContext2D;
  readonly view: View;
  readonly colours: Colours;
  /** Device pixels to a CSS pixel. */
  readonly ratio: number;
}

export interface Stroke {
  readonly colour: string;
  readonly widthPx: number;
  readonly dash?: readonly number[];
}

/** Begins a path along an outline, holes included. */
export function traceOutline(brush: Brush, outline: Outline): void {
  traceRings(brush, outline.rings);
}

/** Begins a path along rings of x, y in metres, one after the other. */
export function traceRings({ context, view }: Brush, rings: readonly Float64Array[]): void {
  context.beginPath();
  for (const ring of rings) {
    for (let index = 0; index < ring.length; index += 2) {
      const x = view.x + (ring[index] as number) * view.scale;
      const y = view.y - (ring[index + 1] as number) * view.scale;
      if (index === 0) context.moveTo(x, y);
      else context.lineTo(x, y);
    }
    context.closePath();
  }
}

export function traceLine({ context }: Brush, places: readonly Point[]): void {
  context.beginPath();
  places.forEach(({ x, y }, index) => {
    if (index === 0) context.moveTo(x, y);
    else context.lineTo(x, y);
  });
}

export function traceCircle({ context }: Brush, { x, y }: Point, radiusPx: number): void {
  context.beginPath();
  context.arc(x, y, radiusPx, 0, Math.PI * 2);
}

/** Strokes the path that was begun. */
export function stroke({ context }: Brush, { colour, widthPx, dash }: Stroke): void {
  context.strokeStyle = colour;
  context.lineWidth = widthPx;
  context.setLineDash(dash ? [...dash] : []);
  context.stroke();
  if (dash) context.setLineDash([]);
}

/** Fills the path that was begun; holes stay open. */
export function fill({ context }: Brush, colour: string | CanvasPattern): void {
  context.fillStyle = colour;
  context.fill("evenodd");
}

/** Draws with the pixels turned about a place: the place becomes 0, 0. */
export function turned({ context }: Brush, at: Point, angle: number, draw: () => void): void {
  context.save();
  context.translate(at.x, at.y);
  context.rotate(angle);
  draw();
  context.restore();
}

/** Draws with less ink. */
export function faded({ context }: Brush, alpha: number, draw: () => void): void {
  context.save();
  context.globalAlpha *= alpha;
  draw();
  context.restore();
}

/** Draws everywhere but on some boxes that do not overlap: lines then run under the words in them. */
export function around(
  { context, widthPx, heightPx }: Brush,
  boxes: readonly { readonly corners: readonly Point[] }[],
  draw: () => void,
): void {
  if (boxes.length === 0) {
    draw();
    return;
  }
  context.save();
  context.beginPath();
  context.rect(0, 0, widthPx, heightPx);
  for (const { corners } of boxes) {
    corners.forEach(({ x, y }, index) => {
      if (index === 0) context.moveTo(x, y);
      else context.lineTo(x, y);
    });
    context.closePath();
  }
  context.clip("evenodd");
  draw();
  context.restore();
}

let probe: CanvasRenderingContext2D | null = null;

/**
 * Has the dots made now of what was drawn so far. Without a graphics card a browser notes down what
 * is drawn on a canvas and makes the dots when somebody looks at it: what was noted down in slices
 * over many frames would be made in one.
 */
export function settle({ canvas }: CanvasRenderingContext2D): void {
  probe ??= document.createElement("canvas").getContext("2d");
  if (!probe) return;
  probe.canvas.width = 1;
  probe.drawImage(canvas, 0, 0, 1, 1, 0, 0, 1, 1);
  // Taking a size lets go of what was looked at, or the next stroke would copy all of it first.
  probe.canvas.width = 1;
}
