/**
 * The seed list of the season after: what waits in store to be set out, then what must be renewed,
 * then the rest as it was ordered.
 */
import { patched } from "../edits/edit.ts";
import { renewVariety } from "../edits/sown-lots.ts";
import { planBook } from "../kinds/own-kinds.ts";
import { type Renewal, renewals } from "../lots/renewal.ts";
import { renewalReason } from "../lots/renewal-words.ts";
import { currentEntries, entriesUntil } from "../record/current-entries.ts";
import { plotRecord } from "../record/plot-record.ts";
import type { Plan, Variety } from "../model/plan.ts";
import type { PlotFate } from "./plot-fate.ts";
import type { NextSeasonChoices } from "./season-choices.ts";
import { grownReason, toSetOutReason } from "./season-words.ts";
import { unshelvedPlots } from "./unshelved.ts";

type ToSetOut = NonNullable<Variety["toSetOut"]>;

/** @param next the new plan, all but its varieties being as they will be */
export function seedListAhead(
  plan: Plan,
  next: Plan,
  plots: readonly PlotFate[],
  { keepsWanted, on }: Pick<NextSeasonChoices, "keepsWanted" | "on">,
): readonly Variety[] {
  const roots = rootsInStore(plan, plots, on);
  const standing = new Set(
    plots.flatMap(({ fate, planting }) => (fate === "standing" ? [planting.variety] : [])),
  );
  const due = dueVarieties(next, on).filter(
    ({ variety: { id } }) => !roots.has(id) && !standing.has(id),
  );
  const varieties = plan.varieties.map((variety) =>
    varietyAhead(variety, roots.get(variety.id), keepsWanted),
  );
  const unshelved = unshelvedPlots(plan, plots, plan.season.last + 1);
  const reasonOf = (renewal: Renewal) => {
    const grown = unshelved.filter(({ variety }) => variety.id === renewal.variety.id);
    const codes = grown.map(({ planting }) => planting.code).join(", ");
    const words = renewalReason(renewal);
    return codes === "" ? words : grownReason(words, codes);
  };
  const renewed = due.reduce<Plan>(
    (before, renewal) => renewVariety(renewal, reasonOf(renewal)).apply(before),
    { ...next, varieties },
  ).varieties;
  const place = new Map([...roots.keys(), ...due.map(({ variety }) => variety.id)].map(numbered));
  const placeOf = ({ id }: Variety) => place.get(id) ?? place.size;
  return renewed.toSorted((a, b) => placeOf(a) - placeOf(b));
}

/** Varieties that must be grown out in the plan's season, most urgent first. */
export function dueVarieties(plan: Plan, on: number): readonly Renewal[] {
  return renewals(plan, planBook(plan), on).filter(({ seasonsLeft }) => seasonsLeft === 0);
}

function numbered(id: string, index: number): readonly [string, number] {
  return [id, index];
}

/** Roots and plants lifted, by variety. */
function rootsInStore(
  plan: Plan,
  plots: readonly PlotFate[],
  on: number,
): ReadonlyMap<string, ToSetOut> {
  const current = currentEntries(plan.entries);
  const roots = new Map<string, ToSetOut>();
  for (const { planting, variety, fate } of plots) {
    if (fate !== "lifted") continue;
    const { harvestedPlants } = plotRecord(entriesUntil(current, planting.id, on));
    const plants = harvestedPlants ?? planting.plants;
    const lots = planting.lots ?? variety.lots;
    const lifted: ToSetOut[number] = {
      ...(plants === undefined ? {} : { plants }),
      ...(planting.code === "" ? {} : { plot: planting.code }),
      season: plan.season.name,
      ...(lots === undefined ? {} : { lots }),
    };
    roots.set(variety.id, [...(roots.get(variety.id) ?? []), lifted]);
  }
  return roots;
}

/** What was wanted, and why, was of the season before; what is to be set out is wanted in this one. */
function varietyAhead(
  variety: Variety,
  toSetOut: ToSetOut | undefined,
  keepsWanted: boolean,
): Variety {
  const kept = keepsWanted
    ? { wantedPlants: variety.wantedPlants, wantedSeed: variety.wantedSeed, waits: undefined }
    : { wantedPlants: undefined, wantedSeed: undefined, waits: undefined };
  if (!toSetOut) return patched(variety, { ...kept, reason: undefined, toSetOut: undefined });
  const plants = toSetOut.reduce((sum, each) => sum + (each.plants ?? 0), 0);
  return patched(variety, {
    ...kept,
    wantedPlants: plants > 0 ? plants : variety.wantedPlants,
    reason: toSetOutReason(toSetOut),
    toSetOut,
  });
}
