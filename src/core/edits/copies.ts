/** Copies of objects, under ids and codes of their own. */
import { moveShape } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Bed, Layout, Plan, Planting, Surrounding } from "../model/plan.ts";
import { LIMITS } from "../model/limits.ts";
import { codeAfter, firstFreeCode } from "../beds/code-series.ts";
import { isCodeOfBed, plantingPrefix } from "../beds/codes.ts";
import { idAfter, inLayout, nextId } from "./edit.ts";
import { bedUnder } from "./move-objects.ts";

/** Objects that are copied together. */
export interface ObjectGroup {
  readonly beds: readonly Bed[];
  readonly plantings: readonly Planting[];
  readonly surroundings: readonly Surrounding[];
}

/** The objects with these ids; beds bring the plantings that stand in them. */
export function groupOf(plan: Plan, layout: Layout, ids: readonly string[]): ObjectGroup {
  const asked = new Set(ids);
  return {
    beds: layout.beds.filter(({ id }) => asked.has(id)),
    plantings: layout.plantings.filter(({ id, bed }) => asked.has(id) || asked.has(bed ?? "")),
    surroundings: plan.surroundings.filter(({ id }) => asked.has(id)),
  };
}

export function groupSize({ beds, plantings, surroundings }: ObjectGroup): number {
  return beds.length + plantings.length + surroundings.length;
}

/** Hands out `prefix` + number, counting up from the highest in use. */
function idMaker(plan: Plan, layout: Layout, group: ObjectGroup): (prefix: string) => string {
  const all = [layout.beds, layout.plantings, plan.surroundings];
  const copied = [group.beds, group.plantings, group.surroundings];
  const taken = new Set([...all.flat(), ...copied.flat()].map(({ id }) => id));
  const last = new Map<string, string>();
  return (prefix) => {
    // The highest in use is looked for once; from then on it is the last one given.
    const before = last.get(prefix);
    const next = before === undefined ? nextId(prefix, taken) : idAfter(prefix, before, taken);
    last.set(prefix, next);
    return next;
  };
}

/** The plan with a copy of the group at each of the shifts, metres. Copies are not locked. */
export function withCopies(
  plan: Plan,
  layoutId: string,
  group: ObjectGroup,
  shifts: readonly Point[],
): Plan {
  const layout = plan.layouts.find(({ id }) => id === layoutId);
  if (!layout || groupSize(group) === 0) return plan;
  const makeId = idMaker(plan, layout, group);
  const codes = new Set([...layout.beds, ...layout.plantings].map(({ code }) => code));
  const labels = new Set(plan.surroundings.map(({ label }) => label));
  const surroundings = [...plan.surroundings];
  let next = layout;
  for (const { x, y } of shifts) {
    next = withOneCopy(next, group, { x, y }, makeId, codes);
    for (const surrounding of group.surroundings) {
      const label = firstFreeCode(surrounding.label, labels);
      labels.add(label);
      const outline = moveShape(surrounding.outline, x, y);
      surroundings.push({ ...unlocked(surrounding), id: makeId("source-"), label, outline });
    }
  }
  const copied = inLayout(plan, layoutId, () => next);
  return surroundings.length === plan.surroundings.length ? copied : { ...copied, surroundings };
}

function withOneCopy(
  layout: Layout,
  group: ObjectGroup,
  shift: Point,
  makeId: (prefix: string) => string,
  codes: Set<string>,
): Layout {
  const copies = new Map<string, Bed>();
  for (const bed of group.beds) {
    const code = firstFreeCode(bed.code, codes);
    codes.add(code);
    const outline = moveShape(bed.outline, shift.x, shift.y);
    copies.set(bed.id, { ...unlocked(bed), id: makeId("bed-"), code, outline });
  }
  const beds = [...layout.beds, ...copies.values()];
  const withBeds: Layout = { ...layout, beds };
  const plantings = group.plantings.map((planting): Planting => {
    const outline = moveShape(planting.outline, shift.x, shift.y);
    const old =
      group.beds.find(({ id }) => id === planting.bed) ??
      layout.beds.find(({ id }) => id === planting.bed);
    const bed = copies.get(planting.bed ?? "") ?? bedUnder(withBeds, outline, planting.bed);
    const code = copiedCode(planting.code, old, bed, codes);
    codes.add(code);
    // A copy of what stands is still to be sown.
    const { bed: _left, stoodInto: _stood, ...rest } = unlocked(planting);
    const copy: Planting = { ...rest, id: makeId("p"), code, outline };
    return bed ? { ...copy, bed: bed.id } : copy;
  });
  return { ...withBeds, plantings: [...layout.plantings, ...plantings] };
}

/** A code made from the bed's code follows to the copy's bed; any other goes on with its series. */
function copiedCode(
  code: string,
  old: Bed | undefined,
  bed: Bed | undefined,
  codes: ReadonlySet<string>,
): string {
  if (!isCodeOfBed(code, old)) return firstFreeCode(code, codes);
  const number = code.slice(plantingPrefix(old).length);
  const wanted = `${plantingPrefix(bed)}${number}`;
  const isFree = wanted.length <= LIMITS.name && !codes.has(wanted);
  return isFree ? wanted : codeAfter(`${plantingPrefix(bed)}0`, codes);
}

function unlocked<T extends { readonly locked?: boolean | undefined }>(item: T): T {
  const { locked: _left, ...rest } = item;
  return rest as T;
}
