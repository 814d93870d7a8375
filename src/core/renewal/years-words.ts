/** What is said of the years ahead, on the page, on paper and on the command line alike. */
import { renewalReason } from "../lots/renewal-words.ts";
import { longDate } from "../model/day.ts";
import { formatArea } from "../model/length.ts";
import type { Plan } from "../model/plan.ts";
import { type YearsNames, clashWords, listed, varietiesWords } from "./fault-words.ts";
import type { JudgedYears, YearsCell } from "./judge-years.ts";
import type { LeastSeasons } from "./least-seasons.ts";
import type { YearsProof } from "./proven-years.ts";
import type { NotLaidOut, YearsRow } from "./years-of-plan.ts";
import { seasonsOf } from "./years-problem.ts";
import { counted } from "../words/plurals.ts";

/** What a lay-out rests on though nothing stands against it, and the varieties it is about. */
export interface YearsCaution {
  readonly words: string;
  readonly names: readonly string[];
}

export function cautionsOf(judged: JudgedYears, { years }: YearsNames): readonly YearsCaution[] {
  const { rows, problem, rare } = years;
  const caution = (words: string, isMeant: (row: YearsRow, item: number) => boolean) => {
    const names = rows.filter(isMeant).map(({ variety }) => variety.name);
    return names.length === 0 ? [] : [{ words, names }];
  };
  const isWaiting = ({ standing }: YearsRow, item: number) => {
    const first = judged.seasons.findIndex(({ grown }) => grown.includes(item));
    const early = problem.items[item]?.early ?? Infinity;
    if (standing !== "keeps") return false;
    return first < 0 ? early < problem.seasons - 1 : first > early;
  };
  return [
    ...caution(
      "Nobody knows how old this seed is, so it is not taken for alive: test it first",
      ({ standing }) => standing === "unknown",
    ),
    ...caution(
      "No figure says how long seed of these kinds keeps: test it each winter",
      ({ standing }) => standing === "no figure",
    ),
    ...caution(
      "Under their standard, or short of seed, before fresh seed can be ripe: grown as soon as can be",
      ({ standing }) => standing === "late",
    ),
    ...caution(
      "Wait beyond the early end of their band: test them each winter, and grow them sooner if a test says so",
      isWaiting,
    ),
    ...caution(
      "Seed may not keep until the next is ripe where it lies: sow it in time, or keep it cooler and drier",
      ({ isShortLived }) => isShortLived,
    ),
    ...caution(
      "No spacing is known of these kinds, so the ground they take is a guess",
      ({ isGroundAssumed }) => isGroundAssumed,
    ),
    ...caution(
      "No isolation distance is known, so each stands alone among what it crosses with",
      ({ needM }) => needM === Infinity,
    ),
    ...(rare.length === 0
      ? []
      : [
          {
            words: "Cross only rarely and may stand in one season; the findings say so then",
            names: rare.map(([one, other]) => `${one.name} with ${other.name}`),
          },
        ]),
  ];
}

/** As one sentence with every name; where there are more than so many, with their number. */
export function cautionWords({ words, names }: YearsCaution, most = Infinity): string {
  if (names.length > most) return `${words} (${varietiesWords(names.length)}).`;
  return `${words}: ${listed(names)}.`;
}

/** What is not counted here, for the reader. */
export function limitWords({ years: { bedsM2, problem } }: YearsNames): string {
  const ground =
    bedsM2 === null
      ? "No bed is drawn, so no two that cross are put into one season, and ground is not counted. "
      : problem.rests.length === 0
        ? ""
        : "Rest of the ground is counted by area, not bed by bed. ";
  return `${ground}Plants grown to eat that flower, dates and the neighbours of later years are not looked at: the findings judge each season once it is drawn.`;
}

export function notWords(why: NotLaidOut): string {
  switch (why) {
    case "no lot":
      return "no lot on the shelf";
    case "gone":
      return "no seed left: ask for it elsewhere";
    case "left out":
      return "left out by hand";
    case "kind not known":
      return "kind not known";
  }
}

/** How the seed of a variety stands, in a few words: `May 2028, likely Oct 2030`. */
export function standingWords(row: YearsRow): string {
  switch (row.standing) {
    case "unknown":
      return "age not known: test it";
    case "no figure":
      return "no figure of seed life";
    case "late":
      return row.renewal.cause === "short" ? "too little seed" : "may be under its standard now";
    case "keeps":
      return "holds";
  }
}

/** Why it is laid out as it is: for the seed list, and beside the table. */
export function turnReason(row: YearsRow, names: YearsNames, season: number): string {
  const bits = names.years.years[names.years.rows.indexOf(row)] ?? 0;
  const later = seasonsOf(bits).filter((each) => each > season);
  const next =
    later.length === 0 ? "" : ` Next in ${listed(later.map((each) => names.seasons[each] ?? ""))}.`;
  return `${lifeWords(row)} By the years laid out, its turn is ${names.seasons[season] ?? ""}.${next}`;
}

/** How long its best lot lasts. */
export function lifeWords(row: YearsRow): string {
  const { end, standing, kind } = row;
  if (standing === "unknown") {
    return `Nothing is known of the age of ${row.lot?.code ?? "its seed"}: test it before anything else.`;
  }
  if (standing === "no figure" || !end) {
    return `No figure says how long seed of ${kind.name} keeps: test it each winter.`;
  }
  if (standing === "late") return renewalReason(row.renewal);
  const on = (day: number | null) => (day === null ? "a century off" : longDate(day));
  return `${end.lot.code} may be under its standard from ${on(end.earliest)}, likely from ${on(end.likely)}.`;
}

/** How far an answer is proven. */
function gapWords(gap: number | null): string {
  if (gap === null || gap === Infinity) {
    return "Found by search; how much better another lay-out could be was not proven in time.";
  }
  if (gap <= 0.0005)
    return "Proven: no lay-out of these years costs less work, waiting and covers.";
  const percent = Math.ceil(gap * 1000) / 10;
  return gap <= 0.05
    ? `No lay-out can be more than ${percent} % better (work, waiting and covers counted together).`
    : `Found by search, not proven: a lay-out up to ${Math.ceil(gap * 100)} % better may exist.`;
}

/** Area of ground, for tables. */
export function groundWords(squareMetres: number, { units }: Pick<Plan, "units">): string {
  return formatArea(squareMetres, units);
}

/** Whether the lay-out can be followed as it stands. */
export function verdictWords({ faults }: JudgedYears, { years }: YearsNames): string {
  if (years.rows.length === 0) return "No variety with a lot on the shelf is to be kept.";
  if (faults.length > 0) {
    return `${counted(faults.length, { one: "thing stands", other: "things stand" })} against these years:`;
  }
  const end = years.settings.end === "earliest" ? "may be" : "is likely";
  const doubtful = years.rows.filter(({ standing }) => standing !== "keeps").length;
  const known = `Nothing stands against these years: fresh seed is ripe before the old lot ${end} under its standard`;
  return doubtful === 0
    ? `${known}.`
    : `${known}, but for ${varietiesWords(doubtful)} whose seed may be dead already or of which nobody knows.`;
}

/** One cell of the table: `seed`, `seed, caged`, `first year`. */
export function cellWords({ grown, isCovered }: Pick<YearsCell, "grown" | "isCovered">): string {
  if (grown === null) return "";
  if (grown === "first-year") return "first year";
  return isCovered ? "seed, cover" : "seed";
}

/** Words of the sheet for the wall. */
export const paperWords = {
  title: "Which year for which",
  variety: "Variety",
  counts: "Grown for seed",
  legend:
    "seed: grown for seed. +c: under a cover. 1st: a biennial's year before. †: its best lot is likely under its standard within that season; (†): it may be. ×: something stands against it. After a name, !: its seed may be dead or short; ?: nobody knows.",
  notLaid: "is not laid out",
  printed: (at: string) => `printed ${at}`,
} as const;

/** A cell of the sheet for the wall: `seed+c †`. */
export function paperCell({
  grown,
  isCovered,
  endsEarly,
  endsLikely,
  hasFault,
}: YearsCell): string {
  const what = grown === null ? "" : grown === "seed" ? `seed${isCovered ? "+c" : ""}` : "1st";
  const mark = endsLikely ? "†" : endsEarly ? "(†)" : "";
  return [hasFault ? "×" : "", what, mark].filter((each) => each !== "").join(" ");
}

/** In how few seasons all could be renewed once. */
function leastWords({ kind, seasons }: LeastSeasons): string {
  const many = counted(seasons, { one: "season", other: "seasons" });
  switch (kind) {
    case "proven":
      return `Proven: all could be renewed once within ${many}, and not within fewer.`;
    case "at least":
      return `To renew all once takes at least ${many}; more was not proven in time.`;
    case "more than":
      return `To renew all once takes more than ${many}.`;
  }
}

/** What a solver has proven of the years, or that it has not: a sentence each. */
export function proofLines(
  { gap, clashes, least }: YearsProof,
  names: YearsNames,
): readonly { readonly text: string; readonly isClash: boolean }[] {
  const told = (text: string, isClash = false) => ({ text, isClash });
  return [
    ...clashes.map(({ items, isSmallest }) => told(clashWords(items, isSmallest, names), true)),
    ...(clashes.length === 0 ? [told(gapWords(gap))] : []),
    told(leastWords(least)),
  ];
}
