/** Whether a start is that of young plants, or of roots and plants that have stood a winter. */
import type { Plan, Planting } from "../model/plan.ts";

type Start = NonNullable<Planting["start"]>;

/**
 * From sowing under glass to setting out of one spring at the most: onions sown after Christmas are
 * set out in April. What was sown longer before stood through a winter. No source; our choice.
 */
const LONGEST_RAISING_DAYS = 150;

/** Sown under glass for the spring it is set out in: it has seen no winter. */
export function isRaisedForThis({ method, date, sownUnderGlass }: Start): boolean {
  return (
    method === "transplanted" &&
    sownUnderGlass !== undefined &&
    date - sownUnderGlass <= LONGEST_RAISING_DAYS
  );
}

/** Sown this season, in place or under glass. */
export function isSeedlingOf(season: Plan["season"], start: Start): boolean {
  if (start.date < season.first) return false;
  return start.method === "sown" || isRaisedForThis(start);
}
