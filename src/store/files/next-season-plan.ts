/** The next season's plan among the plans kept in this browser. */
import type { Plan } from "../../core/model/plan.ts";
import { keptSeasonOf } from "../../core/seasons/kept-season.ts";
import type { KeptSeason } from "../../core/seasons/next-season-faults.ts";
import { validText } from "../keeping/plan-text.ts";
import { readGeneration, readNewest } from "../keeping/read-generation.ts";
import { listPlans } from "../keeping/stored-plans.ts";
import { openFromOutside } from "../keeping/switch-plan.ts";

/** The seasons of all plans kept; what cannot be read is left out. */
export async function keptSeasons(): Promise<readonly KeptSeason[]> {
  const seasons: KeptSeason[] = [];
  for (const { planId, revision } of await listPlans()) {
    const copy = await readGeneration(planId, revision);
    const season = copy && keptSeasonOf(copy.text);
    if (season) seasons.push(season);
  }
  return seasons;
}

/** The plan of an id as it is kept in this browser; null where none is, or none can be read. */
export async function keptPlan(planId: string): Promise<Plan | null> {
  const found = await readNewest(planId);
  return found.kind === "found" ? found.copy.plan : null;
}

export type Begun =
  | { readonly how: "opened" }
  /** The open plan stays: it could not be saved, and the grower would not lose it. */
  | { readonly how: "kept-open" }
  | { readonly how: "faulty"; readonly fault: string };

/** Puts the new plan on screen; the one before is saved first and stays kept. */
export async function beginSeason(next: Plan): Promise<Begun> {
  const written = validText(next);
  if (!written.ok) return { how: "faulty", fault: written.fault };
  return (await openFromOutside(next, "made-here")) ? { how: "opened" } : { how: "kept-open" };
}
