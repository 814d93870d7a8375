/** The years by varieties as text, for programs, and as CSV. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { type CsvValue, csvFile } from "../formats/csv-file.ts";
import { isoFromDay } from "../model/day.ts";
import type { YearsProof } from "../renewal/proven-years.ts";
import type { PlanYears } from "../renewal/years-of-plan.ts";
import { seasonNames } from "../renewal/years-settings.ts";
import type { YearsCell } from "../renewal/judge-years.ts";
import { type YearsTable, yearsTable } from "../renewal/years-table.ts";
import { type YearsNames, faultWords } from "../renewal/fault-words.ts";
import {
  cautionWords,
  cautionsOf,
  cellWords,
  lifeWords,
  limitWords,
  notWords,
  proofLines,
  verdictWords,
} from "../renewal/years-words.ts";

interface Input extends Pick<CheckedLayout, "plan" | "book"> {
  /** What a solver has proven of these years; null or left out: nothing was asked of one. */
  readonly proof?: YearsProof | null;
}

function told({ plan, book }: Input, years: PlanYears) {
  const seasons = seasonNames(plan, years.problem.seasons);
  const names: YearsNames = { years, seasons, units: plan.units };
  return { names, seasons, table: yearsTable(plan, book, years) };
}

/** Widest column of names. */
const NAME_WIDTH = 34;
const CELL_WIDTH = 16;

/** @param years as they are kept, or as a search laid them out */
export function yearsText(input: Input, years: PlanYears): string {
  const { names, seasons, table } = told(input, years);
  const { judged } = table;
  const row = (head: string, cells: readonly string[]) =>
    `${head.padEnd(NAME_WIDTH)}${cells.map((cell) => cell.padEnd(CELL_WIDTH)).join("")}`.trimEnd();
  return [
    row("", seasons),
    ...table.parts.flatMap(({ name, lines }) => [
      `${name}:`,
      ...lines.map(({ row: { variety, kind }, cells }) =>
        row(`  ${variety.name}, ${kind.name}`, cells.map(cellText)),
      ),
    ]),
    "",
    row(
      "grown for seed",
      judged.seasons.map(({ grown }) => String(grown.length)),
    ),
    "",
    verdictWords(judged, names),
    ...proofTexts(input, names),
    ...judged.faults.map((fault) => `- ${faultWords(fault, names)}`),
    "",
    ...cautionsOf(judged, names).map((caution) => `! ${cautionWords(caution)}`),
    ...years.not.map(({ variety, why }) => `? ${variety.name} is not laid out: ${notWords(why)}.`),
    "",
    limitWords(names),
    "",
  ].join("\n");
}

function proofTexts({ proof }: Input, names: YearsNames): readonly string[] {
  return proof ? proofLines(proof, names).map(({ text }) => text) : [];
}

function cellText(cell: YearsCell): string {
  return [cellWords(cell), cell.endsLikely ? "ends" : cell.endsEarly ? "may end" : ""]
    .filter((words) => words !== "")
    .join(", ");
}

export function yearsCsv(input: Input, years: PlanYears): string {
  const { seasons, table } = told(input, years);
  const iso = (day: number | null | undefined) =>
    day === null || day === undefined ? null : isoFromDay(day);
  return csvFile(
    [
      "set",
      "kind",
      "variety",
      "lot",
      "may be under standard",
      "likely under standard",
      "plants",
      ...seasons,
    ],
    linesOf(table).map(({ name, line: { row, cells } }): readonly CsvValue[] => [
      name,
      row.kind.name,
      row.variety.name,
      row.lot?.code ?? null,
      iso(row.end?.earliest),
      iso(row.end?.likely),
      row.plants,
      ...cells.map(cellWords),
    ]),
  );
}

function linesOf({ parts }: YearsTable) {
  return parts.flatMap(({ name, lines }) => lines.map((line) => ({ name, line })));
}

/** Seasons are their names; days ISO 8601; null where nothing is known. */
export function yearsJson(input: Input, years: PlanYears): object {
  const { names, seasons, table } = told(input, years);
  const { judged } = table;
  const iso = (day: number | null | undefined) =>
    day === null || day === undefined ? null : isoFromDay(day);
  return {
    seasons: seasons.map((season, at) => ({
      season,
      grown: judged.seasons[at]?.grown.length ?? 0,
      firstYear: judged.seasons[at]?.firstYear.length ?? 0,
      groundM2: judged.seasons[at]?.groundM2 ?? 0,
      cages: judged.seasons[at]?.cages ?? 0,
      bags: judged.seasons[at]?.bags ?? 0,
    })),
    varieties: linesOf(table).map(({ name, line: { row, cells } }) => ({
      set: name,
      kind: row.kind.id,
      variety: row.variety.name,
      standing: row.standing,
      why: lifeWords(row),
      lot: row.lot?.code ?? null,
      earliest: iso(row.end?.earliest),
      likely: iso(row.end?.likely),
      plants: row.plants,
      grownFor: cells.flatMap(({ grown }, at) => (grown === "seed" ? [seasons[at]] : [])),
      covered: cells.flatMap(({ isCovered }, at) => (isCovered ? [seasons[at]] : [])),
    })),
    verdict: verdictWords(judged, names),
    ...(input.proof && { proof: proofTexts(input, names), gap: input.proof.gap }),
    against: judged.faults.map((fault) => faultWords(fault, names)),
    cautions: cautionsOf(judged, names).map(cautionWords),
    notLaidOut: years.not.map(({ variety, why }) => ({ variety: variety.name, why })),
  };
}
