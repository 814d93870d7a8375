/** Moving a planting into a bed that lies another way: it turns with the ground it comes to. */
import type { Edit } from "../../core/edits/edit.ts";
import { moveObjects, turnObjects } from "../../core/edits/move-objects.ts";
import { normalTurn } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { AreaShape, Bed } from "../../core/model/plan.ts";

/** Turns objects about a place and then moves them, as one step. */
export function turnAndMove(
  layoutId: string,
  ids: readonly string[],
  { about, turnDeg }: { readonly about: Point; readonly turnDeg: number },
  shift: Point,
  title: string,
): Edit {
  const move = moveObjects(layoutId, ids, shift.x, shift.y, title);
  if (turnDeg === 0) return move;
  const turn = turnObjects(layoutId, ids, about, turnDeg, title);
  return { ...move, apply: (plan) => move.apply(turn.apply(plan)) };
}

/**
 * Degrees a planting turns when it comes from one bed to another: as much as the beds differ, so
 * that it lies in the new one as it lay in the old. From no bed it turns to the nearest direction
 * that runs along the new bed.
 */
export function turnBetweenBeds(
  shape: AreaShape,
  from: Bed | undefined,
  to: Bed | undefined,
): number {
  if (to === undefined || to.outline.shape !== "rectangle" || shape.shape !== "rectangle") return 0;
  if (from?.outline.shape === "rectangle") {
    // A rectangle looks the same after half a turn: the shorter way round.
    return halfTurn(to.outline.turnDeg - from.outline.turnDeg);
  }
  const off = normalTurn(to.outline.turnDeg - shape.turnDeg) % 90;
  if (off > 45) return off - 90;
  return off <= -45 ? off + 90 : off;
}

function halfTurn(turnDeg: number): number {
  const turn = normalTurn(turnDeg);
  if (turn > 90) return turn - 180;
  return turn <= -90 ? turn + 180 : turn;
}
