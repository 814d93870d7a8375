/** Why, and by when, a variety is to be renewed. */
import { civilFromDay } from "../model/day.ts";
import type { Renewal } from "./renewal.ts";
import { counted } from "../words/plurals.ts";

/** The reason, which travels with the variety into the seed list. */
export function renewalReason(renewal: Renewal): string {
  const { cause, lot, standard, isStandardPublished } = renewal;
  const bar = `${Math.round(standard * 100)} % (${isStandardPublished ? "7 CFR 201.31" : "half: no standard is published"})`;
  const code = lot?.code ?? "";
  const lead = renewal.leadYears === 2 ? " Its seed takes two seasons." : "";
  switch (cause) {
    case "gone":
      return "No seed of it is left on the shelf.";
    case "dead":
      return `Its best lot ${code} lies wholly under ${bar}: sow it this season, and thicker.${lead}`;
    case "doubtful":
      return `Its best lot ${code} is likelier under ${bar} than not: test it, and sow it this season if so.${lead}`;
    case "short":
      return `${shortWords(renewal)}${lead}`;
    case "unknown":
      return `Nothing is known of the age of ${code}: test it before anything else.${lead}`;
    case "soon":
      return `Its best lot ${code} will likely fall under ${bar} ${fallWords(renewal)}.${lead}`;
  }
}

function shortWords({ stockSeeds, reserveSeeds, growOutSeeds, plots }: Renewal): string {
  const good = counted(stockSeeds ?? 0, { one: "good seed", other: "good seeds" });
  const left =
    plots.length > 0
      ? `This layout's sowing leaves ${good}, should the crop fail`
      : counted(stockSeeds ?? 0, { one: "good seed is left", other: "good seeds are left" });
  return reserveSeeds === null
    ? `${left}; growing it out once takes about ${growOutSeeds}.`
    : `${left}; ${reserveSeeds} are to be kept.`;
}

/** When it falls, and the last season that brings fresh seed before. */
function fallWords({ earliest, likely, seasonsLeft, by }: Renewal): string {
  const [first, usual] = [yearOf(earliest), yearOf(likely)];
  const years = first === usual ? `in ${usual}` : `in ${usual}, at the earliest in ${first}`;
  return seasonsLeft === 0
    ? `${years}: this is the last season that brings fresh seed before`
    : `${years}: it can wait until the season of ${by}, if a test each winter bears it out`;
}

/** What the layout does for it already; empty: nothing. */
export function plantedWords({ plots, plantsPlaced, plants }: Renewal): string {
  if (plots.length === 0) return "";
  const where = `in this layout for seed (${plots.join(", ")})`;
  return plantsPlaced < plants
    ? `Only ${plantsPlaced} plants of the ${plants} are ${where}.`
    : `${plantsPlaced} plants are ${where}.`;
}

function yearOf(day: number | null): string {
  return day === null ? "a later year" : String(civilFromDay(day).year);
}
