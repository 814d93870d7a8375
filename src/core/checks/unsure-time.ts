/** Pairs that time alone clears, on days that a rule of thumb gives: clear, but to be watched. */
import type { Check } from "./check.ts";
import { type FindingBase, compareText } from "./finding.ts";
import { type PairsTold, findingsByPair, patchByPair } from "./isolation-findings.ts";
import type { IsolationPair, TimeClear } from "./isolation-pair.ts";
import { days, ifNotWords, restsWords, watchWords } from "./day-words.ts";
import { measureSentence } from "./isolation-words.ts";
import { pairBrief } from "./pair-words.ts";
import type { Description, Wording } from "./wording.ts";
import * as words from "../words/finding-words.ts";

/** Time alone keeps two stands apart, and the days between rest on a rule of thumb. */
export interface UnsureTimeFinding extends FindingBase {
  readonly check: "unsure-time";
  /** The directions that rest on it, one or two, each with its `time`. */
  readonly resting: readonly IsolationPair[];
}

const unsure: PairsTold = {
  standing: "time",
  counts: ({ time }) => time !== null && !time.isSure,
};

export const unsureTimeCheck: Check<UnsureTimeFinding> = {
  name: "unsure-time",
  title: words.unsure,
  run: (input) => findingsByPair("unsure-time", input, unsure, unsureTimeFinding),
  patch: (input) => patchByPair("unsure-time", input, unsure, unsureTimeFinding),
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
    title: words.unsureTitle(nameOf(time.later), nameOf(time.earlier)),
    sentences: [
      measureSentence(first, wording),
      words.between(days(first.gapDays ?? 0), days(first.guardDays), restsWords(time, nameOf)),
      words.watchElse(watchWords(times, wording), ifNotWords(resting, wording)),
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
    ...(cleared ? [words.clearInTime(nameOf(cleared.earlier))] : []),
    ...(isThumb ? [words.typeDates] : []),
  ];
}
