/** Hatches as patterns of the canvas, made once per theme and pixel ratio. */
import type { Hatch } from "../../core/page/hatch.ts";
import { TILE_PX, hatchTile } from "./hatch-tile.ts";
import type { Colours } from "./sheet-colours.ts";
import type { View } from "../scene/viewport.ts";

/** The ground colour of a hatch. */
export function hatchTint(hatch: Hatch, colours: Colours): string {
  return colours.isForced ? colours.sheet : hatch.tint[colours.theme];
}

const patterns = new Map<string, CanvasPattern>();

function keyOf(hatch: Hatch, colours: Colours, ratio: number): string {
  return [hatch.id, hatchTint(hatch, colours), hatchInk(hatch, colours), ratio].join(" ");
}

function hatchInk(hatch: Hatch, colours: Colours): string {
  return colours.isForced ? colours.ink : hatch.ink[colours.theme];
}

/** Whether its tile has been made: that takes some milliseconds. */
export function hasPattern(hatch: Hatch, colours: Colours, ratio: number): boolean {
  return patterns.has(keyOf(hatch, colours, ratio));
}

/**
 * The hatch as a fill, its tint beneath. Its size is in screen pixels whatever the zoom; it lies
 * still on the sheet while that is panned, so that neighbouring areas join up.
 */
export function hatchPattern(
  context: CanvasRenderingContext2D,
  hatch: Hatch,
  colours: Colours,
  view: View,
  ratio: number,
): CanvasPattern | string {
  const tint = hatchTint(hatch, colours);
  const ink = hatchInk(hatch, colours);
  const key = keyOf(hatch, colours, ratio);
  let pattern = patterns.get(key);
  if (!pattern) {
    const made = context.createPattern(tileCanvas(hatch, tint, ink, ratio), "repeat");
    if (!made) return tint;
    pattern = made;
    patterns.set(key, pattern);
  }
  const step = TILE_PX / Math.round(TILE_PX * ratio);
  const onPixel = (px: number) => Math.round(px * ratio) / ratio;
  pattern.setTransform(new DOMMatrix([step, 0, 0, step, onPixel(view.x), onPixel(view.y)]));
  return pattern;
}

/** What every tile is drawn on: a pattern keeps what was there when it was made. */
let drawnOn: CanvasRenderingContext2D | null = null;

function tileCanvas(hatch: Hatch, tint: string, ink: string, ratio: number): HTMLCanvasElement {
  const canvas = drawnOn?.canvas ?? document.createElement("canvas");
  const context = (drawnOn ??= canvas.getContext("2d"));
  if (!context) return canvas;
  const side = Math.round(TILE_PX * ratio);
  if (canvas.width !== side) {
    canvas.width = side;
    canvas.height = side;
  }
  context.setTransform(side / TILE_PX, 0, 0, side / TILE_PX, 0, 0);
  context.fillStyle = tint;
  context.fillRect(0, 0, TILE_PX, TILE_PX);
  context.strokeStyle = ink;
  context.fillStyle = ink;
  const { strokes, marks } = hatchTile(hatch);
  context.beginPath();
  for (const { from, to } of strokes) {
    context.moveTo(from.x, from.y);
    context.lineTo(to.x, to.y);
  }
  context.stroke();
  // One path for all of them: a tile of fine dots has over a thousand.
  context.beginPath();
  for (const { mark, at, radius } of marks) {
    if (mark === "plus") {
      context.moveTo(at.x - radius, at.y);
      context.lineTo(at.x + radius, at.y);
      context.moveTo(at.x, at.y - radius);
      context.lineTo(at.x, at.y + radius);
    } else {
      context.moveTo(at.x + radius, at.y);
      context.arc(at.x, at.y, radius, 0, Math.PI * 2);
    }
  }
  if (marks[0]?.mark === "dot") context.fill();
  else context.stroke();
  return canvas;
}
