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

/** The geometry comes when it is first needed: it is not part of the first load. */
async function loadArranger() {
  const [{ clearGround }, { clearGroundWords }] = await Promise.all([
    import("../../core/remedies/clear-ground.ts"),
    import("../../core/remedies/clear-ground-words.ts"),
  ]);
  return { clearGround, clearGroundWords };
}

type Arranger = Awaited<ReturnType<typeof loadArranger>>;
let arranger: Arranger | null = null;

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
    const { show } = useClearGroundState.getState();
    if (!isWanted) {
      show(null);
      return;
    }
    let isCurrent = true;
    const work = (loaded: Arranger) => {
      arranger = loaded;
      if (isCurrent) show(groundNow(loaded, result, only));
    };
    // Once a frame at most; a result that comes before the frame takes this one's place.
    const frame = requestAnimationFrame(() => {
      if (arranger) work(arranger);
      else void loadArranger().then(work);
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
let known: Known | null = null;

/** The ground of the selected planting; worked out again only if more than its place has changed. */
function groundNow(
  { clearGround, clearGroundWords }: Arranger,
  result: CheckResult,
  plantingId: string | undefined,
): ShownGround | null {
  const { shown: plan, layoutId, book } = usePlanStore.getState();
  const stand = result.standById.get(plantingId ?? "");
  if (!stand?.planting) return null;
  const key = [...whatDecides(result, stand, stand.planting), plan.units];
  if (known && isSameKey(known.key, key)) return known.ground;
  const found = clearGround(result, stand.id);
  if (!found) return null;
  const { nameOf } = wordingOf({ plan, layout: layoutOf(plan, layoutId), book, result });
  const words = clearGroundWords(found, stand.planting.code, nameOf, plan.units);
  known = { key, ground: { rings: found.ground, words } };
  return known.ground;
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
