/** Asks for clear ground on another thread, which is kept for the next asking. */
import { buffersOf, packOutlines } from "../../core/geometry/packed-outlines.ts";
import type { ClearGround } from "../../core/remedies/solved-ground.ts";
import type { GroundProblem } from "../../core/remedies/ground-problem.ts";
import type { GroundAnswer, GroundRequest } from "./clear-ground-request.ts";

let worker: Worker | null = null;
let turn = 0;

/** Hears of the ground once; returns what ends the asking, and with it the work on it. */
export function askForGround(
  problem: GroundProblem,
  onGround: (ground: ClearGround) => void,
  onFault: () => void,
): () => void {
  turn += 1;
  const mine = turn;
  const own = groundWorker();
  let isEnded = false;
  const end = () => {
    isEnded = true;
    own.removeEventListener("message", hear);
    own.removeEventListener("error", fail);
  };
  own.addEventListener("message", hear);
  own.addEventListener("error", fail);
  const request = requestFor(problem, mine);
  own.postMessage(request, buffersOf(request.outlines));
  return () => {
    if (isEnded) return;
    end();
    // It may work on for seconds: the next asking starts another.
    drop(own);
  };

  function hear({ data }: MessageEvent<GroundAnswer>): void {
    if (data.turn !== mine) return;
    end();
    const { centres, ground, most } = data;
    onGround({ centres, ground, untold: problem.untold, forbidding: () => (most ? [most] : []) });
  }
  function fail(): void {
    end();
    drop(own);
    onFault();
  }
}

function requestFor(
  { outline, centre, beds, taken, keeps, untold }: GroundProblem,
  mine: number,
): GroundRequest {
  return {
    turn: mine,
    centre,
    untold,
    outlines: packOutlines([outline, ...beds, ...taken, ...keeps.map((keep) => keep.outline)]),
    bedCount: beds.length,
    kept: keeps.map(({ id, distanceM }) => ({ id, distanceM })),
  };
}

function drop(own: Worker): void {
  own.terminate();
  if (worker === own) worker = null;
}

function groundWorker(): Worker {
  worker ??= new Worker(new URL("./clear-ground-worker.ts", import.meta.url), { type: "module" });
  return worker;
}
