/** Finding a layout in a plan, and what of it stands from the season before. */
import type { Layout, Plan, Planting } from "./plan.ts";

/** The layout a plan opens on: the chosen one, else the first. */
export function openingLayoutId(plan: Plan): string {
  return plan.chosenLayout ?? (plan.layouts[0] as Layout).id;
}

/** The layout with an id; the first one if it is gone. */
export function layoutOf(plan: Plan, layoutId: string): Layout {
  return plan.layouts.find((layout) => layout.id === layoutId) ?? (plan.layouts[0] as Layout);
}

/** Whether it was begun in a season before and stood over winter: nothing is left to begin. */
export function isStanding({ stoodInto, start }: Pick<Planting, "stoodInto" | "start">): boolean {
  return stoodInto !== undefined && (start === undefined || start.date < stoodInto);
}
