/** What `wideberth check` prints: one object for programs, and the same in words. */
import { describeFinding, type Finding } from "../checks/all-checks.ts";
import { describeStanding } from "../checks/pair-words.ts";
import { type Description, severitySign, severityWord } from "../checks/wording.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import type { Severity } from "../checks/finding.ts";
import { allIsolationPairs } from "../checks/isolation.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import { countBySeverity } from "../checks/finding.ts";
import type { Plan, PurityLevel } from "../model/plan.ts";
import { type ToldWay, hasWaysOut, toldWays } from "../remedies/told-ways.ts";
import { wayWords } from "../remedies/way-words.ts";
import { seasonsWords, yearsTitle } from "../crossing-share/seasons-words.ts";
import { type PairOverYears, pairsOverYears, seasonsOf } from "../crossing-share/seasons-tried.ts";
import { type UnaskedAround, measuredToPoint, unaskedAround } from "../fieldwork/unasked-around.ts";
import { pointWords, unaskedWords } from "../fieldwork/unasked-words.ts";
import { countText } from "../map/finding-items.ts";
import { type ReportId, type ReportPair, lonLatReader, reportPair } from "./report-pair.ts";
import { featureIds } from "../exchange/geojson-plan.ts";
import { estimateLines, estimateReport } from "./estimate-report.ts";
import { levelNames } from "../words/level-words.ts";
import { counted } from "../words/plurals.ts";

export interface ReportFinding {
  readonly check: Finding["check"];
  readonly severity: Severity;
  readonly subjects: readonly ReportId[];
  readonly measuredM: number | null;
  readonly requiredM: number | null;
  readonly title: string;
  readonly sentences: readonly string[];
  /** Where they were asked for, and the check has any. */
  readonly ways?: readonly ReportWay[];
}

/** A way out of a finding, the best first. */
export interface ReportWay {
  readonly title: string;
  readonly notes: readonly string[];
  readonly alsoClears: readonly string[];
  readonly brings: readonly string[];
  readonly conflictsAfter: number;
}

export interface CheckReport {
  readonly file: string;
  readonly plan: string;
  readonly layout: string;
  readonly counts: Readonly<Record<Severity, number>>;
  readonly pairs: readonly ReportPair[];
  readonly findings: readonly ReportFinding[];
  /** Findings the grower has accepted; they do not count. */
  readonly accepted: readonly ReportFinding[];
  /** Pollen around that nothing is said of, see core/fieldwork/unasked-around.ts; if asked for. */
  readonly unaskedAround?: readonly ReportUnasked[];
}

/** Ids of kinds, and metres within which to look for what crosses with them; null: not known. */
interface ReportUnasked {
  readonly kinds: readonly string[];
  readonly wild: readonly string[];
  readonly withinM: number | null;
}

export interface CheckReportInput extends CheckedLayout {
  readonly file: string;
  /** Pairs cleared by distance as well. */
  readonly isAll: boolean;
  /** How much would cross as well; not unless asked for. */
  readonly isEstimated?: boolean;
  /** Pairs near to time's limit held against every year of the site's record. */
  readonly isYears?: boolean;
  /** Ways out of each finding that has them. */
  readonly isWithWays?: boolean;
  /** What is not entered around as well: of a plan, which is to hold it, and not of a collection. */
  readonly isAroundTold?: boolean;
}

export function checkReport(input: CheckReportInput): CheckReport {
  const { file, plan, layout, result } = input;
  const parts = reportParts(input);
  return {
    file,
    plan: plan.title,
    layout: layout.name,
    counts: countBySeverity(result.findings),
    pairs: pairsOf(input).map(parts.pair),
    findings: result.findings.map(parts.findingWithWays),
    accepted: result.accepted.map(parts.finding),
    ...(input.isAroundTold === true
      ? { unaskedAround: unaskedAround(input.result).map(reportUnasked) }
      : {}),
  };
}

function reportUnasked({ kinds, wild, metres }: UnaskedAround): ReportUnasked {
  const ids = (list: typeof kinds) => list.map(({ id }) => id);
  return { kinds: ids(kinds), wild: ids(wild), withinM: metres };
}

/**
 * The report as JSON in pieces, for writing one after the other: one object as `JSON.stringify`
 * with two spaces would write it, but never as one text, which thousands of plantings without a
 * figure make longer than a text may be.
 */
export function* checkReportJson(input: CheckReportInput): Generator<string> {
  const { file, plan, layout, result } = input;
  const parts = reportParts(input);
  const counts = countBySeverity(result.findings);
  const head = JSON.stringify({ file, plan: plan.title, layout: layout.name, counts }, null, 2);
  // Without its closing bracket: the lists follow.
  yield head.slice(0, -2);
  yield* listJson("pairs", pairsOf(input), parts.pair);
  yield* listJson("findings", result.findings, parts.findingWithWays);
  yield* listJson("accepted", result.accepted, parts.finding);
  if (input.isAroundTold === true) {
    yield* listJson("unaskedAround", unaskedAround(input.result), reportUnasked);
  }
  if (input.isEstimated === true) {
    const { estimates, caution } = estimateReport(input, featureIds(plan, layout));
    yield* listJson("estimates", estimates, (estimate) => estimate);
    yield `,\n  "estimateCaution": ${JSON.stringify(caution)}`;
  }
  yield "\n}\n";
}

function* listJson<T>(
  name: string,
  items: readonly T[],
  told: (item: T) => object,
): Generator<string> {
  yield `,\n  ${JSON.stringify(name)}: [`;
  for (const [index, item] of items.entries()) {
    const text = JSON.stringify(told(item), null, 2).replaceAll("\n", "\n    ");
    yield `${index === 0 ? "" : ","}\n    ${text}`;
  }
  yield items.length === 0 ? "]" : "\n  ]";
}

/** What the report says of one pair or finding of a run, for programs and in words. */
export function reportParts(
  input: CheckedLayout & Pick<CheckReportInput, "isYears" | "isWithWays">,
) {
  const { plan, layout } = input;
  const idOf = featureIds(plan, layout);
  const wording = wordingOf(input);
  const lonLatOf = lonLatReader(plan);
  const finding = (found: Finding): ReportFinding => ({
    check: found.check,
    severity: found.severity,
    subjects: found.subjects.map(idOf),
    measuredM: found.measuredM ?? null,
    requiredM: found.requiredM ?? null,
    ...describeFinding(found, wording),
  });
  /** Null where none were asked for, or the finding has none to ask for. */
  const waysOf = (found: Finding) =>
    input.isWithWays === true && hasWaysOut(found) ? toldWays(input, found) : null;
  return {
    pair: (pair: IsolationPair): ReportPair => ({
      ...reportPair(pair, idOf, lonLatOf, input),
      ...(input.isYears === true ? { seasons: seasonsOf(pair, input.result.standById) } : {}),
    }),
    /** A pair over the years of the record. */
    seasonsLine: ({ pair, seasons }: PairOverYears): string =>
      `${wording.nameOf(pair.seedParent)} from ${wording.nameOf(pair.pollenSource)}: ${seasonsWords(seasons)}`,
    finding,
    findingWithWays: (found: Finding): ReportFinding => {
      const ways = waysOf(found);
      return { ...finding(found), ...(ways && { ways: ways.map(reportWay) }) };
    },
    findingLines: (found: Finding): readonly string[] => [
      ...findingLines(found, describeFinding(found, wording)),
      ...wayLines(waysOf(found)),
    ],
    /** What keeps a pair apart that is nearer than required. */
    clearLine: (pair: IsolationPair): string =>
      `${wording.nameOf(pair.seedParent)} from ${wording.nameOf(pair.pollenSource)}: ${describeStanding(pair, wording)}`,
  };
}

function pairsOf({ result, book, isAll }: CheckReportInput): readonly IsolationPair[] {
  return isAll ? allIsolationPairs(result.stands, book) : result.pairs;
}

/** Above the pairs that something other than distance keeps apart. */
export const CLEAR_TITLE = "Not far enough apart, and clear all the same";

/** The report as plain text for people: findings first, then what the clear pairs rest on. */
export function checkReportText(input: CheckReportInput): string {
  return [...checkReportLines(input)].join("");
}

/** The same line by line, for writing one after the other. */
export function* checkReportLines(input: CheckReportInput): Generator<string> {
  const { file, plan, layout, result } = input;
  const parts = reportParts(input);
  const clear = pairsOf(input).filter(
    ({ standing }) => standing !== "conflict" && standing !== "unknown",
  );
  const season = plan.season.name === "" ? "" : `, season ${plan.season.name}`;
  yield `${plan.title}${season}: ${file}, layout "${layout.name}"\n`;
  yield `${whatIsThere(layout.plantings.length, sourceCount(plan), plan.level)}\n`;
  for (const finding of result.findings) yield `\n${parts.findingLines(finding).join("\n")}\n`;
  yield* section("Accepted", result.accepted, (found) => parts.finding(found).title);
  yield* section(
    input.isAll ? "What the other pairs rest on" : CLEAR_TITLE,
    clear,
    parts.clearLine,
  );
  if (input.isAroundTold === true) yield* unaskedLines(input);
  if (input.isEstimated === true) yield* estimateLines(input);
  if (input.isYears === true) yield* yearsLines(input, parts.seasonsLine);
  yield `\n${capital(countText(result.findings))}\n`;
}

/** On what being clear does not rest. */
function* unaskedLines(input: CheckReportInput): Generator<string> {
  const points = pointWords(measuredToPoint(input.result));
  if (points !== null) yield `\n${points}\n`;
  const unasked = unaskedWords(unaskedAround(input.result), input.plan.units);
  if (unasked === null) return;
  yield `\n${unasked.head}\n`;
  for (const line of unasked.lines) yield `  ${line}\n`;
  yield `${unasked.advice}\n`;
}

/** What the years of the record say, or why they say nothing. */
function* yearsLines(
  { plan, result }: CheckReportInput,
  line: (tried: PairOverYears) => string,
): Generator<string> {
  const tried = pairsOverYears(result.pairs, result.standById);
  yield* section(yearsTitle(plan.site.climate), tried, line);
  if (tried.length > 0) return;
  yield plan.site.climate?.days
    ? "\nSeasons tried: no pair that heat and time decide.\n"
    : "\nSeasons tried: the plan has no record of days to try them on.\n";
}

/** How much there is to check, in words. */
export function whatIsThere(plantings: number, sources: number, level: PurityLevel): string {
  return `${counted(plantings, { one: "planting", other: "plantings" })}, ${counted(sources, { one: "pollen source", other: "pollen sources" })} beyond the beds; ${levelNames[level]} level`;
}

function findingLines(finding: Finding, words: Description): readonly string[] {
  const sign = severitySign[finding.severity];
  return [
    `${sign} ${severityWord[finding.severity]}: ${words.title}`,
    ...words.sentences.map((sentence) => `    ${sentence}`),
  ];
}

function reportWay({ title, notes, ...way }: ToldWay): ReportWay {
  const { alsoClears, bringsWords: brings, conflictsAfter } = way;
  return { title, notes, alsoClears, brings, conflictsAfter };
}

/** So many are told of each finding; JSON has all. */
const WAYS_TOLD = 5;

function wayLines(ways: readonly ToldWay[] | null): readonly string[] {
  if (ways === null) return [];
  if (ways.length === 0) return [`    ${wayWords.noneAlone}`];
  const left = ways.length - WAYS_TOLD;
  return [
    `    ${wayWords.heading}`,
    ...ways
      .slice(0, WAYS_TOLD)
      .flatMap(({ title, notes, alsoClears, bringsWords }, index) => [
        `      ${index + 1}. ${title}`,
        ...[...alsoClears.map(wayWords.alsoClears), ...bringsWords, ...notes].map(
          (text) => `         ${text}`,
        ),
      ]),
    ...(left > 0 ? [`      ${wayWords.more(left)}`] : []),
  ];
}

function* section<T>(
  title: string,
  items: readonly T[],
  words: (item: T) => string,
): Generator<string> {
  if (items.length > 0) yield `\n${title}:\n`;
  for (const item of items) yield `  ${words(item)}\n`;
}

function sourceCount(plan: Plan): number {
  return plan.surroundings.filter((item) => item.what === "pollen").length;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
