/** Which slots of two pieces cannot do together, worked out once for every pair. */
import { type ArrangeProblem, overlapOf } from "./arrange-problem.ts";
import { type Slot, areTooNear } from "./slots.ts";

/** What two slots are to each other. */
export type Clash = "none" | "near" | "over";

export interface SlotClashes {
  /** Whether the two pieces have a distance to keep at all. */
  readonly doKeep: (a: number, b: number) => boolean;
  /** How one slot of a piece goes with one of another piece. */
  readonly between: (a: number, slotA: number, b: number, slotB: number) => Clash;
}

const CLASHES: readonly Clash[] = ["none", "near", "over"];

export function slotClashes(
  problem: ArrangeProblem,
  slots: readonly (readonly Slot[])[],
): SlotClashes {
  const metres = problem.pieces.map(
    ({ keeps }) =>
      new Map(
        keeps.flatMap((keep) => (keep.isUndated ? [] : [[keep.other, keep.metres] as const])),
      ),
  );
  const tables = slots.map((left, a) =>
    slots.map((right, b) =>
      a < b ? table(left, right, metres[a]?.get(b) ?? 0, problem.areTogether(a, b)) : null,
    ),
  );
  const between = (a: number, slotA: number, b: number, slotB: number): Clash => {
    if (a > b) return between(b, slotB, a, slotA);
    const width = slots[b]?.length ?? 0;
    return CLASHES[tables[a]?.[b]?.[slotA * width + slotB] ?? 0] as Clash;
  };
  return { doKeep: (a, b) => metres[a]?.has(b) === true, between };
}

function table(
  left: readonly Slot[],
  right: readonly Slot[],
  metres: number,
  areTogether: boolean,
): Uint8Array {
  const found = new Uint8Array(left.length * right.length);
  let at = 0;
  for (const { outline } of left) {
    for (const { outline: other } of right) {
      // The later piece first, as trouble is counted, so that rounding cannot tell them apart.
      const isOver = areTogether && overlapOf(other, outline) > 0;
      const isNear = !isOver && metres > 0 && areTooNear(other, outline, metres);
      found[at] = isOver ? 2 : isNear ? 1 : 0;
      at += 1;
    }
  }
  return found;
}
