/** What unsure dates ask of one planting: for the card of its bed. */
import type { IsolationPair } from "../checks/isolation-pair.ts";
import type { DayNumber } from "../model/day.ts";

/** The days a planting itself must keep for the pairs that only unsure dates clear. */
export interface DaysToKeep {
  /** It must be over by this day, for these others; null: nothing follows it. */
  readonly overBy: { readonly day: DayNumber; readonly others: readonly string[] } | null;
  /** It must not open before this day. */
  readonly notBefore: { readonly day: DayNumber; readonly others: readonly string[] } | null;
}

/** The strictest days of one planting over all the pairs that rest on unsure dates. */
export function daysToKeep(id: string, pairs: readonly IsolationPair[]): DaysToKeep {
  const times = pairs.flatMap(({ time }) => (time && !time.isSure ? [time] : []));
  const before = times.filter(({ earlier }) => earlier === id);
  const after = times.filter(({ later }) => later === id);
  const others = (ids: readonly string[]) => [...new Set(ids)];
  return {
    overBy:
      before.length === 0
        ? null
        : {
            day: Math.min(...before.map(({ lastDay }) => lastDay)),
            others: others(before.map(({ later }) => later)),
          },
    notBefore:
      after.length === 0
        ? null
        : {
            day: Math.max(...after.map(({ firstDay }) => firstDay)),
            others: others(after.map(({ earlier }) => earlier)),
          },
  };
}
