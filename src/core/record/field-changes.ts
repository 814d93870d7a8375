/** What the field changed: findings as grown that the plan did not have, or had milder. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Finding } from "../checks/all-checks.ts";
import type { DayNumber } from "../model/day.ts";
import type { Plan } from "../model/plan.ts";
import { checkAsGrown } from "./as-grown.ts";
import { currentEntries } from "./current-entries.ts";

export interface FieldChanges {
  /** New, or more severe than planned; in the order of the findings as grown. */
  readonly worse: readonly Finding[];
  /** Planned findings that are gone. */
  readonly gone: readonly Finding[];
}

const RANK: Readonly<Record<Finding["severity"], number>> = { caution: 0, unknown: 1, conflict: 2 };

/** Days of entries looked back through: what is older than that is new since the first of them. */
const DAYS_BACK = 40;

/** Compares two readings of one layout: as planned and as grown. */
export function fieldChanges(planned: CheckedLayout, grown: CheckedLayout): FieldChanges {
  const before = new Map(planned.result.findings.map((finding) => [finding.id, finding]));
  const after = new Set(grown.result.findings.map(({ id }) => id));
  return {
    worse: grown.result.findings.filter(({ id, severity }) => {
      const other = before.get(id);
      return other === undefined || RANK[severity] > RANK[other.severity];
    }),
    gone: planned.result.findings.filter(({ id }) => !after.has(id)),
  };
}

/**
 * Since when each new finding has stood without a break, by id: the day of the entry that brought
 * it, or the day judged on where only the passing of days did.
 *
 * @param worse new findings as grown on `on`
 */
export function standingSince(
  planned: CheckedLayout,
  grown: CheckedLayout,
  worse: readonly Finding[],
  on: DayNumber,
): ReadonlyMap<string, DayNumber> {
  const since = new Map(worse.map(({ id }) => [id, on]));
  const open = new Set(since.keys());
  let before = grown.result;
  for (const day of entryDays(planned.plan, on)) {
    if (open.size === 0) break;
    const then = checkAsGrown(planned.plan, planned.layout.id, day, before);
    before = then.result;
    const stood = new Set(fieldChanges(planned, then).worse.map(({ id }) => id));
    for (const id of open) {
      if (stood.has(id)) since.set(id, day);
      else open.delete(id);
    }
  }
  return since;
}

/** Days on which something was written, up to a day, the latest first. */
function entryDays({ entries }: Plan, on: DayNumber): readonly DayNumber[] {
  const days = new Set(currentEntries(entries).map((entry) => entry.on));
  return [...days]
    .filter((day) => day <= on)
    .sort((a, b) => b - a)
    .slice(0, DAYS_BACK);
}
