import { dayFromCivil } from "./day.ts";
import { PLAN_FORMAT, PLAN_VERSION } from "./limits.ts";
import type { Plan } from "./plan.ts";

/** What a plan is called until somebody names it. */
export const UNNAMED_TITLE = "New plan";

/** A plan with nothing in it but one empty layout, for a season of one calendar year. */
export function emptyPlan(id: string, year: number): Plan {
  return {
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    id,
    title: UNNAMED_TITLE,
    units: "m",
    level: "home",
    season: {
      name: String(year),
      first: dayFromCivil({ year, month: 1, day: 1 }),
      last: dayFromCivil({ year, month: 12, day: 31 }),
    },
    site: { name: "My garden", upBearingDeg: 0 },
    ownKinds: [],
    varieties: [],
    lots: [],
    storagePlaces: [],
    surroundings: [],
    earlierCrops: [],
    groundMarks: [],
    entries: [],
    layouts: [{ id: "layout-1", name: "Layout 1", beds: [], plantings: [] }],
    accepted: [],
  };
}
