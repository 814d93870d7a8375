/** Adding, changing and removing beds, plantings, surroundings and varieties. */
import type { Kind } from "../kinds/crop.ts";
import { planBook } from "../kinds/own-kinds.ts";
import { rememberedCrossings } from "../lots/lot-book.ts";
import { type DayNumber, shortDate } from "../model/day.ts";
import type { Bed, Layout, Lot, Plan, Planting, Surrounding, Variety } from "../model/plan.ts";
import { type Edit, inLayout, mapItem, mapItems, patched } from "./edit.ts";
import { heldBack, heldBackWords } from "../beds/held-back.ts";
import * as steps from "../words/step-words.ts";

type Changes<T> = { readonly [Key in keyof Omit<T, "id">]?: T[Key] | undefined };

export function addBed(layoutId: string, bed: Bed): Edit {
  return addBeds(layoutId, [bed], steps.drawBed(bed.code));
}

export function addBeds(layoutId: string, beds: readonly Bed[], title: string): Edit {
  return {
    title,
    apply: (plan) =>
      inLayout(plan, layoutId, (layout) => ({ ...layout, beds: [...layout.beds, ...beds] })),
  };
}

export function changeBed(
  layoutId: string,
  id: string,
  changes: Changes<Bed>,
  title: string,
): Edit {
  return {
    title,
    apply: (plan) =>
      inLayout(plan, layoutId, (layout) => ({
        ...layout,
        beds: mapItem(layout.beds, id, (bed) => patched(bed, changes)),
      })),
  };
}

export function addPlantings(
  layoutId: string,
  plantings: readonly Planting[],
  title: string,
): Edit {
  return {
    title,
    apply: (plan) =>
      inLayout(plan, layoutId, (layout) => ({
        ...layout,
        plantings: [...layout.plantings, ...plantings],
      })),
  };
}

export function changePlantings(
  layoutId: string,
  ids: readonly string[],
  changes: Changes<Planting>,
  title: string,
): Edit {
  const chosen = new Set(ids);
  return {
    title,
    apply: (plan) =>
      inLayout(plan, layoutId, (layout) => ({
        ...layout,
        plantings: layout.plantings.map((planting) =>
          chosen.has(planting.id) ? patched(planting, changes) : planting,
        ),
      })),
  };
}

export function addSurrounding(surrounding: Surrounding): Edit {
  return {
    title: steps.add(surrounding.label),
    apply: (plan) => ({
      ...plan,
      surroundings: [...plan.surroundings, withKind(plan, surrounding)],
    }),
    note: (plan) => assumedKind(plan, surrounding),
  };
}

export function changeSurrounding(id: string, changes: Changes<Surrounding>, title: string): Edit {
  return {
    title,
    apply: (plan) => ({
      ...plan,
      surroundings: mapItem(plan.surroundings, id, (entry) =>
        withKind(plan, patched(entry, changes)),
      ),
    }),
    note: (plan) => {
      const entry = plan.surroundings.find((item) => item.id === id);
      return entry ? assumedKind(plan, patched(entry, changes)) : null;
    },
  };
}

/**
 * A pollen source must say what flowers there, or it would threaten nothing. Until the grower says,
 * it is taken for the kind of the first variety; in a plan without varieties, for the first kind of
 * the crop base.
 */
function withKind(plan: Plan, surrounding: Surrounding): Surrounding {
  if (surrounding.what !== "pollen" || surrounding.kind !== undefined) return surrounding;
  return { ...surrounding, kind: usualKind(plan).id };
}

function usualKind(plan: Plan): Kind {
  const book = planBook(plan);
  return book.kind(plan.varieties[0]?.kind ?? "") ?? (book.kinds[0] as Kind);
}

function assumedKind(plan: Plan, surrounding: Surrounding): string | null {
  if (withKind(plan, surrounding) === surrounding) return null;
  return steps.countsAs(surrounding.label, usualKind(plan).name);
}

/**
 * Removes plantings, surroundings, and beds with the plantings that stand in them. What is locked
 * stays, and so does a bed with a locked planting in it.
 */
export function removeObjects(
  layoutId: string,
  ids: readonly string[],
  title: string = steps.stepDelete,
): Edit {
  return {
    title,
    note: (plan) => heldBackWords(plan, layoutId, ids, true),
    apply: (plan) => {
      const held = heldBack(plan, layoutId, ids, true).ids;
      const gone = new Set(ids.filter((id) => !held.has(id)));
      if (gone.size === 0) return plan;
      const surroundings = plan.surroundings.filter((entry) => !gone.has(entry.id));
      const next =
        surroundings.length === plan.surroundings.length ? plan : { ...plan, surroundings };
      return inLayout(next, layoutId, (layout) => ({
        ...layout,
        beds: layout.beds.filter((bed) => !gone.has(bed.id)),
        plantings: layout.plantings.filter(
          (planting) => !gone.has(planting.id) && !gone.has(planting.bed ?? ""),
        ),
      }));
    },
  };
}

export function addVariety(variety: Variety): Edit {
  return {
    title: steps.add(variety.name),
    apply: (plan) => ({ ...plan, varieties: [...plan.varieties, variety] }),
  };
}

export function changeVariety(id: string, changes: Changes<Variety>, title: string): Edit {
  return {
    title,
    apply: (plan) => ({
      ...plan,
      varieties: mapItem(plan.varieties, id, (variety) => patched(variety, changes)),
    }),
  };
}

/** Removes a variety, its plantings in every layout, and its lots on the shelf. */
export function removeVariety(id: string, title: string): Edit {
  return {
    title,
    apply: (plan) => {
      const gone = new Set(plan.lots.filter((lot) => lot.variety === id).map((lot) => lot.id));
      const next: Plan = {
        ...plan,
        varieties: plan.varieties.filter((variety) => variety.id !== id),
        lots: gone.size === 0 ? plan.lots : plan.lots.filter((lot) => !gone.has(lot.id)),
        layouts: plan.layouts.map((layout) => ({
          ...layout,
          plantings: layout.plantings.filter((planting) => planting.variety !== id),
        })),
      };
      return gone.size === 0 ? next : withoutMentions(next, gone, plan);
    },
  };
}

/** Changes fields of the plan itself: title, units, level, season, site, pattern of lot codes, sowing. */
export function changePlan(
  changes: Partial<
    Pick<
      Plan,
      "title" | "units" | "level" | "season" | "site" | "chosenLayout" | "lotCodePattern" | "sowing"
    >
  >,
  title: string,
): Edit {
  return { title, apply: (plan) => patched(plan, changes) };
}

/** Keeps the way a planting starts and moves its day; one without a start counts as sown. */
export function moveStart(layoutId: string, planting: Planting, date: DayNumber): Edit {
  const method = planting.start?.method ?? "sown";
  const title = steps.start(planting.code, method === "sown", shortDate(date));
  const start = { ...planting.start, method, date };
  return changePlantings(layoutId, [planting.id], { start }, title);
}

/**
 * Takes the lots out of whatever names them. What is grown of them remembers their crossings.
 * @param before the plan with these lots still in it
 */
export function withoutMentions(plan: Plan, gone: ReadonlySet<string>, before: Plan): Plan {
  const unnamed = <T extends { readonly lots?: readonly string[] | undefined }>(thing: T): T => {
    if (!thing.lots?.some((id) => gone.has(id))) return thing;
    const { lots, ...rest } = thing;
    const left = lots.filter((id) => !gone.has(id));
    return left.length === 0 ? (rest as T) : { ...thing, lots: left };
  };
  return {
    ...plan,
    lots: mapItems(plan.lots, (lot) => {
      const left = (ids: Lot["partOf"]) => {
        const kept = ids?.filter((id) => !gone.has(id));
        return kept?.length === 0 ? undefined : kept;
      };
      const { partOf, grownFrom } = lot;
      if (![...(partOf ?? []), ...(grownFrom ?? [])].some((id) => gone.has(id))) return lot;
      return patched(lot, {
        partOf: left(partOf),
        grownFrom: left(grownFrom),
        crossedBefore: rememberedCrossings(before.lots, lot, (id) => gone.has(id)),
      });
    }),
    varieties: mapItems(plan.varieties, (variety) => {
      const toSetOut = variety.toSetOut && mapItems(variety.toSetOut, unnamed);
      const next = toSetOut === variety.toSetOut ? variety : { ...variety, toSetOut };
      return unnamed(next);
    }),
    layouts: mapItems(plan.layouts, (layout): Layout => {
      const plantings = mapItems(layout.plantings, unnamed);
      return plantings === layout.plantings ? layout : { ...layout, plantings };
    }),
  };
}
