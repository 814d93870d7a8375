/** What a new planting starts from: the plants still wanted, and how its kind was last started. */
import type { Bed, Layout, Plan, Planting, Variety } from "../model/plan.ts";
import type { Kind } from "../kinds/crop.ts";
import { nextPlantingCode } from "../beds/codes.ts";
import { drawnIds, nextId } from "./edit.ts";
import { latestStart } from "../beds/latest-start.ts";
import { rootsOut } from "../beds/roots-out.ts";
import type { Placed } from "../beds/place-planting.ts";
import { usualStart } from "../beds/usual-start.ts";

/** Plants to place when neither variety nor kind says how many are wanted. No source; our choice. */
export const UNASKED_PLANTS = 10;

/**
 * Plants of a variety still to place in a layout; at least one. Where no number is wanted, as many
 * as keep a variety of its kind true, and as many again once those stand.
 */
export function plantsWanted(layout: Layout, variety: Variety, kind: Kind | undefined): number {
  const placed = layout.plantings
    .filter((planting) => planting.variety === variety.id)
    .reduce((sum, planting) => sum + (planting.plants ?? 0), 0);
  if (variety.wantedPlants !== undefined) return Math.max(1, variety.wantedPlants - placed);
  const { maintenance, viable } = kind?.population ?? {};
  const advised = (maintenance ?? viable)?.value ?? UNASKED_PLANTS;
  return placed < advised ? advised - placed : advised;
}

/** Roots or plants in store that are not placed yet: the first batch that those placed do not use up. */
function waiting({ plantings }: Layout, { id, toSetOut = [] }: Variety): Waiting | undefined {
  let placed = plantings
    .filter(({ variety, start }) => variety === id && start?.method === "transplanted")
    .reduce((sum, { plants }) => sum + (plants ?? 0), 0);
  return toSetOut.find(({ plants }) => {
    if (plants === undefined || placed < plants) return true;
    placed -= plants;
    return false;
  });
}

type Waiting = NonNullable<Variety["toSetOut"]>[number];

/**
 * How and when a new planting of a variety starts: what waits in store is set out in spring, others
 * as their kind last was. Undefined where neither tells.
 */
export function startAsOthers(plan: Plan, layout: Layout, variety: Variety): Planting["start"] {
  const last = latestStart(plan, layout, variety.kind);
  const isSetOut = last?.method === "transplanted" && last.date >= plan.season.first;
  return waiting(layout, variety) && !isSetOut ? rootsOut(plan) : last;
}

/**
 * How and when a variety placed now is taken to start: as others of its kind in this season, else
 * as is usual for the kind, counted from the last spring frost. Undefined where nothing tells.
 */
export function firstStart(
  plan: Plan,
  layout: Layout,
  variety: Variety,
  kind: Kind,
): Planting["start"] {
  const asOthers = startAsOthers(plan, layout, variety);
  if (asOthers && asOthers.date >= plan.season.first) return asOthers;
  return usualStart(plan, layout, kind) ?? asOthers;
}

/**
 * A planting for seed in a bed, with an id and code of its own, started as its kind last was; what
 * waits in store is set out in spring, with the lots it was sown from.
 */
export function newPlanting(
  plan: Plan,
  layout: Layout,
  bed: Bed,
  variety: Variety,
  placed: Pick<Placed, "plants" | "rows"> & { readonly outline: Planting["outline"] },
): Planting {
  const stored = waiting(layout, variety);
  const start = startAsOthers(plan, layout, variety);
  return {
    id: nextId("p", drawnIds(plan, layout)),
    code: nextPlantingCode(layout, bed),
    variety: variety.id,
    bed: bed.id,
    ...placed,
    purpose: "seed",
    flowering: "yes",
    cover: "none",
    ...(start ? { start } : {}),
    ...(stored?.lots ? { lots: stored.lots } : {}),
  };
}
