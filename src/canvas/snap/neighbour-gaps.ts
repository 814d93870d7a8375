/** Distances to what lies around something that is drawn, moved or resized. */
import { boundsGap, growBounds } from "../../core/geometry/bounds.ts";
import { gapBetween } from "../../core/geometry/gap.ts";
import {
  type Outline,
  outlineContains,
  pointOutline,
  outlineOf,
} from "../../core/geometry/outline.ts";
import type { Plan, Shape } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { type SideGap, sideGaps } from "./side-gaps.ts";
import { type SheetItem, type SheetItems, itemsOf, sheetItems } from "../scene/sheet-items.ts";

/** The gaps around an object as it is shown now, in the middle of a move or a change of size. */
export function shownGaps(id: string, selection: readonly string[]): readonly SideGap[] {
  const { plan, shown, layoutId, book } = usePlanStore.getState();
  const layout = layoutOf(shown, layoutId);
  const [item] = itemsOf(shown, layout, book, new Set([id]));
  if (!item) return [];
  const moving = new Set([id, ...selection]);
  for (const planting of layout.plantings) {
    if (moving.has(planting.bed ?? "")) moving.add(planting.id);
  }
  const items = sheetItems(plan, layoutOf(plan, layoutId), book);
  const bed = item.what === "planting" ? item.planting.bed : undefined;
  return neighbourGaps({ plan, items }, { what: item.what, shape: item.shape, bed }, moving);
}

/** Ground is paced out no further than this, metres. */
const AROUND_M = 25;

interface Mover {
  readonly what: SheetItem["what"];
  /** Where it lies now. */
  readonly shape: Shape;
  /** The bed a planting lies in now. */
  readonly bed?: string | undefined;
}

/**
 * The nearest edge on every side: for a planting in a bed the bed's own edges and what else stands
 * in it, for anything else beds and surroundings. With nothing straight beside it, the nearest of all.
 * @param moving ids that move with it
 */
export function neighbourGaps(
  { plan, items }: { readonly plan: Plan; readonly items: SheetItems },
  { what, shape, bed }: Mover,
  moving: ReadonlySet<string>,
): readonly SideGap[] {
  const outline = outlineOf(shape);
  const others = items
    .within(growBounds(outline.bounds, AROUND_M))
    .filter((item) => !moving.has(item.id) && isBeside(item, what, bed))
    // Its own bed's ends are measured to although it may reach over an edge.
    .filter((item) => item.id === bed || isClearOf(outline, item.outline))
    .map((item) => item.outline);
  const edge = plan.site.outline && bed === undefined ? [outlineOf(plan.site.outline)] : [];
  const turnDeg = shape.shape === "rectangle" ? shape.turnDeg : 0;
  const inside = edge.filter((site) => holds(site, outline));
  const found = sideGaps(outline, turnDeg, [...others, ...inside], AROUND_M);
  return found.length > 0 ? found : nearest(outline, others);
}

function isBeside(item: SheetItem, what: SheetItem["what"], bed: string | undefined): boolean {
  if (what === "planting" && bed !== undefined) {
    return item.id === bed || (item.what === "planting" && item.planting.bed === bed);
  }
  if (item.what === "planting") return what === "planting";
  return item.what === "bed" || item.surrounding.what !== "slope";
}

/** Apart from the shape, or around the whole of it: not crossing it. */
function isClearOf(outline: Outline, other: Outline): boolean {
  if (!other.hasInside || boundsGap(outline.bounds, other.bounds) > 0) return true;
  return gapBetween(outline, other).distanceM > 0 || holds(other, outline);
}

function holds(outer: Outline, { rings: [ring] }: Outline): boolean {
  if (!ring) return false;
  for (let index = 0; index < ring.length; index += 2) {
    const [x, y] = [ring[index] as number, ring[index + 1] as number];
    if (outlineContains(outer, x, y)) continue;
    // A corner that lies on the outer edge still lies in it.
    const edge = { ...outer, hasInside: false };
    if (gapBetween(pointOutline({ x, y }), edge).distanceM > 1e-6) return false;
  }
  return true;
}

function nearest(outline: Outline, others: readonly Outline[]): readonly SideGap[] {
  const gaps = others
    .map((other) => gapBetween(outline, other))
    .filter(({ distanceM }) => distanceM > 0 && distanceM <= AROUND_M)
    .sort((a, b) => a.distanceM - b.distanceM);
  return gaps.slice(0, 1).map(({ from, to, distanceM }) => ({ from, to, distanceM }));
}
