/** Measures of layouts and differences between two, in words for screen, file and command line. */
import type { Comparison, Measure, MeasureName } from "./compare-layouts.ts";
import type { Change, Difference } from "./layout-differences.ts";
import { type LengthUnit, formatArea, formatDistance } from "../model/length.ts";
import { rarity, twoFigures } from "../crossing-share/share-words.ts";
import { shortDate } from "../model/day.ts";
import type { Flowering, Plan } from "../model/plan.ts";
import { coverMarks } from "../map/map-words.ts";
import { counted } from "../words/plurals.ts";
import { compassWord } from "../words/compass-words.ts";

/** Fewer crossed seeds in a thousand are not told apart. */
const LEAST_CROSSED = 0.001;

/** What a row measures, for a reader who sees it for the first time. */
export function measureTitle(
  name: MeasureName,
  { base, varieties, wantedPlants }: Comparison,
): string {
  switch (name) {
    case "conflicts":
      return "Conflicts";
    case "worst shortfall":
      return "Worst distance short";
    case "unknowns":
      return "Unknown for lack of a date or figure";
    case "cautions":
      return "Cautions";
    case "accepted":
      return "Findings accepted with a reason";
    case "on time alone":
      return "Pairs kept apart by time alone";
    case "least slack":
      return "Least days to spare among those";
    case "on cover alone":
      return "Pairs kept apart by cover alone";
    case "covers":
      return "Plantings under cover";
    case "volunteers":
      return "Plantings where volunteers may come up";
    case "varieties missing":
      return `Varieties not placed of ${varieties}`;
    case "plants missing":
      return `Plants missing of ${wantedPlants} wanted`;
    case "ground planted":
      return "Ground planted";
    case "moved":
      return `Plantings moved from ${base.name}, added up`;
    case "most crossed, upper":
      return "Most crossed planting of maize, rape or turnip, upper end; rough, the rule decides";
    case "most crossed, lower":
      return "The same, lower end; small gardens were seldom measured";
    case "crossed in all, upper":
      return "Crossed seeds in a thousand of each of these, added up, upper end";
    case "crossed in all, lower":
      return "The same, lower end";
  }
}

/** One value of a row; "none" where there is nothing to measure. */
export function measureText(value: number | null, measure: Measure, unit: LengthUnit): string {
  if (value === null) return measure.unit === "per thousand" ? "not estimated" : "none";
  switch (measure.unit) {
    case "count":
      return String(value);
    case "days":
      return counted(value, { one: "day", other: "days" });
    case "metres":
      return formatDistance(value, unit);
    case "square metres":
      return formatArea(value, unit);
    case "per thousand":
      return measure.name.startsWith("most")
        ? rarity(value / 1000)
        : value < LEAST_CROSSED
          ? `under ${LEAST_CROSSED}`
          : twoFigures(value);
  }
}

/** "B02-1 Amber Lantern: moved 8.9 m south-west, 5 days later". */
export function differenceText(difference: Difference, plan: Plan): string {
  return `${differenceName(difference, plan)}: ${changeWords(difference, plan).join(", ")}`;
}

/** The code it has now, and the variety of a planting. */
export function differenceName(
  { what, variety, fromCode, toCode }: Difference,
  plan: Plan,
): string {
  const code = toCode ?? fromCode ?? "";
  if (what === "bed") return `bed ${code}`;
  const name = plan.varieties.find(({ id }) => id === variety)?.name ?? "";
  return `${code} ${name}`.trim();
}

/** Each change in a few words; a new code comes last. */
export function changeWords(
  { fromCode, toCode, changes }: Difference,
  plan: Plan,
): readonly string[] {
  const isRecoded = fromCode !== null && toCode !== null && fromCode !== toCode;
  const words = changes.map((change) => wordsOf(change, plan));
  return isRecoded ? [...words, `was ${fromCode}`] : words;
}

function wordsOf(change: Change, { units, site }: Plan): string {
  switch (change.kind) {
    case "moved": {
      const towards = compassWord(change.towardsDeg + site.upBearingDeg);
      return `moved ${formatDistance(change.metres, units)} ${towards}`;
    }
    case "date":
      return dateWords(change.days);
    case "cover":
      return change.to === "none" ? "no longer covered" : `under cover: ${coverMarks[change.to]}`;
    case "purpose":
      return change.to === "seed" ? "now for seed" : "no longer for seed";
    case "plants":
      return `${change.to ?? "unknown"} plants, was ${change.from ?? "unknown"}`;
    case "end":
      return change.to === null
        ? "stands to the end of the season"
        : `cleared on ${shortDate(change.to)}`;
    case "flowering":
      return FLOWERING_WORDS[change.to];
    case "rows":
      return `${change.to ?? "unknown"} rows, was ${change.from ?? "unknown"}`;
    case "other":
      return `other ${change.fields.map((field) => FIELD_WORDS.get(field) ?? field).join(", ")}`;
    case "variety":
      return "another variety";
    case "locked":
      return "lock changed";
    case "added":
      return "added";
    case "removed":
      return "removed";
    case "resized":
      return "resized";
    case "turned":
      return "turned";
  }
}

const FLOWERING_WORDS: Readonly<Record<Flowering, string>> = {
  yes: "will flower",
  cut: "cut before bloom",
  "first-year": "first year, does not flower",
};

/** What a planting keeps beside its ground and days, as the particulars call it. */
const FIELD_WORDS: ReadonlyMap<string, string> = new Map([
  ["start", "way of starting"],
  ["stoodInto", "winter"],
  ["isolationM", "isolation distance"],
  ["level", "level"],
  ["adjustments", "adjustments of the distance"],
  ["lots", "lots"],
  ["keepApart", "keeping apart of lots"],
  ["note", "note"],
]);

function dateWords(days: number | null): string {
  if (days === null) return "other dates";
  const count = Math.abs(days);
  return `${counted(count, { one: "day", other: "days" })} ${days > 0 ? "later" : "earlier"}`;
}

/** Layouts compared on paper and in lists. */
export const comparedWords = {
  drawings: "Drawings",
  drawingsPage: (page: number, of: number) => `Drawings, page ${page} of ${of}`,
  overlaid: (first: string, then: string) => `${first}, then ${then}`,
  noConflict: "no conflict",
  differsIn: (from: string, places: number) =>
    `differs from ${from} in ${counted(places, { one: "place", other: "places" })}`,
  compared: "layouts compared",
  oneRatio: (name: string) => `${name}, all at one ratio`,
  measuresAndDifferences: "Measures and differences",
  measures: "Measures",
  measure: "Measure",
  bold: "Bold with a tick: the better value of its row; none where all are equal or neither end is better. No score adds them up.",
  differs: (name: string, from: string) => `${name} differs from ${from}`,
  inNothing: "In nothing.",
  noRoom: (names: string) => `No room on the drawings for: ${names}.`,
  labelOf: (label: string, layout: string) => `${label} of ${layout}`,
  fileTitle: (map: string) => `${map}: layouts compared`,
  stopped: "The comparison was stopped",
  against: (name: string, first: string) => `${name} against ${first}:`,
  noDifference: "no difference",
  better: "* the better in its row",
} as const;
