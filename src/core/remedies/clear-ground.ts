/**
 * Clear ground: where a planting could lie, with its present size and angle, without a conflict.
 * Free bed ground less everything that forbids it, both ways (its risk from others and theirs
 * from it). Sources that time, bags or tape keep apart forbid nothing, and a cage no more than its
 * room; pairs whose dates are unknown forbid as if they flowered together. What keeps harvests from
 * mixing is kept as well.
 */
import type { CheckResult } from "../checks/run-checks.ts";
import type { Point } from "../geometry/point.ts";
import { groundProblem } from "./ground-problem.ts";
import { type ClearGround, solvedGround } from "./solved-ground.ts";

/** Clear ground of a planting in the checked layout, or null when it is not a planting there. */
export function clearGround(result: CheckResult, plantingId: string): ClearGround | null {
  const problem = groundProblem(result, plantingId);
  return problem && solvedGround(problem);
}

/** The nearest place to a point among the allowed centres, or null when there is none. */
export function nearestPlace(centres: readonly Float64Array[], from: Point): Point | null {
  if (contains(centres, from)) return from;
  let best: Point | null = null;
  let bestSquare = Infinity;
  for (const ring of centres) {
    for (let index = 0; index < ring.length; index += 2) {
      const next = (index + 2) % ring.length;
      const on = nearestOnEdge(
        from,
        { x: ring[index] as number, y: ring[index + 1] as number },
        { x: ring[next] as number, y: ring[next + 1] as number },
      );
      const square = (on.x - from.x) ** 2 + (on.y - from.y) ** 2;
      if (square < bestSquare) {
        bestSquare = square;
        best = on;
      }
    }
  }
  return best;
}

function nearestOnEdge(point: Point, a: Point, b: Point): Point {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((point.x - a.x) * dx + (point.y - a.y) * dy) / square;
  const held = Math.min(1, Math.max(0, share));
  return { x: a.x + held * dx, y: a.y + held * dy };
}

function contains(rings: readonly Float64Array[], { x, y }: Point): boolean {
  let isInside = false;
  for (const ring of rings) {
    for (let index = 0; index < ring.length; index += 2) {
      const next = (index + 2) % ring.length;
      const [ax, ay, bx, by] = [ring[index], ring[index + 1], ring[next], ring[next + 1]] as [
        number,
        number,
        number,
        number,
      ];
      if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) isInside = !isInside;
    }
  }
  return isInside;
}
