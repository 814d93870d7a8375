/**
 * Days between blooms: how fragile isolation in time is, what a late spring would undo, on what
 * the days between rest, and all of it in words.
 */
import { basisWord } from "../calendar/basis-words.ts";
import { shortDate } from "../model/day.ts";
import type { IsolationPair, TimeClear } from "./isolation-pair.ts";
import { type Wording, listed } from "./wording.ts";
import { counted } from "../words/plurals.ts";

/** Days by which the gap of a pair resting on time exceeds what is wanted; null for other pairs. */
export function timeSlackDays(pair: IsolationPair): number | null {
  if (pair.standing !== "time" || pair.gapDays === null) return null;
  return pair.gapDays - pair.guardDays;
}

/**
 * Pairs resting on time that would no longer be clear if one of the two bloomed up to `shiftDays`
 * nearer the other than predicted: the least slack first.
 */
export function pairsLostToShift(
  pairs: readonly IsolationPair[],
  shiftDays: number,
): readonly IsolationPair[] {
  return pairs
    .flatMap((pair) => {
      const slack = timeSlackDays(pair);
      return slack !== null && slack < shiftDays ? [{ pair, slack }] : [];
    })
    .sort((a, b) => a.slack - b.slack)
    .map(({ pair }) => pair);
}

/** `1 day`, `12 days`. */
export function days(count: number): string {
  return counted(count, { one: "day", other: "days" });
}

/** How much later or earlier a pair resting on time may bloom before it is no longer clear. */
export function slackWords(pair: IsolationPair): string {
  const slack = timeSlackDays(pair) ?? 0;
  return slack === 0 ? "no slack" : `${days(slack)} of slack`;
}

/** Days open together and their share of the days on which the seed parent takes pollen. */
export function togetherWords(pair: IsolationPair): string {
  const { overlapDays, gapDays, guardDays, exposedShare } = pair;
  if (!overlapDays) return `in bloom ${days(gapDays ?? 0)} apart, ${days(guardDays)} wanted`;
  const share = Math.max(1, Math.round((exposedShare ?? 0) * 100));
  return `open together ${days(overlapDays)}, ${share} % of the time it takes pollen`;
}

type NameOf = (id: string) => string;

/** On what the days between rest: `the end of B01 and the start of B02 rest on a rule of thumb`. */
export function restsWords(time: TimeClear, nameOf: NameOf): string {
  const [end, start] = [`the end of ${nameOf(time.earlier)}`, `the start of ${nameOf(time.later)}`];
  const unlike = time.isCountedUnlike ? "; one is counted in heat, the other in days" : "";
  if (time.closes === time.opens)
    return `${end} and ${start} rest on ${basisWord[time.closes]}${unlike}`;
  return `${end} rests on ${basisWord[time.closes]}, ${start} on ${basisWord[time.opens]}${unlike}`;
}

/** `B01 must be over by 12 Jun and B02 not open before 20 Jun`. */
export function safeDaysWords(time: TimeClear, nameOf: NameOf): string {
  return `${nameOf(time.earlier)} must be over by ${shortDate(time.lastDay)} and ${nameOf(time.later)} not open before ${shortDate(time.firstDay)}`;
}

/**
 * What to look at in the field: `Watch both: ...`. What is not ours, a neighbour's or a wild
 * stand, is asked after or gone to see.
 */
export function watchWords(times: readonly TimeClear[], { nameOf, standOf }: Wording): string {
  const [first] = times;
  if (!first) return "";
  const ids = [first.earlier, first.later];
  const ours = ids.filter((id) => !standOf(id)?.surrounding);
  const others = ids.filter((id) => standOf(id)?.surrounding);
  const holds = [...new Set(times.map((time) => safeDaysWords(time, nameOf)))];
  const watch =
    others.length === 0
      ? "Watch both"
      : `Watch ${ours.map(nameOf).join(" and ")} and ask after ${others.map(nameOf).join(" and ")}, or go and look`;
  return `${watch}: ${holds.join("; the other way ")}`;
}

/** What to do when a pair on unsure dates does not keep them; only what is ours can be dealt with. */
export function ifNotWords(pairs: readonly IsolationPair[], { nameOf, standOf }: Wording): string {
  const parents = [...new Set(pairs.map(({ seedParent }) => nameOf(seedParent)))];
  const sources = [...new Set(pairs.map(({ pollenSource }) => pollenSource))];
  const isOthers = sources.some((id) => standOf(id)?.surrounding);
  const which = isOthers ? listed(parents) : "one of the two";
  return `cover or cut ${which} before both are open, or give up the seed of ${parents.join(" and ")}`;
}
