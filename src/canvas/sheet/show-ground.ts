/** Has the clear ground of a planting worked out and shows it: fetched when it is first needed. */
import { wordingOf } from "../../core/checks/checked-layout.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { Stand } from "../../core/checks/stand.ts";
import { shapeCentre } from "../../core/geometry/outline.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import type { Planting } from "../../core/model/plan.ts";
import { clearGroundWords } from "../../core/remedies/clear-ground-words.ts";
import { groundProblem } from "../../core/remedies/ground-problem.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { askForGround } from "../../store/threads/clear-ground.ts";
import { type ShownGround, useClearGroundState } from "../../store/window/clear-ground.ts";

interface Known {
  readonly key: readonly unknown[];
  readonly ground: ShownGround;
}
/** The ground worked out last. */
let known: Known | null = null;
/** What is being worked out. */
let asked: { readonly key: readonly unknown[]; readonly end: () => void } | null = null;

/** Drops what is being worked out. */
export function endAsking(): void {
  asked?.end();
  asked = null;
}

/**
 * Shows the ground of the selected planting, at once or when it has been worked out; that is done
 * again only if more than the planting's place has changed.
 */
export function showGround(result: CheckResult, plantingId: string | undefined): void {
  const { show } = useClearGroundState.getState();
  const { shown: plan, layoutId, book } = usePlanStore.getState();
  const stand = result.standById.get(plantingId ?? "");
  const key = stand?.planting ? [...whatDecides(result, stand, stand.planting), plan.units] : [];
  if (asked && isSameKey(asked.key, key)) return;
  endAsking();
  if (known && isSameKey(known.key, key)) {
    show(known.ground);
    return;
  }
  // Ground of something else must not stand for it meanwhile.
  show(null);
  const problem = groundProblem(result, stand?.id ?? "");
  if (!stand?.planting || !problem) return;
  const { code } = stand.planting;
  const { nameOf } = wordingOf({ plan, layout: layoutOf(plan, layoutId), book, result });
  const end = askForGround(
    problem,
    (found) => {
      asked = null;
      const words = clearGroundWords(found, code, nameOf, plan.units);
      known = { key, ground: { rings: found.ground, words } };
      show(known.ground);
    },
    () => {
      asked = null;
    },
  );
  asked = { key, end };
}

/** Everything clear ground is made from: all other stands, the beds, and the planting but for its place. */
function whatDecides(
  { stands, bedOutlines }: CheckResult,
  stand: Stand,
  planting: Planting,
): readonly unknown[] {
  const { bed: _bed, outline, ...own } = planting;
  const centre = shapeCentre(outline);
  const shape =
    outline.shape === "rectangle"
      ? [outline.widthM, outline.lengthM, outline.turnDeg]
      : outline.corners.map(([x, y]) => [near(x - centre.x), near(y - centre.y)]);
  return [
    ...stands.filter((other) => other !== stand),
    ...[...bedOutlines.values()].map((bed) => bed.outline),
    stand.variety,
    stand.level,
    stand.book,
    stand.climate,
    JSON.stringify([own, shape]),
  ];
}

/** Moving a corner about leaves rounding behind that is no change of shape. */
function near(metres: number): number {
  return Math.round(metres * 1e6);
}

function isSameKey(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((part, index) => part === b[index]);
}
