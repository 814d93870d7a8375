/**
 * Which earlier saved copies of a plan stay. Written down here and nowhere else:
 *
 * - the newest 20;
 * - the newest of each day, for the 30 latest days something was saved on;
 * - for the 10 latest openings of a plan from outside: the copy opened and the one it covered.
 *
 * When the storage is full, only the newest 3, those of 7 days and the latest opening stay. The
 * newest copy always stays. Copies are ordered by revision, never by the clock, which may jump; a
 * day is the calendar day (UTC) written in the copy, so nothing here depends on today's date.
 */

/** How a copy came to be: by an edit, or by opening a plan from outside over the stored one. */
export type Origin = "edit" | "opened";

export interface KeptCopy {
  readonly revision: number;
  /** ISO 8601 date and time. */
  readonly savedAt: string;
  readonly origin: Origin;
}

export interface KeepingRule {
  readonly newest: number;
  readonly days: number;
  readonly openings: number;
}

export const KEEPING_RULE: KeepingRule = { newest: 20, days: 30, openings: 10 };
export const FULL_STORAGE_RULE: KeepingRule = { newest: 3, days: 7, openings: 1 };

/** Revisions the rule lets go, oldest first. */
export function surplusCopies(copies: readonly KeptCopy[], rule: KeepingRule): readonly number[] {
  const newestFirst = [...copies].sort((a, b) => b.revision - a.revision);
  const kept = new Set(newestFirst.slice(0, Math.max(1, rule.newest)).map((copy) => copy.revision));
  const days = new Set<string>();
  let openings = 0;
  newestFirst.forEach((copy, index) => {
    const day = copy.savedAt.slice(0, 10);
    if (!days.has(day) && days.size < rule.days) {
      days.add(day);
      kept.add(copy.revision);
    }
    if (copy.origin === "opened" && openings < rule.openings) {
      openings += 1;
      for (const pair of newestFirst.slice(index, index + 2)) kept.add(pair.revision);
    }
  });
  return newestFirst
    .map((copy) => copy.revision)
    .filter((revision) => !kept.has(revision))
    .reverse();
}
