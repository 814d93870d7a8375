/** Works out the clear ground of a planting while it is dragged, or when asked for. */
import { useEffect } from "react";
import { wordingOf } from "../../core/checks/checked-layout.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { Stand } from "../../core/checks/stand.ts";
import { shapeCentre } from "../../core/geometry/outline.ts";
import type { Planting } from "../../core/model/plan.ts";
import { type ShownGround, useClearGroundState } from "../../store/window/clear-ground.ts";
import { useCrossingShadeState } from "../../store/window/crossing-shade.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { useSketch } from "../tools/sketch-store.ts";

/** Asking comes when it is first needed: it is not part of the first load. */
async function loadAsking() {
  const [{ groundProblem }, { clearGroundWords }, { askForGround }] = await Promise.all([
    import("../../core/remedies/ground-problem.ts"),
    import("../../core/remedies/clear-ground-words.ts"),
    import("../../store/threads/clear-ground.ts"),
  ]);
  return { groundProblem, clearGroundWords, askForGround };
}

type Asking = Awaited<ReturnType<typeof loadAsking>>;
let asking: Asking | null = null;

/** The ground to be drawn, or null. */
export function useClearGround(): ShownGround | null {
  const result = usePlanStore((state) => state.result);
  const selection = useWindowStore((state) => state.selection);
  const isMoving = useSketch((state) => state.isMoving);
  const isAskedAlone = useClearGroundState((state) => state.isAsked);
  // The rule's line stands beside the shade of how much would cross.
  const isAskedWithShade = useCrossingShadeState((state) => state.isAsked);
  const isAsked = isAskedAlone || isAskedWithShade;
  const shown = useClearGroundState((state) => state.shown);
  const [only] = selection;
  const stand = selection.length === 1 ? result.standById.get(only ?? "") : undefined;
  const isWanted = (isMoving || isAsked) && stand?.planting !== null && stand !== undefined;
  useEffect(() => {
    if (!isWanted) {
      useClearGroundState.getState().show(null);
      endAsking();
      return;
    }
    let isCurrent = true;
    const work = (loaded: Asking) => {
      asking = loaded;
      if (isCurrent) showGround(loaded, result, only);
    };
    // Once a frame at most; a result that comes before the frame takes this one's place.
    const frame = requestAnimationFrame(() => {
      if (asking) work(asking);
      else void loadAsking().then(work, () => null);
    });
    return () => {
      isCurrent = false;
      cancelAnimationFrame(frame);
    };
  }, [isWanted, result, only]);
  return isWanted ? shown : null;
}

interface Known {
  readonly key: readonly unknown[];
  readonly ground: ShownGround;
}
/** The ground worked out last. */
let known: Known | null = null;
/** What is being worked out. */
let asked: { readonly key: readonly unknown[]; readonly end: () => void } | null = null;

function endAsking(): void {
  asked?.end();
  asked = null;
}

/**
 * Shows the ground of the selected planting, at once or when it has been worked out; that is done
 * again only if more than the planting's place has changed.
 */
function showGround(loaded: Asking, result: CheckResult, plantingId: string | undefined): void {
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
  const problem = loaded.groundProblem(result, stand?.id ?? "");
  if (!stand?.planting || !problem) return;
  const { code } = stand.planting;
  const { nameOf } = wordingOf({ plan, layout: layoutOf(plan, layoutId), book, result });
  const end = loaded.askForGround(
    problem,
    (found) => {
      asked = null;
      const words = loaded.clearGroundWords(found, code, nameOf, plan.units);
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
