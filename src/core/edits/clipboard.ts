/**
 * Beds, plantings and surroundings as text for the system's clipboard, and back. The text is JSON
 * with a mark of its own around a small plan that holds just what is copied, so that it is read
 * with the same care as a plan file.
 */
import { isSameVariety } from "../model/variety-key.ts";
import { type Bounds, boundsGap, joinBounds } from "../geometry/bounds.ts";
import { outlineOf } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import { emptyPlan } from "../model/empty-plan.ts";
import { parseJson } from "../model/parse-json.ts";
import type { Layout, Lot, OwnKind, Plan, Planting, Shape, Variety } from "../model/plan.ts";
import { problemText } from "../model/problem.ts";
import { readPlanValue, writePlan } from "../model/read-plan.ts";
import { lotsToCopy, renamedLots, withComingLots } from "./clip-lots.ts";
import { type ObjectGroup, groupOf, groupSize, withCopies } from "./copies.ts";
import { type Edit, mapItems, nextId, patched } from "./edit.ts";
import {
  type BroughtKinds,
  type ClashAnswer,
  type KindClash,
  kindsBrought,
} from "./kinds-brought.ts";
import * as words from "../words/step-words.ts";

const CLIP_FORMAT = "wideberth-objects";
const CLIP_VERSION = 1;
/** Longest text taken from a clipboard, and most objects in it. */
const CLIP_CHARACTERS = 8_000_000;
const CLIP_OBJECTS = 5000;
/** Ground from another plan further away than this is brought nearer, metres. */
const NEAR_M = 20;
/** Shift of a copy pasted onto its own original, metres. */
const ASIDE_M = 1;

/** What was copied, read and found sound. */
export interface Clip {
  /** The plan it was copied from. */
  readonly planId: string;
  readonly group: ObjectGroup;
  readonly varieties: readonly Variety[];
  readonly lots: readonly Lot[];
  readonly ownKinds: readonly OwnKind[];
}

export type ClipRead =
  | { readonly ok: true; readonly clip: Clip }
  | { readonly ok: false; readonly reason: string };

/** Objects as text for the clipboard, with the varieties and own kinds they need; null for none. */
export function clipText(plan: Plan, layout: Layout, ids: readonly string[]): string | null {
  const group = groupOf(plan, layout, ids);
  if (groupSize(group) === 0) return null;
  const bedIds = new Set(group.beds.map(({ id }) => id));
  const varietyIds = new Set(group.plantings.map(({ variety }) => variety));
  const grown = plan.varieties.filter(({ id }) => varietyIds.has(id));
  const lots = lotsToCopy(plan, [...group.plantings, ...grown]);
  for (const { variety } of lots) varietyIds.add(variety);
  const varieties = plan.varieties
    .filter(({ id }) => varietyIds.has(id))
    .map((variety) => (grown.includes(variety) ? variety : patched(variety, { lots: undefined })));
  const kinds = new Set([
    ...varieties.map(({ kind }) => kind),
    ...group.surroundings.map(({ kind }) => kind),
  ]);
  const plantings = group.plantings.map((planting): Planting => {
    if (planting.bed === undefined || bedIds.has(planting.bed)) return planting;
    const { bed: _left, ...rest } = planting;
    return rest;
  });
  const small: Plan = {
    ...emptyPlan(plan.id, 2000),
    season: plan.season,
    units: plan.units,
    level: plan.level,
    ownKinds: plan.ownKinds.filter(({ id }) => kinds.has(id)),
    varieties,
    lots,
    surroundings: group.surroundings,
    layouts: [{ id: "layout-1", name: layout.name, beds: group.beds, plantings }],
  };
  return `{"format":"${CLIP_FORMAT}","version":${CLIP_VERSION},"plan":${writePlan(small)}}`;
}

/**
 * Reads text from a clipboard. Whatever is not from this program, too large, newer or not sound is
 * refused with a reason in plain words.
 */
export function readClip(text: string, isKnownKind: (kind: string) => boolean): ClipRead {
  const refused = (reason: string): ClipRead => ({ ok: false, reason });
  if (text.trim() === "") return refused(words.empty);
  if (!text.includes(CLIP_FORMAT)) {
    return refused(words.foreign);
  }
  if (text.length > CLIP_CHARACTERS) return refused(words.tooMuch);
  const parsed = parseJson(text, "clipboard");
  if (!parsed.ok) return refused(words.notWhole);
  const wrapper = parsed.value as Readonly<Record<string, unknown>> | null;
  if (typeof wrapper !== "object" || wrapper?.["format"] !== CLIP_FORMAT) {
    return refused(words.foreign);
  }
  if (wrapper["version"] !== CLIP_VERSION) {
    return refused(words.newer);
  }
  const read = readPlanValue(wrapper["plan"], "clipboard", isKnownKind);
  if (!read.ok) {
    const [problem] = read.problems;
    return refused(problem ? problemText(problem) : words.notSound);
  }
  const [layout] = read.value.layouts;
  const { id, varieties, lots, ownKinds, surroundings } = read.value;
  const group = { beds: layout?.beds ?? [], plantings: layout?.plantings ?? [], surroundings };
  if (groupSize(group) === 0) return refused(words.nothing);
  if (groupSize(group) > CLIP_OBJECTS) return refused(words.tooMuch);
  return { ok: true, clip: { planId: id, group, varieties, lots, ownKinds } };
}

/**
 * Adds what was copied to a layout as one step, under new ids and codes of its own where they are
 * taken. Own kinds keep their figures under ids free in this plan; varieties are matched by kind
 * and name, else added.
 * @param answer which figures count for kinds that both plans have with different ones
 */
export function pasteObjects(
  layoutId: string,
  clip: Clip,
  shift: Point,
  title: string,
  answer: ClashAnswer = "here",
): Edit {
  return {
    title,
    apply: (plan) => {
      const kinds = kindsBrought(clip.ownKinds, plan, () => answer);
      const { next, idOf } = withVarieties({ ...plan, ownKinds: kinds.ownKinds }, clip, kinds);
      const shelf = withComingLots(next, clip.lots, (id) => idOf.get(id) ?? id);
      const known = new Set(plan.varieties.map(({ id }) => id));
      const varieties = mapItems(shelf.next.varieties, (variety) =>
        known.has(variety.id) ? variety : renamedLots(variety, shelf.idOf),
      );
      const plantings = clip.group.plantings.map((planting) => ({
        ...renamedLots(planting, shelf.idOf),
        variety: idOf.get(planting.variety) ?? planting.variety,
      }));
      const stocked = varieties === next.varieties ? shelf.next : { ...shelf.next, varieties };
      const surroundings = clip.group.surroundings.map((item) =>
        item.kind === undefined ? item : { ...item, kind: kinds.idOf(item.kind) },
      );
      return withCopies(stocked, layoutId, { ...clip.group, plantings, surroundings }, [shift]);
    },
  };
}

/** Kinds that the plan knows with other figures than those copied: to be asked before pasting. */
export function pasteClashes(plan: Plan, clip: Clip): readonly KindClash[] {
  return kindsBrought(clip.ownKinds, plan, () => "here").clashes;
}

function withVarieties(
  plan: Plan,
  clip: Clip,
  kinds: BroughtKinds,
): { readonly next: Plan; readonly idOf: ReadonlyMap<string, string> } {
  const idOf = new Map<string, string>();
  const varieties = [...plan.varieties];
  for (const copied of clip.varieties) {
    const variety = { ...copied, kind: kinds.idOf(copied.kind) };
    const same = varieties.find((other) => isSameVariety(other, variety));
    if (same) {
      idOf.set(variety.id, same.id);
      continue;
    }
    const isTaken = varieties.some(({ id }) => id === variety.id);
    const ids = varieties.map(({ id }) => id);
    const id = isTaken ? nextId("variety-", ids) : variety.id;
    idOf.set(variety.id, id);
    varieties.push({ ...variety, id });
  }
  return { next: varieties.length === plan.varieties.length ? plan : { ...plan, varieties }, idOf };
}

/**
 * How far what is pasted is moved: nowhere, when it comes to the same ground of another layout; a
 * step aside, when it would lie exactly on something; beside the beds, when it comes from a place
 * of another plan that is far from them.
 */
export function pasteShift(plan: Plan, layout: Layout, clip: Clip): Point {
  const shapes = [...clip.group.beds, ...clip.group.plantings, ...clip.group.surroundings];
  const coming = boundsAround(shapes);
  const present = boundsAround([...layout.beds, ...layout.plantings]);
  if (clip.planId !== plan.id && coming && present && boundsGap(coming, present) > NEAR_M) {
    return { x: present.maxX + ASIDE_M - coming.minX, y: present.minY - coming.minY };
  }
  const standing = [...layout.beds, ...layout.plantings, ...plan.surroundings];
  const places = new Set(standing.map(({ outline }) => placeKey(outline, 0)));
  let step = 0;
  while (shapes.some(({ outline }) => places.has(placeKey(outline, step)))) step += 1;
  return { x: step * ASIDE_M, y: step === 0 ? 0 : -step * ASIDE_M };
}

function boundsAround(items: readonly { readonly outline: Shape }[]): Bounds | null {
  return joinBounds(items.map(({ outline }) => outlineOf(outline).bounds));
}

/** The bounds of a shape, a number of steps aside, to the millimetre. */
function placeKey(shape: Shape, steps: number): string {
  const { minX, minY, maxX, maxY } = outlineOf(shape).bounds;
  const aside = steps * ASIDE_M;
  return [minX + aside, minY - aside, maxX + aside, maxY - aside]
    .map((metres) => Math.round(metres * 1000))
    .join(" ");
}
