/** What the field changed: findings as grown that the plan did not have, or had milder. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Finding } from "../checks/all-checks.ts";

export interface FieldChanges {
  /** New, or more severe than planned; in the order of the findings as grown. */
  readonly worse: readonly Finding[];
  /** Planned findings that are gone. */
  readonly gone: readonly Finding[];
}

const RANK: Readonly<Record<Finding["severity"], number>> = { caution: 0, unknown: 1, conflict: 2 };

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
