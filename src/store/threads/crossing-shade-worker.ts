/** Makes shades on a thread of its own, one request after the other. */
import { type Shade, type ShadeProblem, shadeOver } from "../../core/crossing-share/shade.ts";
import type { Bounds } from "../../core/geometry/bounds.ts";

export interface ShadeRequest {
  /** Comes back with the answer. */
  readonly turn: number;
  readonly problem: ShadeProblem;
  readonly bounds: Bounds;
  /** Along the longer side. */
  readonly cells: number;
}

export interface ShadeAnswer {
  readonly turn: number;
  readonly shade: Shade;
}

addEventListener("message", ({ data }: MessageEvent<ShadeRequest>) => {
  const shade = shadeOver(data.problem, data.bounds, data.cells);
  const answer: ShadeAnswer = { turn: data.turn, shade };
  postMessage(answer, { transfer: [shade.shares.buffer] });
});
