/** `--as-grown` and `--on DAY`: the plan read with its field record, on any command that checks it. */
import { type CheckedLayout, checkLayout } from "../core/checks/checked-layout.ts";
import { type DayNumber, dayFromIso } from "../core/model/day.ts";
import type { Plan } from "../core/model/plan.ts";
import { checkAsGrown } from "../core/record/as-grown.ts";
import { today } from "./clock.ts";
import { usage } from "./options.ts";

export const readingOptions = {
  "as-grown": { type: "boolean", default: false },
  on: { type: "string" },
} as const;

interface ReadingValues {
  readonly "as-grown": boolean;
  readonly on?: string | undefined;
}

/** The day to judge on, by default today; null for the plan as planned. */
export function dayOfReading(command: string, values: ReadingValues): DayNumber | null {
  const { on } = values;
  if (!values["as-grown"]) {
    if (on !== undefined) throw usage(command, "--on goes with --as-grown");
    return null;
  }
  if (on === undefined) return today(new Date());
  const day = dayFromIso(on);
  if (day === null) throw usage(command, `got --on ${on}, expected a date as YYYY-MM-DD`);
  return day;
}

export function checkedAs(plan: Plan, layoutId: string, on: DayNumber | null): CheckedLayout {
  return on === null ? checkLayout(plan, layoutId) : checkAsGrown(plan, layoutId, on);
}
