/** Which layout of each plan this browser looked at last. Kept beside the plans: looking changes none. */
import { openingLayoutId } from "../../core/model/layouts.ts";
import type { Plan } from "../../core/model/plan.ts";
import { entriesOf, stored } from "../window/stored.ts";

/** Plans remembered, those looked at last. */
const MOST_PLANS = 40;

const seen = stored(
  "wideberth.layouts",
  entriesOf((value): value is string => typeof value === "string"),
);

export function rememberLayout(planId: string, layoutId: string): void {
  const others = Object.entries(seen.load()).filter(([id]) => id !== planId);
  seen.save(Object.fromEntries([...others.slice(1 - MOST_PLANS), [planId, layoutId]]));
}

/** The chosen layout; where none is chosen the one looked at last, else the first. */
export function layoutToOpen(plan: Plan): string {
  const last = seen.load()[plan.id];
  const isOpen = plan.chosenLayout === undefined && plan.layouts.some(({ id }) => id === last);
  return isOpen && last !== undefined ? last : openingLayoutId(plan);
}
