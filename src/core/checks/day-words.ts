/** Days between blooms in words. */
import type { IsolationPair } from "./isolation-pair.ts";
import { timeSlackDays } from "./time-slack.ts";

/** `1 day`, `12 days`. */
export function days(count: number): string {
  return count === 1 ? "1 day" : `${count} days`;
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
