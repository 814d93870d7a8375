/** How and when a planting of a kind would usually start: offered, and said wherever it is taken. */
import { raisingOffer } from "../kinds/raising-days.ts";
import { usualMethod } from "../kinds/raising.ts";
import type { Kind } from "../kinds/crop.ts";
import type { Layout, Plan, Planting } from "../model/plan.ts";
import { latestStart } from "./latest-start.ts";
import { rootsOut } from "./roots-out.ts";

/**
 * As the latest planting of its kind in this season; else counted from the last spring frost: set
 * out where the kind is usually raised under glass, sown in place where it is not. A biennial bears
 * its seed as a root or plant of last year, as the seed list is laid out too: seedlings of this
 * spring would be told to flower in it. Undefined where nothing tells.
 */
export function usualStart(plan: Plan, layout: Layout, kind: Kind): Planting["start"] {
  const last = latestStart(plan, layout, kind.id);
  if (last && last.date >= plan.season.first) return last;
  if (kind.lifeCycle === "biennial") return rootsOut(plan);
  const { lastSpringFrost } = plan.site;
  if (lastSpringFrost === undefined || lastSpringFrost < plan.season.first) return undefined;
  const { setOut } = raisingOffer({}, kind, lastSpringFrost);
  if (!setOut) return undefined;
  return { method: usualMethod(kind), date: Math.max(plan.season.first, setOut.day) };
}
