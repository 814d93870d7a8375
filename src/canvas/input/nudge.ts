/** Moving the selection with the arrow keys: presses without a pause between are one undo step. */
import { moveObjects } from "../../core/edits/move-objects.ts";
import { type Point, turnPoint } from "../../core/geometry/point.ts";
import { type LengthUnit, METRES_PER_FOOT } from "../../core/model/length.ts";
import type { Layout } from "../../core/model/plan.ts";
import { onAnotherPlan, usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { gapsAround } from "../tools/late-tool.ts";
import { objectNames } from "../../core/model/object-names.ts";
import { endSketch, sketch } from "../tools/sketch-store.ts";
import * as words from "./words.ts";

const PAUSE_MS = 500;

const ARROWS: ReadonlyMap<string, Point> = new Map([
  ["ArrowLeft", { x: -1, y: 0 }],
  ["ArrowRight", { x: 1, y: 0 }],
  ["ArrowUp", { x: 0, y: 1 }],
  ["ArrowDown", { x: 0, y: -1 }],
]);

export function arrowDirection(key: string): Point | null {
  return ARROWS.get(key) ?? null;
}

/** A tenth of a metre or three inches; with Shift a metre or a foot. */
export function nudgeStep(unit: LengthUnit, isLarge: boolean): number {
  if (unit === "m") return isLarge ? 1 : 0.1;
  return isLarge ? METRES_PER_FOOT : METRES_PER_FOOT / 4;
}

/**
 * The sheet direction an arrow moves in: along the bed when everything selected lies in one
 * turned bed, so that a planting does not creep out of it; else the arrow's own.
 */
export function nudgeDirection(layout: Layout, ids: readonly string[], arrow: Point): Point {
  const beds = new Set(
    ids.map((id) => layout.plantings.find((planting) => planting.id === id)?.bed),
  );
  const [bedId] = beds;
  const bed = beds.size === 1 ? layout.beds.find((entry) => entry.id === bedId) : undefined;
  if (bed?.outline.shape !== "rectangle") return arrow;
  const off = bed.outline.turnDeg - Math.round(bed.outline.turnDeg / 90) * 90;
  return turnPoint(arrow, { x: 0, y: 0 }, off);
}

interface Run {
  readonly layoutId: string;
  readonly ids: readonly string[];
  readonly shift: Point;
  readonly timer: ReturnType<typeof setTimeout>;
}

let run: Run | null = null;

function editOf({ layoutId, ids, shift }: Pick<Run, "layoutId" | "ids" | "shift">) {
  const { plan } = usePlanStore.getState();
  const title = words.move(objectNames(plan, layoutOf(plan, layoutId), ids));
  return moveObjects(layoutId, ids, tidy(shift.x), tidy(shift.y), title);
}

/** Many small steps add up to a round number. */
function tidy(metres: number): number {
  return Math.round(metres * 1e9) / 1e9;
}

/** One press of an arrow, or one repeat while it is held. */
export function nudge(arrow: Point, isLarge: boolean): void {
  const { plan, layoutId, preview } = usePlanStore.getState();
  const { selection } = useWindowStore.getState();
  const stepM = nudgeStep(plan.units, isLarge);
  const direction = nudgeDirection(layoutOf(plan, layoutId), selection, arrow);
  const before = run?.shift ?? { x: 0, y: 0 };
  if (run) clearTimeout(run.timer);
  const shift = { x: before.x + direction.x * stepM, y: before.y + direction.y * stepM };
  const timer = setTimeout(endNudge, PAUSE_MS);
  run = { layoutId, ids: run?.ids ?? selection, shift, timer };
  preview(editOf(run));
  const [first] = run.ids;
  if (first !== undefined) sketch({ isMoving: true, gaps: gapsAround(first, run.ids) });
}

/** Keeps what the arrows have moved so far. */
export function endNudge(): void {
  if (!run) return;
  clearTimeout(run.timer);
  const edit = editOf(run);
  run = null;
  endSketch();
  usePlanStore.getState().commit(edit);
}

/** Puts back what the arrows have moved since the last pause; false when nothing was. */
export function cancelNudge(): boolean {
  if (!run) return false;
  clearTimeout(run.timer);
  run = null;
  endSketch();
  usePlanStore.getState().cancelPreview();
  return true;
}

onAnotherPlan(cancelNudge);
