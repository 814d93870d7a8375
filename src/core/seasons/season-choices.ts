/** What is chosen before the next season's plan is made, and what is offered first. */
import { currentEntries } from "../record/current-entries.ts";
import type { DayNumber } from "../model/day.ts";
import { layoutOf, openingLayoutId } from "../model/layouts.ts";
import type { Plan } from "../model/plan.ts";
import { type NeighbourChoice, neighbourDefault } from "./neighbours-ahead.ts";
import { type Fate, type PlotFate, plotFates } from "./plot-fate.ts";
import { seasonAhead, titleAhead } from "./season-ahead.ts";

export interface NextSeasonChoices {
  /** Id of the plan to be made. */
  readonly id: string;
  readonly title: string;
  readonly season: Plan["season"];
  /** Id of the layout that was grown. */
  readonly layout: string;
  /** The day it is made on: what is written of that day and before counts. */
  readonly on: DayNumber;
  /** What became of plots, by id of the planting, where it is not what record and plan tell. */
  readonly fates: ReadonlyMap<string, Fate>;
  readonly wentToSeed: ReadonlyMap<string, PlotFate["wentToSeed"]>;
  /** Of surroundings, by id, where it is not what is offered first. */
  readonly neighbours: ReadonlyMap<string, NeighbourChoice>;
  /** Whether plants and seed wanted this season are wanted again of what need not be renewed. */
  readonly keepsWanted: boolean;
  /** Whether what was sown, by the sowing list, is taken off the shelf. */
  readonly takesSown: boolean;
}

/**
 * What is offered first.
 * @param open id of the layout somebody looks at: the one grown where nothing else tells
 */
export function offeredChoices(
  plan: Plan,
  { id, on, open }: Pick<NextSeasonChoices, "id" | "on"> & { readonly open?: string },
): NextSeasonChoices {
  const season = seasonAhead(plan.season);
  return {
    id,
    title: titleAhead(plan.title, plan.season, season),
    season,
    layout: grownLayoutId(plan, open),
    on,
    fates: new Map(),
    wentToSeed: new Map(),
    neighbours: new Map(),
    keepsWanted: false,
    // Amounts are the grower's word: they are not changed by a reckoning unasked.
    takesSown: false,
  };
}

/**
 * The layout whose plots the field record is of, most of it; of equals the chosen one, else the one
 * that is open, else the first.
 */
export function grownLayoutId(plan: Plan, open?: string): string {
  const written = new Set(currentEntries(plan.entries).map(({ of }) => of));
  const isThere = plan.layouts.some(({ id }) => id === open);
  const opening =
    plan.chosenLayout ?? (isThere && open !== undefined ? open : openingLayoutId(plan));
  const counted = plan.layouts.map(({ id, plantings }) => ({
    id,
    plots: plantings.filter((planting) => written.has(planting.id)).length,
  }));
  const most = Math.max(...counted.map(({ plots }) => plots));
  const grown = counted.filter(({ plots }) => plots === most);
  return (grown.find(({ id }) => id === opening) ?? grown[0])?.id ?? opening;
}

/** The plots of the layout grown, as chosen. */
export function chosenFates(plan: Plan, choices: NextSeasonChoices): readonly PlotFate[] {
  return plotFates(plan, layoutOf(plan, choices.layout).id, choices.on).map((plot) => {
    const fate = choices.fates.get(plot.planting.id) ?? plot.fate;
    const told = choices.wentToSeed.get(plot.planting.id);
    // What was held never sown has no seed; said to have grown, it may have shed some.
    const isRaised = plot.fate === "never" && fate === "over";
    const wentToSeed = told ?? (isRaised ? "unknown" : plot.wentToSeed);
    return { ...plot, fate, wentToSeed };
  });
}

/** What is chosen for a surrounding. */
export function neighbourChoice(
  surrounding: Plan["surroundings"][number],
  { neighbours }: NextSeasonChoices,
): NeighbourChoice {
  return neighbours.get(surrounding.id) ?? neighbourDefault(surrounding);
}
