/** On which days a planting takes its ground: one bed carries peas and then leeks. */
import type { DayNumber } from "../model/day.ts";
import type { Layout, Planting } from "../model/plan.ts";

/** Days on which ground is taken; without a known day it has always been, or stays to the end. */
export interface GroundDays {
  readonly from: DayNumber;
  readonly to: DayNumber;
}

type Dated = Pick<Planting, "start" | "end">;

/**
 * The day a planting is cleared. An end before the start is a slip of typing and ends nothing: the
 * check `date-order` tells of it.
 */
export function endOf({ start, end }: Dated): DayNumber | null {
  if (end === undefined || (start !== undefined && end < start.date)) return null;
  return end;
}

/** From sowing in place or setting out to clearing, both days included. */
export function groundDays(planting: Dated): GroundDays {
  return { from: planting.start?.date ?? -Infinity, to: endOf(planting) ?? Infinity };
}

/**
 * Whether two plantings take ground at the same time. What is cleared on a day makes room for what
 * starts on it; where a day is not known, they may stand together.
 */
export function areOnGroundTogether(a: Dated, b: Dated): boolean {
  const [one, other] = [groundDays(a), groundDays(b)];
  return one.from < other.to && other.from < one.to;
}

/** Whether a planting takes its ground on a day: from its start to the day it is cleared. */
export function standsOn(planting: Dated, day: DayNumber): boolean {
  const { from, to } = groundDays(planting);
  return from <= day && day <= to;
}

/** The layout as one planting finds it: without those that are not on the ground when it is. */
export function layoutDuring(layout: Layout, planting: Dated): Layout {
  if (layout.plantings.every((other) => areOnGroundTogether(planting, other))) return layout;
  const plantings = layout.plantings.filter((other) => areOnGroundTogether(planting, other));
  return { ...layout, plantings };
}
