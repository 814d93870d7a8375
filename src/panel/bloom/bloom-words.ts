/** What the bloom strip says: its edge, its rows for those who do not see the bars, a late spring. */
import type { Basis } from "../../core/calendar/basis.ts";
import { noBloomWords } from "../../core/calendar/no-bloom-words.ts";
import { type DayWindow, type Counted } from "../../core/calendar/bloom-window.ts";
import { shortDate } from "../../core/model/day.ts";
import { formOf } from "../../core/words/plurals.ts";
import type { BloomRow, UndatedRow } from "./bloom-rows.ts";
import type { SpringTest } from "./late-spring.ts";

export const basisNames: Readonly<Record<Basis, string>> = {
  seen: "seen",
  own: "own",
  published: "published",
  "planned end": "planned end",
  "rule of thumb": "rule of thumb",
};

const countedNames: Readonly<Record<Counted, string>> = {
  "own dates": "own dates",
  days: "days",
  heat: "heat",
};

const inFlower = (days: string) => `in flower ${days}`;
const inFlowerAtMost = (likely: string, outer: string) => `in flower ${likely}, at most ${outer}`;
const countedIn = (start: string, counted: string) => `${start}, counted in ${counted}`;
const flowersOn = "flowers on until something ends it";
const restsOn = (basis: string) => `rests on: ${basis}`;
const openWithConflict = (days: string) => `open together with a conflicting stand ${days}`;
const inOtherConflict = (days: string) => `in another conflict ${days}`;
const spanWords = (first: string, last: string) => `${first} to ${last}`;

/** `no bloom dates`, and why none are told. */
export function undatedWords({ why }: UndatedRow): string {
  return why === "no-start" ? "no bloom dates" : `bloom unknown: ${noBloomWords(why)}`;
}

/** A row in words, for those who do not see the bars. */
export function bloomRowWords(row: BloomRow): string {
  const span = ({ first, last }: DayWindow) => spanWords(shortDate(first), shortDate(last));
  const isCertain = row.likely.first === row.outer.first && row.likely.last === row.outer.last;
  return [
    `${row.code} ${row.name}`,
    isCertain ? inFlower(span(row.outer)) : inFlowerAtMost(span(row.likely), span(row.outer)),
    ...(row.start === null ? [] : [countedIn(startWords(row), countedNames[row.counted])]),
    ...(row.isOpenEnded ? [flowersOn] : []),
    restsOn(basisNames[row.basis]),
    ...row.overlaps.map((window) => openWithConflict(span(window))),
    ...row.otherOverlaps.map((window) => inOtherConflict(span(window))),
  ].join(", ");
}

/** `sown 28 May`; empty for dates of its own. */
export function startWords({ start }: Pick<BloomRow, "start">): string {
  if (start === null) return "";
  const day = shortDate(start.date);
  return start.method === "sown" ? `sown ${day}` : `set out ${day}`;
}

/** `2 of 5 pairs that rest on time would fail.` */
export function springWords({ resting, lost }: SpringTest): string {
  if (resting === 0) return "No pair rests on time alone.";
  if (lost.length === 0) {
    return formOf(resting, {
      one: "The one pair that rests on time would stay clear.",
      other: `All ${resting} pairs that rest on time would stay clear.`,
    });
  }
  return formOf(resting, {
    one: "The one pair that rests on time would fail:",
    other: `${lost.length} of ${resting} pairs that rest on time would fail:`,
  });
}
