/** What nobody wrote down of a seed planting and of what could have crossed with it, in sentences. */
import { basisWord } from "../calendar/basis-words.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import type { Stand } from "../checks/stand.ts";
import { type DayNumber, longDate } from "../model/day.ts";
import { LIMITS } from "../model/limits.ts";
import { wholeOf } from "./as-grown.ts";
import type { PlotRecord } from "./plot-record.ts";

/**
 * @param pairs of the planting with its sources
 * @param records by id, of what has entries
 */
export function notObserved(
  grown: CheckedLayout,
  parent: Stand,
  pairs: readonly IsolationPair[],
  records: ReadonlyMap<string, PlotRecord>,
): readonly string[] {
  const { nameOf } = wordingOf(grown);
  const of = (stand: Stand) => ofOne(stand, nameOf(stand.id), records.get(stand.id), grown.grownOn);
  const sources = pairs.flatMap(({ pollenSource }) => {
    const source = grown.result.standById.get(pollenSource);
    return source ? of(source) : [];
  });
  const record = records.get(parent.id);
  const isInsects = parent.carrier !== "wind" && parent.kind.breeding === "outcrossing";
  const wasCovered = (record?.covers.length ?? 0) > 0;
  const pollinators =
    wasCovered && isInsects && (record?.pollinatorsIn ?? null) === null
      ? [`${nameOf(parent.id)}: nobody wrote that pollinators were let in under its cover.`]
      : [];
  const isRogued = record?.entries.some(({ what }) => what === "rogued") === true;
  const rogued = isRogued ? [] : [`${nameOf(parent.id)}: nobody wrote that it was rogued.`];
  return [...of(parent), ...pollinators, ...rogued, ...sources].map((text) =>
    text.slice(0, LIMITS.note),
  );
}

function ofOne(
  stand: Stand,
  name: string,
  record: PlotRecord | undefined,
  on: DayNumber | undefined,
): readonly string[] {
  const { bloom } = stand;
  const whole = wholeOf(bloom);
  if (!record || record.entries.length === 0) {
    return [`${name}: nothing was written of it${forecastWords(stand)}.`];
  }
  if (!bloom || !whole) return [`${name}: when it flowered is not known.`];
  const first =
    record.firstFlower === null
      ? [
          `${name}: its first flower was not seen; taken as from ${longDate(whole.first)}, ${basisWord[bloom.opens]}.`,
        ]
      : [];
  // What nobody saw to end is taken to go on, whatever its forecast rested on.
  const why = whole.last === on ? "the day it was judged on" : basisWord[bloom.closes];
  const last =
    record.lastFlower === null
      ? [`${name}: its last flower was not seen; taken as until ${longDate(whole.last)}, ${why}.`]
      : [];
  return [...first, ...last];
}

function forecastWords({ bloom }: Stand): string {
  const whole = wholeOf(bloom);
  if (!bloom || !whole) return ", and when it flowered is not known";
  return `; its bloom is taken as ${longDate(whole.first)} to ${longDate(whole.last)}, by forecast`;
}
