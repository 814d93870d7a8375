/** How far what is drawn reaches. */
import { type Bounds, growBounds, joinBounds } from "../../core/geometry/bounds.ts";
import type { Layout, Plan, Shape } from "../../core/model/plan.ts";
import { outlineOf } from "../../core/geometry/outline.ts";

/** Ground shown when there is nothing on it, metres each way. */
const EMPTY: Bounds = { minX: -10, minY: -8, maxX: 10, maxY: 8 };
/** Ground kept around what is brought into view, metres. */
const AROUND_M = 1;
/** The ground an isolation distance reaches is shown up to so much, metres, or so many own sizes. */
const REQUIRED_MOST = { metres: 12, sizes: 4 } as const;
/** Surroundings are fitted in unless the beds would become smaller than this share. */
const SMALLEST_SHARE = 0.5;

const boundsOf = (entries: readonly { readonly outline: Shape }[]) =>
  entries.map((entry) => outlineOf(entry.outline).bounds);

function plotBounds(plan: Plan, layout: Layout): Bounds | null {
  return joinBounds([
    ...boundsOf(layout.beds),
    ...boundsOf(layout.plantings),
    ...(plan.site.outline ? [outlineOf(plan.site.outline).bounds] : []),
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

/** Beds, plantings and site alone; what lies around where there are none. */
export function plotsBounds(plan: Plan, layout: Layout): Bounds {
  const plots = plotBounds(plan, layout);
  return plots ? growBounds(plots, AROUND_M) : contentBounds(plan, layout);
}

/**
 * The objects with these ids, with as much ground on every side as they take up themselves, and
 * more where a required distance reaches further; null when none is there.
 * @param requiredM the longest isolation distance any of them needs, metres
 */
export function boundsOfIds(
  plan: Plan,
  layout: Layout,
  ids: readonly string[],
  requiredM = 0,
): Bounds | null {
  const wanted = new Set(ids);
  const found = [...plan.surroundings, ...layout.beds, ...layout.plantings].filter((entry) =>
    wanted.has(entry.id),
  );
  const bounds = joinBounds(boundsOf(found));
  if (!bounds) return null;
  const own = span(bounds);
  const most = Math.max(REQUIRED_MOST.metres, own * REQUIRED_MOST.sizes);
  return growBounds(bounds, Math.max(AROUND_M, own, Math.min(requiredM, most)));
}

/** Whether all of these lie wholly in a box; false where one of them is not there. */
export function areIdsWithin(
  plan: Plan,
  layout: Layout,
  ids: readonly string[],
  box: Bounds,
): boolean {
  const wanted = new Set(ids);
  const found = [...plan.surroundings, ...layout.beds, ...layout.plantings].filter(({ id }) =>
    wanted.has(id),
  );
  const bounds = joinBounds(boundsOf(found));
  return bounds !== null && found.length === wanted.size && isWithin(bounds, box);
}

function isWithin(inner: Bounds, outer: Bounds): boolean {
  return (
    inner.minX >= outer.minX &&
    inner.minY >= outer.minY &&
    inner.maxX <= outer.maxX &&
    inner.maxY <= outer.maxY
  );
}

function span({ minX, minY, maxX, maxY }: Bounds): number {
  return Math.max(maxX - minX, maxY - minY, 4);
}

function reach(from: Bounds, to: Bounds): number {
  const joined = joinBounds([from, to]) ?? from;
  return span(joined);
}
