/** Counts above the findings. */
import type { Severity } from "../../core/checks/finding.ts";
import { countWord } from "../../core/words/deed-words.ts";

/** On a finding that the last change brought. */
export const NEW_MARK = "new";

/** What a screen reader hears of the button. */
export function waysOutOf(title: string): string {
  return `Ways out: ${title}`;
}

/** `Wild carrot by the road: only a rule of thumb keeps blooms apart`; without a cause the check alone. */
export function groupTitle(checkTitle: string, cause: string | null): string {
  if (cause === null) return checkTitle;
  return `${cause}: ${checkTitle.charAt(0).toLowerCase()}${checkTitle.slice(1)}`;
}

/** `Last change: 2 cleared, 1 new`; empty where it did neither. */
export function newsWords(cleared: number, fresh: number): string {
  const parts = [cleared > 0 && `${cleared} cleared`, fresh > 0 && `${fresh} new`].filter(
    (part) => part !== false,
  );
  return parts.length === 0 ? "" : `Last change: ${parts.join(", ")}`;
}

/** `2 conflicts, 1 caution, 1 unknown`; `none` when all are 0. */
export function countWords(counts: Readonly<Record<Severity, number>>): string {
  const parts = SEVERITIES.filter((severity) => counts[severity] > 0);
  if (parts.length === 0) return "none";
  return parts.map((severity) => countWord(counts[severity], severity)).join(", ");
}

const SEVERITIES = ["conflict", "caution", "unknown"] as const;
