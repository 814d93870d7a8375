/** The step from one season to the next in words. */
import type { CropBook } from "../kinds/crop-book.ts";
import { civilFromDay, longDate } from "../model/day.ts";
import { LIMITS } from "../model/limits.ts";
import type { EarlierCrop, Plan, Variety } from "../model/plan.ts";
import type { NeighbourChoice } from "./neighbours-ahead.ts";
import type { NextSeasonFault } from "./next-season-faults.ts";
import type { Fate, PlotFate } from "./plot-fate.ts";
import { counted } from "../words/plurals.ts";

export const fateWords: Readonly<Record<Fate, string>> = {
  over: "over",
  standing: "left standing",
  lifted: "lifted, in store",
  never: "never sown",
};

export const wentToSeedWords: Readonly<Record<PlotFate["wentToSeed"], string>> = {
  yes: "went to seed",
  no: "no seed",
  unknown: "not known",
};

export const neighbourWords: Readonly<Record<NeighbourChoice, string>> = {
  ask: "to be asked again",
  same: "same every year",
  leave: "not there any more",
};

/** Why a variety with roots or plants in store is on the seed list. */
export function toSetOutReason(toSetOut: NonNullable<Variety["toSetOut"]>): string {
  const parts = toSetOut.map(({ plants, plot, season }) =>
    [
      plants === undefined
        ? "plants, not counted"
        : counted(plants, { one: "plant", other: "plants" }),
      ...(plot === undefined ? [] : [`of ${plot}`]),
      ...(season === undefined ? [] : [`from season ${season}`]),
    ].join(" "),
  );
  return `In store over winter, to set out in spring: ${parts.join("; ")}.`.slice(0, LIMITS.note);
}

export function plotCount(count: number): string {
  return counted(count, { one: "plot", other: "plots" });
}

/** Crops named before the rest is counted only. */
const NAMED_CROPS = 5;

/** What a fault is, and what would mend it. */
export function faultWords(fault: NextSeasonFault, plan: Plan, book: CropBook): string {
  switch (fault.what) {
    case "no title":
      return "The new plan needs a title.";
    case "no season name":
      return "The new season needs a name, for example 2028.";
    case "ends before it starts":
      return "The new season would end before it starts.";
    case "overlaps":
      return `Season ${fault.season.name} runs until ${longDate(fault.season.last)}: the next one cannot begin before it is over.`;
    case "is there already":
      return `"${fault.plan.title}" was started from this plan already, for season ${fault.plan.season.name} (${longDate(fault.plan.season.first)} to ${longDate(fault.plan.season.last)}). Open that one, or choose other days.`;
    case "crops to come":
      return `Earlier crops of years still to come: ${cropList(fault.crops, book)}. Season ${plan.season.name} ends in ${civilFromDay(plan.season.last).year}; change their years under Earlier crops, or remove them.`;
    case "too many crops":
      return `With this season's plots there would be more than ${LIMITS.items} earlier crops; remove old ones first.`;
  }
}

function cropList(crops: readonly EarlierCrop[], book: CropBook): string {
  const named = crops.slice(0, NAMED_CROPS).map(({ kind, varietyName = "", year }) => {
    const name = book.kind(kind)?.name ?? kind;
    return `${name}${varietyName === "" ? "" : ` ${varietyName}`}, ${year}`;
  });
  const more = crops.length - named.length;
  return `${named.join("; ")}${more > 0 ? `; and ${more} more` : ""}`;
}

/** Why a variety is on the list though it was grown: nothing of it is on the shelf. */
export function grownReason(due: string, codes: string): string {
  return `${due} It was grown for seed as ${codes}, of which no lot is on the shelf yet.`;
}
