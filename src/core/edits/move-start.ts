/** Sowing or setting out a planting on another day. */
import { type DayNumber, shortDate } from "../model/day.ts";
import type { Planting } from "../model/plan.ts";
import type { Edit } from "./edit.ts";
import { changePlantings } from "./object-edits.ts";

/** Keeps the way a planting starts and moves its day; one without a start counts as sown. */
export function moveStart(layoutId: string, planting: Planting, date: DayNumber): Edit {
  const method = planting.start?.method ?? "sown";
  const verb = method === "sown" ? "Sow" : "Set out";
  const title = `${verb} ${planting.code} on ${shortDate(date)}`;
  const start = { ...planting.start, method, date };
  return changePlantings(layoutId, [planting.id], { start }, title);
}
