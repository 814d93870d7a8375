/** Pairs that time alone clears, on days that a rule of thumb gives: clear, but to be watched. */
import type { Check } from "./check.ts";
import { type FindingBase, compareText } from "./finding.ts";
import { findingsByPair, patchByPair } from "./isolation-findings.ts";
import type { IsolationPair, TimeClear } from "./isolation-pair.ts";
import { days, ifNotWords, restsWords, watchWords } from "./day-words.ts";
import { measureSentence } from "./isolation-words.ts";
import { pairBrief } from "./pair-words.ts";
import type { Description, Wording } from "./wording.ts";

/** Time alone keeps two stands apart, and the days between rest on a rule of thumb. */
export interface UnsureTimeFinding extends FindingBase {
  readonly check: "unsure-time";
  /** The directions that rest on it, one or two, each with its `time`. */
  readonly resting: readonly IsolationPair[];
}

const isUnsure = ({ time }: IsolationPair) => time !== null && !time.isSure;

export const unsureTimeCheck: Check<UnsureTimeFinding> = {
  name: "unsure-time",
  title: "Only a rule of thumb keeps blooms apart",
  run: (input) => findingsByPair("unsure-time", input, isUnsure, unsureTimeFinding),
  patch: (input) => patchByPair("unsure-time", input, isUnsure, unsureTimeFinding),
  describe: ({ resting }, wording) => describeUnsureTime(resting, wording),
  brief: (finding, wording) => pairBrief(finding.resting[0] as IsolationPair, finding, wording),
  hasWaysOut: false,
};

function unsureTimeFinding(id: string, found: readonly IsolationPair[]): UnsureTimeFinding {
  const resting = [...found].sort((a, b) => compareText(a.seedParent, b.seedParent));
  const [nearest] = [...resting].sort((a, b) => (a.gapDays ?? 0) - (b.gapDays ?? 0));
  const shown = nearest as IsolationPair;
  return {
    id,
    check: "unsure-time",
    severity: "caution",
    subjects: [shown.seedParent, shown.pollenSource].sort(compareText),
    measuredM: shown.distanceM,
    ...(shown.requiredM === null ? {} : { requiredM: shown.requiredM }),
    where: shown.where,
    resting,
  };
}

/** @param resting the directions that rest on time, one or two */
function describeUnsureTime(resting: readonly IsolationPair[], wording: Wording): Description {
  const { nameOf } = wording;
  const [first] = resting;
  const time = first?.time;
  if (!first || !time) return { title: "", sentences: [] };
  const times = resting.flatMap((pair) => pair.time ?? []);
  return {
    title: `${nameOf(time.later)} and ${nameOf(time.earlier)} are kept apart by unchecked dates alone`,
    sentences: [
      measureSentence(first, wording),
      `By the dates reckoned ${days(first.gapDays ?? 0)} lie between their blooms and ${days(first.guardDays)} are wanted, but ${restsWords(time, nameOf)}.`,
      `${watchWords(times, wording)}. If not: ${ifNotWords(resting, wording)}.`,
      ...toBeSure(times, nameOf),
    ],
  };
}

/** What would carry it: dates, or the record of a clearing that is only planned. */
function toBeSure(times: readonly TimeClear[], nameOf: (id: string) => string): readonly string[] {
  const cleared = times.find(({ closes }) => closes === "planned end");
  const isThumb = times.some(
    ({ closes, opens, isCountedUnlike }) =>
      closes === "rule of thumb" || opens === "rule of thumb" || isCountedUnlike,
  );
  return [
    ...(cleared
      ? [
          `Clear ${nameOf(cleared.earlier)} in time and write it down: as grown the plan then rests on it.`,
        ]
      : []),
    ...(isThumb
      ? [
          "Type the bloom dates or the variety's own days to flower and of bloom, and they carry it.",
        ]
      : []),
  ];
}
