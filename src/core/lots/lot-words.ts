/** Words about lots: what is left, how alive, and on what that rests. */
import type { Kind } from "../kinds/crop.ts";
import { civilFromDay, longDate, monthName, shortDate } from "../model/day.ts";
import type { GerminationTest, Lot, SeedAmount } from "../model/plan.ts";
import type { LifeNote } from "./ageing.ts";
import type { Estimate } from "./estimate.ts";
import type { PlaceLife } from "./better-place.ts";
import { meetsWithTolerance, testResult } from "./germination.ts";
import { constantsOf } from "./viability-sets.ts";
import { counted } from "../words/plurals.ts";
import { type SowingRow } from "./sowing.ts";

/** `12.5 g` or `340 seeds`. */
export function amountWords(amount: SeedAmount | undefined): string {
  if (!amount) return "not counted";
  if (amount.unit === "g") return `${gramsText(amount.value)} g`;
  return counted(amount.value, { one: "seed", other: "seeds" });
}

/**
 * A test of 200 seeds or more held against its kind's federal standard, hard seed counted in, with
 * what two tests may differ by chance; null where no standard is published or too few were sown.
 */
export function standardWords(test: GerminationTest, kind: Kind): string | null {
  const standard = kind.germinationPercent?.value;
  if (standard === undefined) return null;
  const tested = 100 * testResult(test).rateWithHard;
  const verdict = meetsWithTolerance(tested, standard, test.sown);
  if (verdict === null) return null;
  const named = `the standard of ${standard} % (7 CFR 201.31)`;
  if (tested >= standard) return `Reaches ${named}.`;
  const allowed = `${verdict.allowedPct} points that chance explains (7 CFR 201.63)`;
  return verdict.meets
    ? `Under ${named}, yet within the ${allowed}: a packet still says Below Standard.`
    : `Under ${named} by more than the ${allowed}.`;
}

/** To three figures, at least to the milligram. */
export function gramsText(grams: number): string {
  const digits = grams >= 100 ? 0 : grams >= 10 ? 1 : grams >= 1 ? 2 : 3;
  return String(Number(grams.toFixed(digits)));
}

/** Month and year of a test, as labels ask for it: `Feb 2027`. */
export function monthYear(day: number): string {
  const { year, month } = civilFromDay(day);
  return `${monthName(month)} ${year}`;
}

/** Where an estimate starts from. */
export function startWords({ from, startDay }: Estimate): string {
  switch (from) {
    case "test":
      return `from the test of ${longDate(startDay)}`;
    case "harvest":
      return `not tested: fresh seed of ${civilFromDay(startDay).year} is assumed sound`;
    case "arrival":
      return `not tested, its age unknown: it came ${longDate(startDay)}`;
  }
}

/** What an estimate rests on, and where it is weak. */
export function noteWords(note: LifeNote, kind: Kind): string {
  switch (note) {
    case "equation":
      return "by the seed viability equation (Ellis and Roberts 1980)";
    case "handbook":
      return "within the years of handbooks";
    case "proxy":
      return `constants measured on ${constantsOf(kind)?.proxy ?? "another species"}, which stands in`;
    case "two sets":
      return "two published sets of constants, the shorter life is taken";
    case "oil from memory":
      return "moisture from the air's humidity (Cromarty and others 1982), with oil from memory";
    case "dry clamp":
      return "drier than 5 % is reckoned as 5 %: drying further no longer helps";
    case "too damp":
      return "damper than 15 %: the equation no longer holds, dry it first";
    case "humidity clamp":
      return "the humidity lies outside the 10 to 70 % the formula is made for";
    case "cold clamp":
      return "the temperature lies outside the -20 to 90 C the equation is made for";
    case "room assumed":
      return "where it lay is not known: an ordinary room of 20 C and 50 % is assumed";
    case "rule of thumb":
      return "handbook years stretched by rules of thumb for warmth and damp";
  }
}

/** `4 to 9 years`, `20 years to over 100`. */
export function yearsWords([least, most]: PlaceLife["years"]): string {
  const words = (years: number) => (years < 1 ? years.toFixed(1) : String(Math.floor(years)));
  if (least === null) return "over 100 years";
  if (most === null) return `${words(least)} years to over 100`;
  const [low, high] = [words(least), most < 1 ? most.toFixed(1) : String(Math.ceil(most))];
  return low === high ? `about ${low} years` : `${low} to ${high} years`;
}

/** `treated with thiram`, `treated`, `untreated`, or nothing where it is not known. */
export function treatmentWords({ treated, treatedWith }: Lot): string {
  if (treatedWith !== undefined && treatedWith !== "") return `treated with ${treatedWith}`;
  return treated === undefined ? "" : treated ? "treated" : "untreated";
}

/** `sow 10 Apr`, `under glass about 28 Mar, out 10 May`, `trays, out 10 May`. */
export function sowingDayWords({ day, trayDay, planting }: SowingRow): string {
  if (day === null) return "no date yet";
  if (trayDay === null) return `sow ${shortDate(day)}`;
  const out = shortDate(planting.start?.date ?? day);
  if (trayDay === "not known") return `trays, out ${out}`;
  return trayDay === "given"
    ? `under glass ${shortDate(day)}, out ${out}`
    : `under glass about ${shortDate(day)}, out ${out}`;
}
