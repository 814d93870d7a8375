/** What the field changed and what cannot be right in its record, in words. */
import { describeFinding } from "../checks/all-checks.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import { severityWord } from "../checks/wording.ts";
import { type DayNumber, longDate } from "../model/day.ts";
import type { Plan } from "../model/plan.ts";
import { plotRecords, wholeOf } from "./as-grown.ts";
import { fieldChanges, standingSince } from "./field-changes.ts";
import type { CoverStay } from "./plot-record.ts";
import { recordDoubts } from "./record-doubts.ts";
import { doubtWords } from "./doubt-words.ts";
import { counted } from "../words/plurals.ts";

/**
 * Lines for a report: new findings first, then what is settled, then doubtful entries.
 *
 * @param today entries after it, and after the day judged on, are of the future
 */
export function fieldChangeLines(
  planned: CheckedLayout,
  grown: CheckedLayout,
  on: DayNumber,
  today = on,
): readonly string[] {
  const { worse, gone } = fieldChanges(planned, grown);
  const since = standingSince(planned, grown, worse, on);
  return [
    `${asGrownWords(planned.plan, on)}.`,
    ...worse.map((finding) => {
      const { title } = describeFinding(finding, wordingOf(grown));
      const words = `${severityWord[finding.severity]}: ${title}`;
      return `New since ${longDate(since.get(finding.id) ?? on)}: ${words}`;
    }),
    ...gone.map((finding) => `Settled: ${describeFinding(finding, wordingOf(planned)).title}`),
    ...coversNotCounted(planned, grown, on).map((words) => `Cover not counted: ${words}`),
    ...doubtLines(planned, Math.max(on, today)).map((words) => `In doubt: ${words}`),
  ];
}

/** `As grown on 6 Jul 2027, by 9 entries of the field record`. */
export function asGrownWords({ entries }: Pick<Plan, "entries">, on: DayNumber): string {
  const count = entries.filter((entry) => entry.on <= on).length;
  return `As grown on ${longDate(on)}, by ${counted(count, { one: "entry", other: "entries" })} of the field record`;
}

/** Entries that cannot be right, each with why. @param today entries after it are of the future */
export function doubtLines(planned: CheckedLayout, today: DayNumber): readonly string[] {
  const { nameOf } = wordingOf(planned);
  return recordDoubts(planned.plan, today).map(
    ({ entry, doubt }) =>
      `${nameOf(entry.of)}, ${entry.what} on ${longDate(entry.on)}: ${doubtWords[doubt]}`,
  );
}

/** Covers that were up, but not on every day of the bloom. */
export function coversNotCounted(
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
    return [`${nameOf(id)}, ${stays}; it may flower ${open}`];
  });
}

function stayWords({ cover, first, last }: CoverStay): string {
  return last === null
    ? `${cover} since ${longDate(first)}`
    : `${cover} ${longDate(first)} to ${longDate(last)}`;
}

/** Of a pollen source found on a walk. */
export const foundWords = {
  inFlower: "found in flower",
  sure: (date: string) =>
    `Found in flower ${date}; bloom dates stand for the whole season until it is known.`,
  unsure: (date: string, metres: number) =>
    `Found in flower ${date}; placed by phone to ${metres} m and drawn so large; bloom dates stand for the whole season until it is known.`,
} as const;
