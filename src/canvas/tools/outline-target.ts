/** What an outline that is drawn corner by corner becomes: a bed, ground around the beds, the site's edge. */
import { nextBedCode } from "../../core/beds/codes.ts";
import { drawnIds, nextId } from "../../core/edits/edit.ts";
import { addBed, addSurrounding, changePlan } from "../../core/edits/object-edits.ts";
import { type Point, directionDeg, pointDistance } from "../../core/geometry/point.ts";
import type { PolygonShape, Shape } from "../../core/model/plan.ts";
import type { OutlineTarget } from "../../store/window/outline-target.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";

interface TargetEntry {
  readonly value: OutlineTarget;
  readonly label: string;
  /** Two corners draw a line of this width, metres; null where a line makes no sense. */
  readonly lineM: number | null;
}

/** Names are also the first label of what is drawn. A slope's line runs from its top to its foot. */
export const outlineTargets: readonly TargetEntry[] = [
  { value: "bed", label: "Bed", lineM: null },
  { value: "path", label: "Path", lineM: 1 },
  { value: "hedge", label: "Hedge", lineM: 1 },
  { value: "fence", label: "Fence", lineM: 0.1 },
  { value: "tree", label: "Tree", lineM: null },
  { value: "building", label: "Building", lineM: null },
  { value: "water", label: "Water", lineM: 1 },
  { value: "slope", label: "Slope", lineM: 4 },
  { value: "pollen", label: "Pollen source", lineM: 1 },
  { value: "other", label: "Other ground", lineM: null },
  { value: "site", label: "Edge of the site", lineM: null },
];

export function targetEntry(target: OutlineTarget): TargetEntry {
  const [bed] = outlineTargets;
  return outlineTargets.find(({ value }) => value === target) ?? (bed as TargetEntry);
}

/** Fewest corners that draw something: one for a tree or a stand, two for a line. */
export function leastCorners(target: OutlineTarget): number {
  if (target === "tree" || target === "pollen") return 1;
  return targetEntry(target).lineM === null ? 3 : 2;
}

/** The shape of the corners: a point, a narrow rectangle along a line, an outline. */
export function shapeOfCorners(corners: readonly Point[], lineM: number): Shape {
  const [first = { x: 0, y: 0 }, second] = corners;
  if (!second) return { shape: "point", ...first };
  if (corners.length > 2) return polygonOf(corners);
  return {
    shape: "rectangle",
    x: (first.x + second.x) / 2,
    y: (first.y + second.y) / 2,
    widthM: lineM,
    lengthM: pointDistance(first, second),
    turnDeg: directionDeg(first, second),
  };
}

function polygonOf(corners: readonly Point[]): PolygonShape {
  return { shape: "polygon", corners: corners.map(({ x, y }) => [x, y] as const) };
}

/** Keeps what was drawn as one undo step and selects it. */
export function keepOutline(target: OutlineTarget, corners: readonly Point[]): void {
  const { plan, layoutId, commit } = usePlanStore.getState();
  const { select, pickTool } = useWindowStore.getState();
  const layout = layoutOf(plan, layoutId);
  if (target === "site") {
    commit(changePlan({ site: { ...plan.site, outline: polygonOf(corners) } }, "Draw the site"));
    pickTool("select");
    return;
  }
  const id = nextId(target === "bed" ? "bed-" : "ground-", drawnIds(plan, layout));
  if (target === "bed") {
    commit(addBed(layoutId, { id, code: nextBedCode(layout), outline: polygonOf(corners) }));
  } else {
    const { label, lineM } = targetEntry(target);
    commit(
      addSurrounding({
        id,
        label,
        what: target,
        outline: shapeOfCorners(corners, lineM ?? 1),
        flowering: "yes",
        cover: "none",
      }),
    );
  }
  select([id]);
  pickTool("select");
}
