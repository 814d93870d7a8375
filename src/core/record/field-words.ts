/** What the field changed and what cannot be right in its record, in words. */
import { describeFinding } from "../checks/all-checks.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import { severityWord } from "../checks/wording.ts";
import { type DayNumber, longDate } from "../model/day.ts";
import { plotRecords, wholeOf } from "./as-grown.ts";
import { fieldChanges } from "./field-changes.ts";
import type { CoverStay } from "./plot-record.ts";
import { doubtWords, recordDoubts } from "./record-doubts.ts";

/** Lines for a report: new findings first, then what is settled, then doubtful entries. */
export function fieldChangeLines(
  planned: CheckedLayout,
  grown: CheckedLayout,
  on: DayNumber,
): readonly string[] {
  const { worse, gone } = fieldChanges(planned, grown);
  const entries = planned.plan.entries.filter((entry) => entry.on <= on).length;
  const doubts = recordDoubts(planned.plan, on);
  const { nameOf } = wordingOf(planned);
  return [
    `As grown on ${longDate(on)}, by ${entries === 1 ? "1 entry" : `${entries} entries`} of the field record.`,
    ...worse.map((finding) => {
      const { title } = describeFinding(finding, wordingOf(grown));
      return `New: ${severityWord[finding.severity]}: ${title}`;
    }),
    ...gone.map((finding) => `Settled: ${describeFinding(finding, wordingOf(planned)).title}`),
    ...coversNotCounted(planned, grown, on),
    ...doubts.map(({ entry, doubt }) => {
      return `In doubt: ${nameOf(entry.of)}, ${entry.what} on ${longDate(entry.on)}: ${doubtWords[doubt]}`;
    }),
  ];
}

/** Covers that were up, but not on every day of the bloom. */
function coversNotCounted(
  planned: CheckedLayout,
  grown: CheckedLayout,
  on: DayNumber,
): readonly string[] {
  const { nameOf } = wordingOf(planned);
  return [...plotRecords(planned.plan, on)].flatMap(([id, { covers }]) => {
    const stand = grown.result.standById.get(id);
    const bloom = wholeOf(stand?.bloom ?? null);
    if (covers.length === 0 || !stand || stand.cover !== "none" || !bloom) return [];
    const stays = covers.map(stayWords).join(", ");
    const open = `${longDate(bloom.first)} to ${longDate(bloom.last)}`;
    return [`Cover not counted: ${nameOf(id)}, ${stays}; it may flower ${open}`];
  });
}

function stayWords({ cover, first, last }: CoverStay): string {
  return last === null
    ? `${cover} since ${longDate(first)}`
    : `${cover} ${longDate(first)} to ${longDate(last)}`;
}
