/** Rows of the bloom strip: who flowers when, and where windows of a conflict lie over each other. */
import type { Basis } from "../../core/calendar/basis.ts";
import { type Counted, type DayWindow, bloomBasis } from "../../core/calendar/bloom-window.ts";
import type { WhyNoBloom } from "../../core/calendar/no-bloom-words.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { Stand } from "../../core/checks/stand.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { Planting } from "../../core/model/plan.ts";
import { keptOf } from "../../core/checks/carried-run.ts";
import { touchingPairs } from "../../core/nearness/touching-pairs.ts";

export interface BloomRow {
  readonly id: string;
  /** Code of the planting, or label of the surrounding. */
  readonly code: string;
  readonly name: string;
  readonly group: string;
  /** Start the bloom is counted from; null: it has dates of its own and no start moves it. */
  readonly start: NonNullable<Planting["start"]> | null;
  readonly counted: Counted;
  /** On what the window rests. */
  readonly basis: Basis;
  /** Whether only frost, cutting or the end of the season ends it. */
  readonly isOpenEnded: boolean;
  readonly likely: DayWindow;
  readonly outer: DayWindow;
  /** Days open together with a stand it is in conflict with. */
  readonly overlaps: readonly DayWindow[];
  /** The same for conflicts of others than the selected: shown with less ink, never left out. */
  readonly otherOverlaps: readonly DayWindow[];
  readonly isSelected: boolean;
}

export interface BloomStripRows {
  readonly rows: readonly BloomRow[];
  /** Stands that will flower but have no dates. */
  readonly undated: readonly UndatedRow[];
}

export interface UndatedRow {
  readonly id: string;
  readonly code: string;
  readonly name: string;
  readonly group: string;
  readonly why: WhyNoBloom;
}

/**
 * Rows in order of first flower. Overlaps are those with the selected stands, the others apart;
 * with nothing in bloom selected, those of every conflict.
 */
export function bloomRows(result: CheckResult, selection: readonly string[]): BloomStripRows {
  const selected = new Set(selection);
  const flowering = result.stands.filter((stand) => stand.shedsPollen);
  const isAnySelected = flowering.some((stand) => selected.has(stand.id));
  const isAsked = (a: string, b: string) => !isAnySelected || selected.has(a) || selected.has(b);
  const rows = flowering.flatMap((stand): readonly BloomRow[] =>
    stand.bloom === null
      ? []
      : [new StandRow(stand, stand.bloom, selected.has(stand.id), { result, isAsked })],
  );
  return {
    rows: rows.sort(
      (a, b) =>
        a.likely.first - b.likely.first ||
        a.outer.first - b.outer.first ||
        (a.code < b.code ? -1 : 1),
    ),
    undated: flowering
      .filter((stand) => stand.bloom === null)
      .map((stand) => ({
        id: stand.id,
        code: codeOf(stand),
        name: nameOf(stand),
        group: stand.kind.group,
        why: stand.whyNoBloom ?? "no-start",
      })),
  };
}

function nameOf({ variety, kind }: Stand): string {
  return variety?.name ?? kind.name;
}

/** What the overlaps of a row are looked for in. */
interface Conflicts {
  readonly result: CheckResult;
  /** Whether overlaps of these two are those asked for. */
  readonly isAsked: (a: string, b: string) => boolean;
}

/** Of a large field few rows are in sight: what others hold is looked for when it is read. */
class StandRow implements BloomRow {
  readonly isSelected: boolean;
  private readonly stand: Stand;
  private readonly bloom: NonNullable<Stand["bloom"]>;
  private readonly conflicts: Conflicts;
  private found: ConflictOverlaps | null = null;

  constructor(
    stand: Stand,
    bloom: NonNullable<Stand["bloom"]>,
    isSelected: boolean,
    conflicts: Conflicts,
  ) {
    this.stand = stand;
    this.bloom = bloom;
    this.isSelected = isSelected;
    this.conflicts = conflicts;
  }

  get id() {
    return this.stand.id;
  }
  get code() {
    return codeOf(this.stand);
  }
  get name() {
    return nameOf(this.stand);
  }
  get group() {
    return this.stand.kind.group;
  }
  get start() {
    const { planting } = this.stand;
    return planting?.bloom ? null : (planting?.start ?? null);
  }
  get counted() {
    return this.bloom.counted;
  }
  get basis() {
    return bloomBasis(this.bloom);
  }
  get isOpenEnded() {
    return this.bloom.isOpenEnded === true;
  }
  get likely() {
    return this.bloom.likely;
  }
  get outer() {
    return this.bloom.outer;
  }
  get overlaps() {
    return this.overlapping.asked;
  }
  get otherOverlaps() {
    return this.overlapping.others;
  }

  private get overlapping(): ConflictOverlaps {
    const { result, isAsked } = this.conflicts;
    return (this.found ??= conflictOverlaps(result, this.stand.id, isAsked));
  }
}

function codeOf(stand: Stand): string {
  return stand.planting?.code ?? stand.surrounding?.label ?? stand.id;
}

interface ConflictOverlaps {
  readonly asked: readonly DayWindow[];
  readonly others: readonly DayWindow[];
}

/** Days on which a stand is open together with one it is in conflict with. */
function conflictOverlaps(
  result: CheckResult,
  id: string,
  isAsked: (a: string, b: string) => boolean,
): ConflictOverlaps {
  const { standById } = result;
  const asked: DayWindow[] = [];
  const others: DayWindow[] = [];
  for (const pair of touchingPairs(keptOf(result), new Set([id]))) {
    const { seedParent, pollenSource, standing } = pair;
    if (standing !== "conflict") continue;
    const a = standById.get(seedParent)?.receives?.outer;
    const b = standById.get(pollenSource)?.sheds?.outer;
    if (!a || !b) continue;
    const shared = { first: Math.max(a.first, b.first), last: Math.min(a.last, b.last) };
    if (shared.first > shared.last) continue;
    (isAsked(seedParent, pollenSource) ? asked : others).push(shared);
  }
  return { asked: joined(asked), others: joined(others) };
}

/** Windows that touch or overlap become one; in order. */
function joined(windows: readonly DayWindow[]): DayWindow[] {
  const result: DayWindow[] = [];
  for (const window of [...windows].sort((a, b) => a.first - b.first)) {
    const before = result.at(-1);
    if (before && window.first <= before.last + 1) {
      result[result.length - 1] = { first: before.first, last: Math.max(before.last, window.last) };
    } else {
      result.push(window);
    }
  }
  return result;
}

/** The first day after a given one on which some row opens or ends; null when there is none. */
export function nextChange(rows: readonly BloomRow[], day: DayNumber): DayNumber | null {
  const later = rows
    .flatMap(({ outer }) => [outer.first, outer.last + 1])
    .filter((change) => change > day);
  return later.length === 0 ? null : Math.min(...later);
}

/** How many rows have a flower open on a day, by their outer windows. */
export function openOn(rows: readonly BloomRow[], day: DayNumber): number {
  return rows.filter((row) => row.outer.first <= day && day <= row.outer.last).length;
}
