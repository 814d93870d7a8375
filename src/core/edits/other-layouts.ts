/** Taking plantings and beds from one layout to others. */
import type { Bed, Layout, Planting } from "../model/plan.ts";
import { isCodeOfBed, nextPlantingCode } from "../beds/codes.ts";
import { type Edit, inLayout } from "./edit.ts";
import { bedUnder } from "./move-objects.ts";

/** Copies plantings to the same ground of another layout; those that stand there already are moved. */
export function copyToLayout(
  fromId: string,
  plantingIds: readonly string[],
  toId: string,
  title: string,
): Edit {
  const chosen = new Set(plantingIds);
  return {
    title,
    apply: (plan) => {
      const from = plan.layouts.find(({ id }) => id === fromId);
      const plantings = from?.plantings.filter(({ id }) => chosen.has(id)) ?? [];
      if (plantings.length === 0 || fromId === toId) return plan;
      return inLayout(plan, toId, (layout) =>
        plantings.reduce((next, planting) => received(next, planting, from?.beds ?? []), layout),
      );
    },
  };
}

/** As copyToLayout, and takes them out of the layout they come from. */
export function moveToLayout(
  fromId: string,
  plantingIds: readonly string[],
  toId: string,
  title: string,
): Edit {
  const chosen = new Set(plantingIds);
  const copy = copyToLayout(fromId, plantingIds, toId, title);
  return {
    title,
    apply: (plan) => {
      const copied = copy.apply(plan);
      if (copied === plan) return plan;
      return inLayout(copied, fromId, (layout) => ({
        ...layout,
        plantings: layout.plantings.filter(({ id }) => !chosen.has(id)),
      }));
    },
  };
}

/** The layout with a planting in it, in the bed under it; it keeps its code unless that is taken. */
function received(layout: Layout, planting: Planting, oldBeds: readonly Bed[]): Layout {
  const plantings = layout.plantings.filter(({ id }) => id !== planting.id);
  const rest: Layout = { ...layout, plantings };
  const bed = bedUnder(rest, planting.outline, planting.bed);
  const old = oldBeds.find(({ id }) => id === planting.bed);
  const isTaken = plantings.some(({ code }) => code === planting.code);
  const isOfOtherBed = bed?.id !== planting.bed && isCodeOfBed(planting.code, old);
  const code = isTaken || isOfOtherBed ? nextPlantingCode(rest, bed) : planting.code;
  const { bed: _left, ...own } = planting;
  const placed: Planting = bed ? { ...own, code, bed: bed.id } : { ...own, code };
  return { ...layout, plantings: [...plantings, placed] };
}

/**
 * Gives other layouts the beds of this one. Plantings there stay on their ground: they belong to
 * the bed that now lies under them, or to none.
 */
export function sameBedsInLayouts(fromId: string, toIds: readonly string[], title: string): Edit {
  const chosen = new Set(toIds);
  return {
    title,
    apply: (plan) => {
      const from = plan.layouts.find(({ id }) => id === fromId);
      if (!from) return plan;
      return {
        ...plan,
        layouts: plan.layouts.map((layout) =>
          chosen.has(layout.id) && layout.id !== fromId ? withBeds(layout, from.beds) : layout,
        ),
      };
    },
  };
}

function withBeds(layout: Layout, beds: readonly Bed[]): Layout {
  const next: Layout = { ...layout, beds };
  return {
    ...next,
    plantings: layout.plantings.map((planting): Planting => {
      const bed = bedUnder(next, planting.outline, planting.bed);
      if (bed?.id === planting.bed) return planting;
      const { bed: _left, ...own } = planting;
      return bed ? { ...own, bed: bed.id } : own;
    }),
  };
}
