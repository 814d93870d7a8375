/** The season after another: its days, its name, and the title of its plan. */
import { seasonLater } from "../edits/change-season.ts";
import { yearsLater } from "../calendar/yearly.ts";
import { civilFromDay } from "../model/day.ts";
import { LIMITS } from "../model/limits.ts";
import type { Plan } from "../model/plan.ts";

/**
 * A year on. A season longer than a year is followed from the day after it ends, so that the two do
 * not overlap.
 */
export function seasonAhead(season: Plan["season"]): Plan["season"] {
  const next = seasonLater(season, 1);
  if (next.first > season.last) return next;
  const first = season.last + 1;
  const years = Math.max(1, civilFromDay(first).year - civilFromDay(season.first).year);
  return { ...seasonLater(season, years), first, last: yearsLater(season.last, years) };
}

/** Whole years from one season to another, counted by their first days; at least one. */
export function yearsAhead(from: Plan["season"], to: Plan["season"]): number {
  return Math.max(1, civilFromDay(to.first).year - civilFromDay(from.first).year);
}

/** The title with the season's name in it moved along, or put behind. */
export function titleAhead(title: string, from: Plan["season"], to: Plan["season"]): string {
  const renamed = from.name === "" ? title : title.replaceAll(from.name, to.name);
  if (renamed !== title) return renamed.slice(0, LIMITS.name);
  const ending = ` ${to.name}`;
  return `${title.slice(0, LIMITS.name - ending.length)}${ending}`;
}
