/** Moving, turning and reshaping what is drawn. */
import {
  moveShape,
  outlineContains,
  outlineOf,
  shapeCentre,
  turnShape,
} from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Bed, Layout, Plan, Planting, Shape } from "../model/plan.ts";
import { isCodeOfBed, nextPlantingCode } from "../beds/codes.ts";
import { type Edit, inLayout } from "./edit.ts";
import { heldBack, heldBackWords } from "../beds/held-back.ts";
import { changedList, itemsById, partsOf, withChanges } from "../lists/changed-list.ts";
import { type NearIndex, type Placed, nearIndex, placesNear } from "../nearness/near-index.ts";
import * as steps from "../words/step-words.ts";

/**
 * Moves plantings, beds (with what stands in them) and surroundings by dx, dy metres. What is
 * locked stays, and so does a bed with a locked planting in it.
 */
export function moveObjects(
  layoutId: string,
  ids: readonly string[],
  dx: number,
  dy: number,
  title: string = steps.move,
): Edit {
  const movedM = Math.hypot(dx, dy);
  return { ...reshapeObjects(layoutId, ids, (shape) => moveShape(shape, dx, dy), title), movedM };
}

/** Turns objects about a centre, degrees clockwise; what is locked stays. */
export function turnObjects(
  layoutId: string,
  ids: readonly string[],
  centre: Point,
  turnDeg: number,
  title: string = steps.turn,
): Edit {
  return reshapeObjects(layoutId, ids, (shape) => turnShape(shape, centre, turnDeg), title);
}

/** Gives one bed, planting or surrounding a new outline, unless it is locked. */
export function setOutline(
  layoutId: string,
  id: string,
  outline: Shape,
  title: string = steps.resize,
): Edit {
  return {
    title,
    note: (plan) => heldBackWords(plan, layoutId, [id], false),
    apply: (plan) => {
      if (heldBack(plan, layoutId, [id], false).ids.size > 0) return plan;
      const next = withShapes(plan, layoutId, new Set([id]), () => outline);
      return inLayout(next, layoutId, (layout) => reassign(layout, new Set([id])));
    },
  };
}

function reshapeObjects(
  layoutId: string,
  ids: readonly string[],
  change: <S extends Shape>(shape: S) => S,
  title: string,
): Edit {
  return {
    title,
    note: (plan) => heldBackWords(plan, layoutId, ids, true),
    apply: (plan) => {
      const layout = plan.layouts.find((entry) => entry.id === layoutId);
      const held = heldBack(plan, layoutId, ids, true).ids;
      const asked = new Set(ids.filter((id) => !held.has(id)));
      if (asked.size === 0) return plan;
      const moved = new Set(asked);
      const isBedMoved = layout !== undefined && itemsById(layout.beds, asked).length > 0;
      for (const planting of isBedMoved ? layout.plantings : []) {
        if (planting.bed !== undefined && asked.has(planting.bed)) moved.add(planting.id);
      }
      const next = withShapes(plan, layoutId, moved, change);
      return inLayout(next, layoutId, (changed) => reassign(changed, moved));
    },
  };
}

function withShapes(
  plan: Plan,
  layoutId: string,
  ids: ReadonlySet<string>,
  change: (shape: Shape) => Shape,
): Plan {
  const surroundings = withOutlines(plan.surroundings, ids, change);
  const next = surroundings === plan.surroundings ? plan : { ...plan, surroundings };
  return inLayout(next, layoutId, (layout) => {
    const beds = withOutlines(layout.beds, ids, change);
    const held = beds === layout.beds ? layout : { ...layout, beds };
    return withChanges(held, "plantings", reshaped(layout.plantings, ids, change));
  });
}

interface Drawn {
  readonly id: string;
  readonly outline: Shape;
}

/** Costs what is reshaped, and a copy of the list. */
function withOutlines<T extends Drawn>(
  items: readonly T[],
  ids: ReadonlySet<string>,
  change: (shape: Shape) => Shape,
): readonly T[] {
  return changedList(items, reshaped(items, ids, change));
}

/** Those of some ids with their new outlines, by place. */
function reshaped<T extends Drawn>(
  items: readonly T[],
  ids: ReadonlySet<string>,
  change: (shape: Shape) => Shape,
): ReadonlyMap<number, T> {
  return new Map(
    itemsById(items, ids).map(([place, item]): [number, T] => [
      place,
      { ...item, outline: change(item.outline) },
    ]),
  );
}

/** The bed whose ground holds the middle of a shape: the one it stands in, where beds overlap. */
export function bedUnder(layout: Layout, shape: Shape, present?: string): Bed | undefined {
  const centre = shapeCentre(shape);
  const holding = bedsAt(layout.beds, centre).filter((bed) =>
    outlineContains(outlineOf(bed.outline), centre.x, centre.y),
  );
  return holding.find((bed) => bed.id === present) ?? holding[0];
}

/** Of lists of beds, which never change once they are made. */
const bedIndexes = new WeakMap<readonly Bed[], { index: NearIndex; placed: readonly Placed[] }>();

/** Beds whose bounds hold a place, in the order of the list. */
function bedsAt(beds: readonly Bed[], { x, y }: Point): readonly Bed[] {
  let known = bedIndexes.get(beds);
  if (!known) {
    const placed = beds.map(({ outline }) => ({ outline: outlineOf(outline) }));
    known = { placed, index: nearIndex(placed) };
    bedIndexes.set(beds, known);
  }
  const box = { minX: x, minY: y, maxX: x, maxY: y };
  const places = placesNear(known.index, known.placed, box).sort((a, b) => a - b);
  return places.map((place) => beds[place] as Bed);
}

/**
 * Moved plantings belong to the bed they now stand in; a code made from the old bed follows. Off
 * all beds a planting keeps its code: it is on its way, and the stake says what it said.
 */
function reassign(layout: Layout, moved: ReadonlySet<string>): Layout {
  let next = layout;
  const { list, changes } = partsOf(layout, "plantings");
  for (const [place, was] of itemsById(list, moved)) {
    const planting = changes.get(place) ?? was;
    // A planting that moved together with its bed stays in it.
    if (planting.bed !== undefined && moved.has(planting.bed)) continue;
    const bed = bedUnder(next, planting.outline, planting.bed);
    if (bed?.id === planting.bed) continue;
    const code = bed ? codeInBed(next, planting, bed) : planting.code;
    const { bed: _left, ...rest } = planting;
    const changed: Planting = bed ? { ...rest, code, bed: bed.id } : { ...rest, code };
    next = { ...next, plantings: changedList(next.plantings, new Map([[place, changed]])) };
  }
  return next;
}

/** The code it has where that is the bed's own or given by hand, else the next one there. */
function codeInBed(layout: Layout, { code, bed: oldId }: Planting, bed: Bed): string {
  const old =
    oldId === undefined
      ? layout.beds.find((entry) => isCodeOfBed(code, entry))
      : layout.beds.find(({ id }) => id === oldId);
  if (isCodeOfBed(code, bed)) return code;
  return isCodeOfBed(code, old) ? nextPlantingCode(layout, bed) : code;
}
