/** Clear ground: dots with a dashed edge, so that it is told by more than its colour. */
import { type Brush, fill, stroke } from "./brush.ts";

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

function traceRings({ context, view }: Brush, rings: readonly Float64Array[]): void {
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
