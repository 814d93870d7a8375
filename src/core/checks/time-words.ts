/** Isolation that rests on time, in words: on what, and until when it holds. */
import { noBloomWords } from "../calendar/no-bloom.ts";
import { days } from "./day-words.ts";
import type { IsolationPair } from "./isolation-pair.ts";
import { measureSentence } from "./isolation-words.ts";
import type { Stand } from "./stand.ts";
import { restsWords, safeDaysWords } from "./time-rests.ts";
import type { Description, Wording } from "./wording.ts";

type NameOf = (id: string) => string;

/** What to do in the field when a pair on unsure dates does not keep them. */
export function ifNotWords(pairs: readonly IsolationPair[], nameOf: NameOf): string {
  const parents = [...new Set(pairs.map(({ seedParent }) => nameOf(seedParent)))].join(" and ");
  return `cover or cut one of the two before both are open, or give up the seed of ${parents}`;
}

/** @param resting the directions that rest on time, one or two */
export function describeUnsureTime(
  resting: readonly IsolationPair[],
  wording: Wording,
): Description {
  const { nameOf } = wording;
  const [first] = resting;
  const time = first?.time;
  if (!first || !time) return { title: "", sentences: [] };
  const holds = resting.flatMap((pair) => (pair.time ? [safeDaysWords(pair.time, nameOf)] : []));
  return {
    title: `${nameOf(time.later)} and ${nameOf(time.earlier)} are kept apart by unchecked dates alone`,
    sentences: [
      measureSentence(first, wording),
      `By the dates reckoned ${days(first.gapDays ?? 0)} lie between their blooms and ${days(first.guardDays)} are wanted, but ${restsWords(time, nameOf)}.`,
      `Watch both: ${[...new Set(holds)].join("; the other way ")}. If not: ${ifNotWords(resting, nameOf)}.`,
      "Type the bloom dates or the variety's own days to flower and of bloom, and they carry it.",
    ],
  };
}

/** Why nothing is told of its bloom, and what would tell it. */
export function missingBloomAdvice(stand: Stand | undefined): string {
  const why = stand?.whyNoBloom ?? "no-start";
  if (why === "no-start") {
    return stand?.surrounding
      ? "Type its bloom dates."
      : "Type a sowing or planting date, or its bloom dates.";
  }
  return `${noBloomWords(why)} Type its bloom dates.`;
}
