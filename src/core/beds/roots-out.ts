/** When roots and plants kept over winter are set out. */
import type { Plan, Planting } from "../model/plan.ts";

/** Days before the last spring frost; common practice for hardy biennials: about four weeks. */
const BEFORE_FROST_DAYS = 28;

/** Undefined where no spring frost of the season tells. */
export function rootsOut({
  site: { lastSpringFrost },
  season,
}: Pick<Plan, "site" | "season">): Planting["start"] {
  if (lastSpringFrost === undefined || lastSpringFrost < season.first) return undefined;
  const date = Math.max(season.first, lastSpringFrost - BEFORE_FROST_DAYS);
  return { method: "transplanted", date };
}
