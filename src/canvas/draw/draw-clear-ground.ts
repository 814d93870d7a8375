/** Clear ground: dots with a dashed edge, so that it is told by more than its colour. */
import { type Brush, fill, stroke, traceRings } from "./brush.ts";

const TILE_PX = 8;
const DOT_RADIUS_PX = 1.1;
const TINT_ALPHA = 0.14;

export function drawClearGround(brush: Brush, rings: readonly Float64Array[]): void {
  if (rings.length === 0) return;
  const { context, colours } = brush;
  traceRings(brush, rings);
  context.save();
  context.globalAlpha *= TINT_ALPHA;
  fill(brush, colours.clear);
  context.restore();
  const dots = dotPattern(brush);
  if (dots) fill(brush, dots);
  stroke(brush, { colour: colours.clear, widthPx: 1.5, dash: [6, 4] });
}

const tiles = new Map<string, HTMLCanvasElement>();

/** Dots of one size on the screen whatever the zoom, lying still on the ground while it is panned. */
function dotPattern({ context, colours, ratio, view }: Brush): CanvasPattern | null {
  const key = `${colours.clear} ${ratio}`;
  const tile = tiles.get(key) ?? dotTile(colours.clear, ratio);
  tiles.set(key, tile);
  const pattern = context.createPattern(tile, "repeat");
  pattern?.setTransform(new DOMMatrix([1 / ratio, 0, 0, 1 / ratio, view.x, view.y]));
  return pattern;
}

function dotTile(colour: string, ratio: number): HTMLCanvasElement {
  const tile = document.createElement("canvas");
  tile.width = Math.round(TILE_PX * ratio);
  tile.height = tile.width;
  const context = tile.getContext("2d");
  if (!context) return tile;
  context.fillStyle = colour;
  context.beginPath();
  context.arc(tile.width / 2, tile.height / 2, DOT_RADIUS_PX * ratio, 0, Math.PI * 2);
  context.fill();
  return tile;
}
