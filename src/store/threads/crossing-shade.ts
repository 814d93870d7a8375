/** Asks for shades on another thread: coarse at once, fine when nothing has changed for a while. */
import type { Shade, ShadeProblem } from "../../core/crossing-share/shade.ts";
import type { Bounds } from "../../core/geometry/bounds.ts";
import type { ShadeAnswer, ShadeRequest } from "./crossing-shade-worker.ts";

/** Cells along the longer side, first and when at rest. */
const COARSE_CELLS = 24;
const FINE_CELLS = 96;
/** At rest after so long, milliseconds. */
const REST_MS = 250;

let worker: Worker | null = null;
let turn = 0;

/** Hears of every shade made; returns what ends the asking. A later call takes this one's place. */
export function askForShade(
  problem: ShadeProblem,
  bounds: Bounds,
  onShade: (shade: Shade) => void,
  onFault: () => void,
): () => void {
  turn += 1;
  const mine = turn;
  const own = shadeWorker();
  const hear = ({ data }: MessageEvent<ShadeAnswer>) => {
    if (data.turn === mine && mine === turn) onShade(data.shade);
  };
  own.addEventListener("message", hear);
  own.addEventListener("error", onFault);
  const ask = (cells: number) => {
    const request: ShadeRequest = { turn: mine, problem, bounds, cells };
    own.postMessage(request);
  };
  ask(COARSE_CELLS);
  const refine = setTimeout(() => ask(FINE_CELLS), REST_MS);
  return () => {
    clearTimeout(refine);
    own.removeEventListener("message", hear);
    own.removeEventListener("error", onFault);
  };
}

/** Ends the thread; the next asking starts another. */
export function endShading(): void {
  worker?.terminate();
  worker = null;
}

function shadeWorker(): Worker {
  worker ??= new Worker(new URL("./crossing-shade-worker.ts", import.meta.url), {
    type: "module",
  });
  return worker;
}
