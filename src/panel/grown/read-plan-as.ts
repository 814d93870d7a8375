/** Reads the open plan as grown; the way it is judged is fetched with this. */
import { type DayNumber, longDate } from "../../core/model/day.ts";
import type { Plan } from "../../core/model/plan.ts";
import { checkAsGrown } from "../../core/record/as-grown.ts";
import { planNow, windowNow } from "../state/plan-actions.ts";
import { today } from "../state/today.ts";
import * as words from "./words.ts";

export function readAsGrownOn(on: DayNumber): void {
  planNow().read({ on, judge: checkAsGrown });
  windowNow().announce(words.readAsGrownOn(longDate(on)));
}

export function readAsPlanned(): void {
  planNow().read(null);
  windowNow().announce(words.readAsPlanned);
}

export function switchReading(): void {
  const { reading, plan } = planNow();
  if (reading) readAsPlanned();
  else readAsGrownOn(usualDay(plan, today()));
}

/**
 * Today while the season runs, its last day once it is over. Before it begins the last day on which
 * something was written: a record of a season to come is one that is looked at for practice.
 */
export function usualDay({ season, entries }: Plan, now: DayNumber): DayNumber {
  if (now > season.last) return season.last;
  if (now >= season.first) return now;
  return entries.reduce((last, { on }) => Math.max(last, on), season.first);
}
