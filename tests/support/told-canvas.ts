/** A brush whose canvas remembers what it is asked for. */
import type { Brush } from "../../src/canvas/draw/brush.ts";
import type { Colours } from "../../src/canvas/draw/sheet-colours.ts";

/** Everything asked of a canvas, in order. @param change of the brush: its view or its size */
export function recorder(change: Partial<Brush> = {}) {
  const told: string[] = [];
  const context = new Proxy({} as CanvasRenderingContext2D, {
    get: (_, name) =>
      name === "measureText"
        ? () => ({ width: 10 })
        : (...args: unknown[]) => void told.push(`${String(name)} ${args.join()}`),
    set: (_, name, value) => told.push(`${String(name)} = ${String(value)}`) > 0,
  });
  const colours = new Proxy({} as Colours, { get: (_, name) => String(name) });
  const brush: Brush = {
    context,
    colours,
    view: { x: 0, y: 0, scale: 40 },
    ratio: 1,
    widthPx: 800,
    heightPx: 600,
    ...change,
  };
  return { told, brush };
}
