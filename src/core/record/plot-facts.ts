/**
 * What stands at a place, for whoever stands before it: what it is, how many, since when, what was
 * seen of it and what is only predicted, and the worst that the checks say of it.
 */
import type { Bloom } from "../calendar/bloom-window.ts";
import { describeFinding } from "../checks/all-checks.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import type { Severity } from "../checks/finding.ts";
import type { Kind } from "../kinds/crop.ts";
import type { DayNumber } from "../model/day.ts";
import { isStanding } from "../model/layouts.ts";
import type { Plan } from "../model/plan.ts";
import { type PlotRecord, plotRecord } from "./plot-record.ts";
import { currentEntries, entriesUntil } from "./current-entries.ts";

export interface PlotFacts {
  readonly id: string;
  /** Code of the plot, or the name of what lies outside. */
  readonly code: string;
  /** Null: not known, or no pollen source. */
  readonly variety: string | null;
  readonly kind: Kind | null;
  readonly isOurs: boolean;
  /** Seed is kept of it: nobody may pick it. */
  readonly isForSeed: boolean;
  /** Plants that stand as written; as planned where nothing is written; null: not counted. */
  readonly plants: number | null;
  readonly rows: number | null;
  /** Null: no day is known. */
  readonly start: {
    readonly method: "sown" | "transplanted";
    readonly on: DayNumber;
    readonly isSeen: boolean;
  } | null;
  /** It stood over winter: nothing of it is to be sown or set out. */
  readonly isStanding: boolean;
  readonly flowers: boolean;
  /** As grown. */
  readonly bloom: Bloom | null;
  /** Nobody said when: its dates stand for the whole season. */
  readonly isAllSeason: boolean;
  readonly record: PlotRecord;
  readonly worst: { readonly severity: Severity; readonly title: string } | null;
  /** Titles of the conflicts it is in, the worst one first. */
  readonly conflicts: readonly string[];
}

/**
 * @param grown the layout as grown on that day
 * @param id of a planting or surrounding; of anything else there are no facts
 */
export function plotFacts(grown: CheckedLayout, id: string, on: DayNumber): PlotFacts | null {
  const { plan, layout, result, book } = grown;
  const planting = layout.plantings.find((each) => each.id === id) ?? null;
  const surrounding = plan.surroundings.find((each) => each.id === id) ?? null;
  if (!planting && !surrounding) return null;
  const stand = result.standById.get(id);
  const variety = plan.varieties.find((each) => each.id === planting?.variety);
  const record = plotRecord(entriesUntil(currentEntries(plan.entries), id, on));
  const start = planting?.start;
  return {
    id,
    code: planting?.code ?? surrounding?.label ?? "",
    variety: variety?.name ?? surrounding?.varietyName ?? null,
    kind: stand?.kind ?? book.kind(variety?.kind ?? surrounding?.kind ?? "") ?? null,
    isOurs: planting !== null,
    isForSeed: planting?.purpose === "seed" && variety?.hybrid !== true,
    plants: planting?.plants ?? null,
    rows: planting?.rows ?? null,
    start: start ? { method: start.method, on: start.date, isSeen: isSeenStart(record) } : null,
    isStanding: planting !== null && isStanding(planting),
    flowers: stand?.shedsPollen ?? false,
    bloom: stand?.bloom ?? null,
    isAllSeason: isAllSeason(stand?.bloom ?? null, plan),
    record,
    worst: worstOf(grown, id),
    conflicts: conflictsOf(grown, id),
  };
}

function conflictsOf(grown: CheckedLayout, id: string): readonly string[] {
  const wording = wordingOf(grown);
  return grown.result.findings
    .filter(({ severity, subjects }) => severity === "conflict" && subjects.includes(id))
    .map((finding) => describeFinding(finding, wording).title);
}

function isAllSeason(bloom: Bloom | null, { season }: Pick<Plan, "season">): boolean {
  if (!bloom) return false;
  return bloom.outer.first <= season.first && bloom.outer.last >= season.last;
}

function isSeenStart({ sownOn, setOutOn }: PlotRecord): boolean {
  return sownOn !== null || setOutOn !== null;
}

/** The first finding about it: they come conflicts first. */
function worstOf(grown: CheckedLayout, id: string): PlotFacts["worst"] {
  const finding = grown.result.findings.find(({ subjects }) => subjects.includes(id));
  if (!finding) return null;
  return {
    severity: finding.severity,
    title: describeFinding(finding, wordingOf(grown)).title,
  };
}
