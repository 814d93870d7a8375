/** For what a map sheet is printed: whatever the grower and helpers have to do with. */
import type { Bounds } from "../geometry/bounds.ts";
import { gapBetween } from "../geometry/gap.ts";
import { outlineOf } from "../geometry/outline.ts";
import type { Layout, Plan, Surrounding } from "../model/plan.ts";
import { reachOf } from "../remedies/around-proposals.ts";

/**
 * Bounds of beds, plantings, diseased ground, and of what stands around and is the grower's own; a
 * neighbour's field is not. Of a plan without beds, all there is.
 */
export function ownBounds(plan: Plan, layout: Layout): readonly Bounds[] {
  const planted = [...layout.beds, ...layout.plantings];
  const around =
    planted.length === 0
      ? plan.surroundings
      : plan.surroundings.filter((each) => isOwn(plan, each));
  return [...planted, ...plan.groundMarks, ...around].map(
    ({ outline }) => outlineOf(outline).bounds,
  );
}

/** Plants that the grower can cut; hedges, sheds and the like that reach into the plot. */
function isOwn(plan: Plan, surrounding: Surrounding): boolean {
  if (surrounding.what === "pollen") return reachOf(plan, surrounding) === "ours";
  const { outline: site } = plan.site;
  return (
    site === undefined ||
    gapBetween(outlineOf(surrounding.outline), outlineOf(site)).distanceM === 0
  );
}
