/** What goes to the thread that works out clear ground, and what comes back. */
import type { PackedOutlines } from "../../core/geometry/packed-outlines.ts";
import type { ClearGround, Forbidding } from "../../core/remedies/solved-ground.ts";
import type { GroundProblem, Keep } from "../../core/remedies/ground-problem.ts";

export interface GroundRequest extends Pick<GroundProblem, "centre" | "untold"> {
  /** Comes back with the answer. */
  readonly turn: number;
  /** The planting's; then those of the beds, of taken ground, and of what it is kept from. */
  readonly outlines: PackedOutlines;
  readonly bedCount: number;
  /** For the last of the outlines, in their order. */
  readonly kept: readonly Omit<Keep, "outline">[];
}

export interface GroundAnswer extends Pick<ClearGround, "centres" | "ground"> {
  readonly turn: number;
  /** What forbids most, where no ground is clear. */
  readonly most: Forbidding | null;
}
