/** What the step to the next season takes along and makes, in words: for the dialog and the command. */
import { longDate } from "../model/day.ts";
import type { Plan, SeedAmount, Variety } from "../model/plan.ts";
import type { SownLot } from "./lots-sown.ts";
import type { Fate, PlotFate } from "./plot-fate.ts";
import { fateWords, plotCount } from "./season-words.ts";
import { counted, formOf } from "../words/plurals.ts";

/** Why what is to come is taken from the plan; empty once the season is over. */
export function stillRunning({ season }: Plan, on: number): string {
  return on > season.last
    ? ""
    : `Season ${season.name} runs until ${longDate(season.last)}. What is written in the field record until ${longDate(on)} counts; what is still to come is taken from the plan.`;
}

/** What comes along, one line each. */
export function takenAlong(plan: Plan, next: Plan): readonly string[] {
  const { site, picture, ownKinds, storagePlaces, lots } = plan;
  const harvest = lots.filter(
    ({ from }) => from?.what === "own" && from.season === plan.season.name,
  );
  const frosts = [next.site.lastSpringFrost, next.site.firstAutumnFrost].flatMap((day) =>
    day === undefined ? [] : [longDate(day)],
  );
  const beds = next.layouts[0]?.beds.length ?? 0;
  const places =
    storagePlaces.length === 0
      ? ""
      : ` in ${counted(storagePlaces.length, { one: "place", other: "places" })}`;
  return [
    `${counted(beds, { one: "bed", other: "beds" })}, the site ${site.name}${site.climate ? " and its climate" : ""}${picture ? ", the picture" : ""}.`,
    ...(frosts.length === 0 ? [] : [`Frosts a year on: ${frosts.join(" and ")}.`]),
    ...(lots.length === 0
      ? []
      : [
          `${counted(lots.length, { one: "lot", other: "lots" })} of seed${places}, ${harvest.length} of them from plots of season ${plan.season.name}.`,
        ]),
    ...(ownKinds.length === 0
      ? []
      : [`${counted(ownKinds.length, { one: "own kind", other: "own kinds" })}.`]),
    `${counted(plan.varieties.length, { one: "variety", other: "varieties" })} on the seed list.`,
  ];
}

/** How many plots become what. */
export function plotSummary(plots: readonly PlotFate[]): string {
  const of = (fate: Fate) => plots.filter((plot) => plot.fate === fate).length;
  const over = of("over") + of("lifted");
  const parts = [
    [
      over,
      formOf(over, {
        one: "becomes an earlier crop of its ground",
        other: "become earlier crops of their ground",
      }),
    ],
    [
      of("standing"),
      formOf(of("standing"), {
        one: "stays where it stands, locked",
        other: "stay where they stand, locked",
      }),
    ],
    [of("lifted"), "with roots or plants to set out in spring"],
    [of("never"), "left out, as no sowing is written down, which it is at the other plots"],
  ] as const;
  const told = parts.flatMap(([count, words]) => (count > 0 ? [`${count} ${words}`] : []));
  return told.length === 0 ? "No plots." : `Of ${plotCount(plots.length)}: ${told.join("; ")}.`;
}

/** What waits in store or must be renewed: it heads the seed list, each with its reason. */
export function headOfSeedList({ varieties }: Plan): readonly Variety[] {
  return varieties.filter(({ reason }) => reason !== undefined);
}

/** Plots and lots named before the rest is counted only. */
const NAMED_PLOTS = 8;

/** What the sowing list says was taken from lots; empty: nothing. */
export function sownWords(sown: readonly SownLot[]): string {
  const text = ({ unit, value }: SeedAmount) => `${value} ${unit}`;
  const named = sown
    .slice(0, NAMED_PLOTS)
    .map(({ lot, taken, left }) => `${lot.code} ${text(taken)}, ${text(left)} left`);
  const more = sown.length - named.length;
  return `${named.join("; ")}${more > 0 ? `; and ${more} more` : ""}`;
}

/** Harvests that are on no shelf yet; empty: none. */
export function unshelvedWords(plots: readonly PlotFate[]): string {
  if (plots.length === 0) return "";
  const named = plots.slice(0, NAMED_PLOTS).map(({ planting, variety }) => {
    return `${planting.code} ${variety.name}`;
  });
  const more = plots.length - named.length;
  const list = `${named.join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
  return `No lot of this season's seed is on the shelf yet of: ${list}. Lots made later in this season's plan can be taken over then.`;
}

/** All of it, one line each. */
export function nextSeasonReport(
  plan: Plan,
  next: Plan,
  plots: readonly PlotFate[],
): readonly string[] {
  return [
    `"${next.title}", season ${next.season.name}, ${longDate(next.season.first)} to ${longDate(next.season.last)}, from "${plan.title}"`,
    ...takenAlong(plan, next),
    plotSummary(plots),
    ...plots
      .filter(({ fate }) => fate !== "over")
      .map(({ planting, variety, fate }) => `${planting.code} ${variety.name}: ${fateWords[fate]}`),
    ...headOfSeedList(next).map(({ name, reason = "" }) => `seed list: ${name}: ${reason}`),
  ];
}
