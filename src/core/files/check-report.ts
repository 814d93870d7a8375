/** What `wideberth check` prints: one object for programs, and the same in words. */
import { describeFinding, type Finding } from "../checks/all-checks.ts";
import { describeStanding } from "../checks/pair-words.ts";
import { type Description, severitySign, severityWord } from "../checks/wording.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import type { Severity } from "../checks/finding.ts";
import { allIsolationPairs } from "../checks/isolation.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import { countBySeverity } from "../checks/run-checks.ts";
import type { Plan, PurityLevel } from "../model/plan.ts";
import { seasonsWords, yearsTitle } from "../crossing-share/seasons-words.ts";
import { type PairOverYears, pairsOverYears, seasonsOf } from "../crossing-share/seasons-tried.ts";
import { countText } from "../map/finding-items.ts";
import { type ReportId, type ReportPair, lonLatReader, reportPair } from "./report-pair.ts";
import { featureIds } from "../exchange/geojson-plan.ts";
import { estimateLines, estimateReport } from "./estimate-report.ts";

export interface ReportFinding {
  readonly check: Finding["check"];
  readonly severity: Severity;
  readonly subjects: readonly ReportId[];
  readonly measuredM: number | null;
  readonly requiredM: number | null;
  readonly title: string;
  readonly sentences: readonly string[];
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
}

export interface CheckReportInput extends CheckedLayout {
  readonly file: string;
  /** Pairs cleared by distance as well. */
  readonly isAll: boolean;
  /** How much would cross as well; not unless asked for. */
  readonly isEstimated?: boolean;
  /** Pairs near to time's limit held against every year of the site's record. */
  readonly isYears?: boolean;
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
    findings: result.findings.map(parts.finding),
    accepted: result.accepted.map(parts.finding),
  };
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
  yield* listJson("findings", result.findings, parts.finding);
  yield* listJson("accepted", result.accepted, parts.finding);
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
export function reportParts(input: CheckedLayout & Pick<Partial<CheckReportInput>, "isYears">) {
  const { plan, layout } = input;
  const idOf = featureIds(plan, layout);
  const wording = wordingOf(input);
  const lonLatOf = lonLatReader(plan);
  return {
    pair: (pair: IsolationPair): ReportPair => ({
      ...reportPair(pair, idOf, lonLatOf, input),
      ...(input.isYears === true ? { seasons: seasonsOf(pair, input.result.standById) } : {}),
    }),
    /** A pair over the years of the record. */
    seasonsLine: ({ pair, seasons }: PairOverYears): string =>
      `${wording.nameOf(pair.seedParent)} from ${wording.nameOf(pair.pollenSource)}: ${seasonsWords(seasons)}`,
    finding: (finding: Finding): ReportFinding => ({
      check: finding.check,
      severity: finding.severity,
      subjects: finding.subjects.map(idOf),
      measuredM: finding.measuredM ?? null,
      requiredM: finding.requiredM ?? null,
      ...describeFinding(finding, wording),
    }),
    findingLines: (finding: Finding): readonly string[] =>
      findingLines(finding, describeFinding(finding, wording)),
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
  yield* section("Accepted", result.accepted, (finding) => parts.finding(finding).title);
  yield* section(
    input.isAll ? "What the other pairs rest on" : CLEAR_TITLE,
    clear,
    parts.clearLine,
  );
  if (input.isEstimated === true) yield* estimateLines(input);
  if (input.isYears === true) yield* yearsLines(input, parts.seasonsLine);
  yield `\n${capital(countText(result.findings))}\n`;
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
  return `${counted(plantings, "planting")}, ${counted(sources, "pollen source")} beyond the beds; ${level} level`;
}

function findingLines(finding: Finding, words: Description): readonly string[] {
  const sign = severitySign[finding.severity];
  return [
    `${sign} ${severityWord[finding.severity]}: ${words.title}`,
    ...words.sentences.map((sentence) => `    ${sentence}`),
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

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? "" : "s"}`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
