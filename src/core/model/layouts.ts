/** Finding a layout in a plan. */
import type { Layout, Plan } from "./plan.ts";

/** The layout a plan opens on: the chosen one, else the first. */
export function openingLayoutId(plan: Plan): string {
  return plan.chosenLayout ?? (plan.layouts[0] as Layout).id;
}

/** The layout with an id; the first one if it is gone. */
export function layoutOf(plan: Plan, layoutId: string): Layout {
  return plan.layouts.find((layout) => layout.id === layoutId) ?? (plan.layouts[0] as Layout);
}
