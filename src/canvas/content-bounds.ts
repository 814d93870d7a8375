/** How far what is drawn reaches. */
import { type Bounds, growBounds, joinBounds } from "../core/geometry/bounds.ts";
import type { Point } from "../core/geometry/point.ts";
import type { Layout, Plan, Shape } from "../core/model/plan.ts";
import { outlineFor } from "./sheet-items.ts";

/** Ground shown when there is nothing on it, metres each way. */
const EMPTY: Bounds = { minX: -10, minY: -8, maxX: 10, maxY: 8 };
/** Ground kept around what is brought into view, metres. */
const AROUND_M = 1;
/** Objects brought into view keep so much of their own size around them. */
const AROUND_SHARE = 0.3;
/** Surroundings are fitted in unless the beds would become smaller than this share. */
const SMALLEST_SHARE = 0.3;

const boundsOf = (entries: readonly { readonly outline: Shape }[]) =>
  entries.map((entry) => outlineFor(entry.outline).bounds);

function plotBounds(plan: Plan, layout: Layout): Bounds | null {
  return joinBounds([
    ...boundsOf(layout.beds),
    ...boundsOf(layout.plantings),
    ...(plan.site.outline ? [outlineFor(plan.site.outline).bounds] : []),
  ]);
}

/** Beds, plantings and site, with the surroundings as far as the beds can still be read beside them. */
export function contentBounds(plan: Plan, layout: Layout): Bounds {
  const plots = plotBounds(plan, layout);
  const around = boundsOf(plan.surroundings);
  if (!plots) return growBounds(joinBounds(around) ?? EMPTY, AROUND_M);
  // The nearest first, so that one far source leaves the others in view.
  const byDistance = [...around].sort((a, b) => reach(plots, a) - reach(plots, b));
  let bounds = plots;
  for (const next of byDistance) {
    const wider = joinBounds([bounds, next]) ?? bounds;
    if (span(plots) < span(wider) * SMALLEST_SHARE) break;
    bounds = wider;
  }
  return growBounds(bounds, AROUND_M);
}

/** The objects with these ids and some ground around them; null when none is there. */
export function boundsOfIds(plan: Plan, layout: Layout, ids: readonly string[]): Bounds | null {
  const wanted = new Set(ids);
  const found = [...plan.surroundings, ...layout.beds, ...layout.plantings].filter((entry) =>
    wanted.has(entry.id),
  );
  const bounds = joinBounds(boundsOf(found));
  return bounds && growBounds(bounds, Math.max(AROUND_M, span(bounds) * AROUND_SHARE));
}

/** Where the grid's letters and numbers begin: the upper left corner of beds and site. */
export function contentCorner(plan: Plan, layout: Layout): Point {
  const { minX, maxY } = plotBounds(plan, layout) ?? EMPTY;
  return { x: minX, y: maxY };
}

function span({ minX, minY, maxX, maxY }: Bounds): number {
  return Math.max(maxX - minX, maxY - minY, 4);
}

function reach(from: Bounds, to: Bounds): number {
  const joined = joinBounds([from, to]) ?? from;
  return span(joined);
}
