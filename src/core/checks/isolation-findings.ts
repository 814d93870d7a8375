/** Isolation pairs to findings: one per pair of stands, and one per stand that lacks a figure or dates. */
import type { GradedLists } from "../lists/graded-lists.ts";
import type { ListPatch } from "../lists/id-pages.ts";
import type { PairColumns } from "../nearness/pair-columns.ts";
import type { ChangeInput, Check, CheckInput } from "./check.ts";
import { type FindingBase, compareText, findingId, foundLater } from "./finding.ts";
import {
  type IsolationPair,
  type PairWays,
  RARELY,
  type Standing,
  isStanding,
  lacksFigure,
  unorderedPairs,
} from "./isolation-pair.ts";
import {
  describeIsolation,
  missingBloomAdvice,
  nearnessWords,
  describeMissingFigure,
} from "./isolation-words.ts";
import { pairBrief } from "./pair-words.ts";
import { listed } from "./wording.ts";
import * as words from "../words/finding-words.ts";

/** Two stands mix: at risk one way or both. */
export interface IsolationFinding extends FindingBase {
  readonly check: "isolation";
  /** The directions at risk, one or two, worst first. */
  readonly atRisk: readonly IsolationPair[];
}

/** Which pairs make findings of a check: those that stand so, and of them those that it counts. */
export interface PairsTold {
  readonly standing: Standing;
  readonly counts: (pair: IsolationPair) => boolean;
}

/** One finding for the directed pairs of any two stands, with what is kept of the run before. */
export function findingsByPair<F extends FindingBase>(
  check: F["check"],
  { isUnchanged, previous, judged }: CheckInput<F>,
  { standing, counts }: PairsTold,
  make: (id: string, both: PairWays) => F,
): readonly F[] {
  // A pair that touches a changed stand is judged anew both ways, so what is kept is whole.
  const findings = previous.filter((finding) => finding.subjects.every(isUnchanged));
  for (const ways of judged.freshWays(standing)) {
    const both = ways.every(counts) ? ways : ways.filter(counts);
    const [pair] = both;
    if (pair) findings.push(make(idOfPair(check, pair), both));
  }
  return findings;
}

function idOfPair(check: string, { seedParent, pollenSource }: IsolationPair): string {
  return findingId(check, [seedParent, pollenSource]);
}

/** The same after a few stands changed. */
export function patchByPair<F extends FindingBase>(
  check: F["check"],
  { gonePairs, freshPairs }: ChangeInput,
  { counts }: PairsTold,
  make: (id: string, both: PairWays) => F,
): ListPatch<F> {
  const both = unorderedPairs(freshPairs.filter(counts));
  return {
    gone: gonePairs.filter(counts).map((pair) => idOfPair(check, pair)),
    found: [...both.values()].map((ways) => make(idOfPair(check, ways[0] as IsolationPair), ways)),
  };
}

const mixing: PairsTold = {
  standing: "conflict",
  counts: ({ standing }) => standing === "conflict",
};

export const isolationCheck: Check<IsolationFinding> = {
  name: "isolation",
  title: words.isolation,
  run: (input) => findingsByPair("isolation", input, mixing, isolationFinding),
  later: isolationLater,
  patch: (input) => patchByPair("isolation", input, mixing, isolationFinding),
  describe: ({ atRisk }, wording) => describeIsolation(atRisk, wording),
  brief: (finding, wording) => pairBrief(finding.atRisk[0] as IsolationPair, finding, wording),
  figuresOf: ({ atRisk }) => atRisk[0]?.seedParent ?? null,
  pairsAtRisk: ({ atRisk }) => atRisk,
  hasWaysOut: true,
};

/** The findings of a fresh run, put in order by the columns of its pairs alone. */
function isolationLater({
  judged,
  ranks,
  stands,
}: CheckInput<IsolationFinding>): GradedLists<IsolationFinding> | null {
  const { ways } = judged;
  const order = ways && ranks();
  if (!ways || !order) return null;
  const { columns } = ways;
  const { one, other, ways: codes } = columns;
  return pairsBySeverity(columns).map((found) =>
    foundLater("isolation", Uint32Array.from(found), { one, other, stands, order }, (pair, id) => {
      const atRisk = [pair * 2, pair * 2 + 1].filter((way) => isConflictCode(codes[way]));
      return isolationFinding(
        id,
        atRisk.map((way) => ways.of(way)),
      );
    }),
  );
}

const isConflictCode = (code = 0) => isStanding(code, "conflict");

/** Places in the columns of pairs at risk: conflicts, cautions, and no unknowns. */
function pairsBySeverity({ ways, length }: PairColumns): readonly (readonly number[])[] {
  const conflicts: number[] = [];
  const cautions: number[] = [];
  for (let pair = 0; pair < length; pair += 1) {
    const [there, back] = [ways[pair * 2] as number, ways[pair * 2 + 1] as number];
    const [isThere, isBack] = [isConflictCode(there), isConflictCode(back)];
    if (!isThere && !isBack) continue;
    const isGrave = (isThere && there < RARELY) || (isBack && back < RARELY);
    (isGrave ? conflicts : cautions).push(pair);
  }
  return [conflicts, cautions, []];
}

function isolationFinding(id: string, found: PairWays): IsolationFinding {
  const atRisk = worstFirst(found);
  const { seedParent, pollenSource, distanceM, requiredM, where } = atRisk[0] as IsolationPair;
  return {
    id,
    check: "isolation",
    severity: atRisk.every((pair) => pair.relation === "rarely") ? "caution" : "conflict",
    subjects: seedParent < pollenSource ? [seedParent, pollenSource] : [pollenSource, seedParent],
    measuredM: distanceM,
    ...(requiredM === null ? {} : { requiredM }),
    where,
    atRisk,
  };
}

function worstFirst(ways: PairWays): PairWays {
  const [one, other] = ways;
  if (!one || !other) return ways;
  const by =
    (other.requiredM ?? 0) - (one.requiredM ?? 0) || compareText(one.seedParent, other.seedParent);
  return by <= 0 ? ways : [other, one];
}

/** A stand has no bloom dates, so pairs too close for distance cannot be cleared by time. */
export interface MissingBloomFinding extends FindingBase {
  readonly check: "missing-bloom";
  readonly subject: string;
  /** The stands it cannot be cleared against. */
  readonly against: readonly string[];
}

export const missingBloomCheck: Check<MissingBloomFinding> = {
  name: "missing-bloom",
  title: words.missingBloom,
  run: ({ judged }) => [...bySubject(judged.standing("unknown"), lacksBloom)].map(missingBloom),
  patch: (input) => patchBySubject("missing-bloom", input, lacksBloom, missingBloom),
  describe: (finding, { nameOf, standOf, unit }) => ({
    title: words.noBloom(nameOf(finding.subject)),
    sentences: [
      words.onlyTime(nearnessWords(finding, listed(finding.against.map(nameOf)), unit)),
      missingBloomAdvice(standOf(finding.subject)),
    ],
  }),
};

/** A seed parent has no isolation distance: nothing published at this level, none typed. */
export interface MissingFigureFinding extends FindingBase {
  readonly check: "missing-figure";
  readonly subject: string;
  readonly against: readonly string[];
}

export const missingFigureCheck: Check<MissingFigureFinding> = {
  name: "missing-figure",
  title: words.missingFigure,
  run: ({ judged }) => [...bySubject(judged.standing("unknown"), lackingFigure)].map(missingFigure),
  patch: (input) => patchBySubject("missing-figure", input, lackingFigure, missingFigure),
  describe: ({ subject, against }, wording) => describeMissingFigure(subject, against, wording),
  figuresOf: ({ subject }) => subject,
};

type Blame = (pair: IsolationPair) => readonly string[];

const lacksBloom: Blame = (pair) => pair.lacksBloom;
const lackingFigure: Blame = (pair) => (lacksFigure(pair) ? [pair.seedParent] : []);

function missingBloom([subject, pairs]: readonly [
  string,
  readonly IsolationPair[],
]): MissingBloomFinding {
  return {
    ...nearestOf("missing-bloom", subject, pairs),
    check: "missing-bloom",
    subject,
    against: othersOf(subject, pairs),
  };
}

function missingFigure([subject, pairs]: readonly [
  string,
  readonly IsolationPair[],
]): MissingFigureFinding {
  return {
    ...nearestOf("missing-figure", subject, pairs),
    check: "missing-figure",
    subject,
    against: othersOf(subject, pairs),
  };
}

/** Those blamed before or now, each by all pairs it is in. */
function patchBySubject<F extends FindingBase>(
  check: F["check"],
  { gonePairs, freshPairs, pairsOf }: ChangeInput,
  blame: Blame,
  make: (entry: readonly [string, readonly IsolationPair[]]) => F,
): ListPatch<F> {
  const touched = new Set(bySubject([...gonePairs, ...freshPairs].filter(isUnknown), blame).keys());
  return {
    gone: [...touched].map((subject) => findingId(check, [subject])),
    found: [...touched].flatMap((subject) => {
      const pairs = bySubject(pairsOf(subject).filter(isUnknown), blame).get(subject);
      return pairs ? [make([subject, pairs])] : [];
    }),
  };
}

const isUnknown = ({ standing }: IsolationPair) => standing === "unknown";

/** @param pairs of which it cannot be told how they stand */
function bySubject(
  pairs: readonly IsolationPair[],
  blame: Blame,
): ReadonlyMap<string, readonly IsolationPair[]> {
  const found = new Map<string, IsolationPair[]>();
  for (const pair of pairs) {
    for (const subject of blame(pair)) {
      const list = found.get(subject);
      if (list) list.push(pair);
      else found.set(subject, [pair]);
    }
  }
  return found;
}

function nearestOf(
  check: "missing-bloom" | "missing-figure",
  subject: string,
  pairs: readonly IsolationPair[],
) {
  const nearest = pairs.reduce((best, pair) => (pair.distanceM < best.distanceM ? pair : best));
  return {
    id: findingId(check, [subject]),
    severity: "unknown" as const,
    subjects: [subject],
    measuredM: nearest.distanceM,
    ...(lacksFigure(nearest) || nearest.requiredM === null ? {} : { requiredM: nearest.requiredM }),
    where: nearest.where,
  };
}

function othersOf(subject: string, pairs: readonly IsolationPair[]): readonly string[] {
  const others = pairs.map((pair) =>
    pair.seedParent === subject ? pair.pollenSource : pair.seedParent,
  );
  return [...new Set(others)].sort(compareText);
}
