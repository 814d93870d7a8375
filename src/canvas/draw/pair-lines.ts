/** Which pairs of stands the sheet shows as lines, and what is written beside them. */
import { severitySign } from "../../core/checks/wording.ts";
import { pairKey, type IsolationPair } from "../../core/checks/isolation-pair.ts";
import { keptOf } from "../../core/checks/carried-run.ts";
import { findingId } from "../../core/checks/finding.ts";
import { isolationPair } from "../../core/checks/isolation.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { boundsGap } from "../../core/geometry/bounds.ts";
import type { Point } from "../../core/geometry/point.ts";
import { groupNearly } from "../../core/nearness/reach-index.ts";
import { touchingPairs } from "../../core/nearness/touching-pairs.ts";
import { type LengthUnit, formatDistance, formatMeasured } from "../../core/model/length.ts";
import * as said from "../scene/mark-words.ts";

/** `accepted`: a conflict the grower lives with. */
export type Tone = "conflict" | "caution" | "unknown" | "clear" | "accepted";

export interface PairLine {
  readonly ids: readonly [string, string];
  /** The two closest places, sheet metres. */
  readonly ends: readonly [Point, Point];
  readonly tone: Tone;
  /** Sign first, then what was measured. */
  readonly text: string;
  /** Cleared by time or cover alone, so drawn lighter. */
  readonly isLight: boolean;
}

const CLEAR_SIGN = "✓";
/** While something moves, pairs just cleared by distance stay in sight up to this share of it. */
const NEARLY_SHARE = 1.5;
const NEARLY_MOST = 3;
/** With more than this moving, distances that are clear are not looked for. */
const FOLLOWED_MOST = 3;

interface LinesOf {
  readonly of: readonly unknown[];
  readonly lines: readonly PairLine[];
}

/**
 * Pairs that touch what is selected or on the move, the worst and nearest first.
 * @param isMoving adds the nearest pairs that distance clears
 */
export function heldPairs(
  result: CheckResult,
  unit: LengthUnit,
  live: ReadonlySet<string>,
  isMoving: boolean,
): readonly PairLine[] {
  if (live.size === 0) return [];
  const of = [result, unit, live, isMoving];
  if (lastHeld && of.every((part, index) => part === lastHeld?.of[index])) return lastHeld.lines;
  const lines = heldLines(result, unit, live, isMoving);
  lastHeld = { of, lines };
  return lines;
}

/** While the view moves the same are drawn on every frame. */
let lastHeld: LinesOf | null = null;

function heldLines(
  result: CheckResult,
  unit: LengthUnit,
  live: ReadonlySet<string>,
  isMoving: boolean,
): readonly PairLine[] {
  const kept = keptOf(result);
  const keyOf = pairNumbers(kept.placeOf);
  const held = worstOfEach(touchingPairs(kept, live), keyOf);
  if (isMoving) {
    const isHeld = (pair: IsolationPair) => held.has(keyOf(pair));
    for (const pair of nearlyClear(result, live, isHeld)) held.set(keyOf(pair), pair);
  }
  return asLines([...held.values()], result, unit);
}

type PairNumber = (pair: IsolationPair) => number;

/** The same for both ways of two, by their places: no text is made for each of thousands in a frame. */
function pairNumbers(placeOf: ReadonlyMap<string, number>): PairNumber {
  const { size } = placeOf;
  return ({ seedParent, pollenSource }) => {
    const [one, other] = [placeOf.get(seedParent) ?? 0, placeOf.get(pollenSource) ?? 0];
    return Math.min(one, other) * size + Math.max(one, other);
  };
}

type LineSteps = Generator<undefined, readonly PairLine[]>;

/**
 * The other conflicts, those the grower has accepted left out; in steps, as among thousands of
 * plantings there may be ten thousand.
 * @param opened id of the opened finding, which is drawn with its numbers
 */
export function* restingPairSteps(
  result: CheckResult,
  unit: LengthUnit,
  live: ReadonlySet<string>,
  opened: string | null,
): LineSteps {
  const of = [result, unit, live, opened];
  if (of.every((part, index) => part === lastResting?.of[index])) return lastResting?.lines ?? [];
  const all = yield* allLineSteps(result, unit);
  const lines = all.filter(
    ({ ids: [one, other] }) =>
      !live.has(one) &&
      !live.has(other) &&
      (opened === null || findingId("isolation", [one, other]) !== opened),
  );
  lastResting = { of, lines };
  return lines;
}

/** The sheet draws the same lines at many views. */
let lastResting: LinesOf | null = null;

/** What is taken up or opened leaves some out of the same lines. */
let lastAll: {
  readonly result: CheckResult;
  readonly unit: LengthUnit;
  readonly lines: readonly PairLine[];
} | null = null;

/** So many are gone through in one step. */
const STEP_STANDS = 500;

function* allLineSteps(result: CheckResult, unit: LengthUnit): LineSteps {
  if (lastAll?.result === result && lastAll.unit === unit) return lastAll.lines;
  const pairs = inOrder(yield* conflictsOnce(result));
  yield;
  const accepted = new Set(result.accepted.map(({ id }) => id));
  // Mostly none is accepted: ids of thousands are not made to look for them among none.
  const left = accepted.size === 0 ? pairs : pairs.filter((pair) => !accepted.has(pairKey(pair)));
  const lines = left.map((pair) => pairLine(pair, unit));
  lastAll = { result, unit, lines };
  return lines;
}

/** The worse direction of each pair in conflict; of two alike the one met first. */
function* conflictsOnce({
  stands,
  pairsByParent,
}: CheckResult): Generator<undefined, readonly IsolationPair[]> {
  const placeOf = new Map(stands.map(({ id }, place) => [id, place]));
  const found: IsolationPair[] = [];
  for (const [place, { id }] of stands.entries()) {
    if (place % STEP_STANDS === STEP_STANDS - 1) yield;
    for (const pair of pairsByParent.get(id) ?? []) {
      if (pair.standing !== "conflict") continue;
      const back = pairsByParent
        .get(pair.pollenSource)
        ?.find((each) => each.pollenSource === id && each.standing === "conflict");
      if (!back) found.push(pair);
      else if (place < (placeOf.get(pair.pollenSource) ?? 0)) {
        found.push(isWorse(back, pair) ? back : pair);
      }
    }
  }
  return found;
}

function worstOfEach(
  pairs: readonly IsolationPair[],
  keyOf: PairNumber,
): Map<number, IsolationPair> {
  const worst = new Map<number, IsolationPair>();
  for (const pair of pairs) {
    const key = keyOf(pair);
    const other = worst.get(key);
    if (!other || isWorse(pair, other)) worst.set(key, pair);
  }
  return worst;
}

function asLines(
  pairs: readonly IsolationPair[],
  result: CheckResult,
  unit: LengthUnit,
): readonly PairLine[] {
  const accepted = new Set(result.accepted.map((finding) => finding.id));
  const isAccepted = (pair: IsolationPair) => accepted.size > 0 && accepted.has(pairKey(pair));
  return inOrder(pairs).map((pair) => pairLine(pair, unit, isAccepted(pair)));
}

/** The worst first, and of those the nearest. */
function inOrder(pairs: readonly IsolationPair[]): readonly IsolationPair[] {
  const ranks = Uint8Array.from(pairs, rank);
  const metres = Float64Array.from(pairs, ({ distanceM }) => distanceM);
  const order = Uint32Array.from(pairs.keys()).sort(
    (a, b) =>
      (ranks[a] as number) - (ranks[b] as number) ||
      (metres[a] as number) - (metres[b] as number) ||
      a - b,
  );
  return Array.from(order, (place) => pairs[place] as IsolationPair);
}

function rank({ standing, relation }: IsolationPair): number {
  switch (standing) {
    case "conflict":
      return relation === "rarely" ? 2 : 0;
    case "unknown":
      return 1;
    case "cover":
      return 3;
    case "time":
      return 4;
    case "distance":
      return 5;
  }
}

/** Of the two directions of a pair the one at greater risk is shown. */
function isWorse(pair: IsolationPair, other: IsolationPair): boolean {
  const ranks = rank(pair) - rank(other);
  return ranks < 0 || (ranks === 0 && (pair.requiredM ?? 0) > (other.requiredM ?? 0));
}

export function pairLine(pair: IsolationPair, unit: LengthUnit, isAccepted = false): PairLine {
  const { tone, sign } = toneOf(pair, isAccepted);
  return {
    ids: [pair.seedParent, pair.pollenSource],
    ends: pair.where,
    tone,
    // Of thousands at rest no words are read.
    get text() {
      return `${sign} ${standingText(pair, unit)}${isAccepted ? ", accepted" : ""}`;
    },
    isLight: pair.standing === "time" || pair.standing === "cover",
  };
}

function toneOf(pair: IsolationPair, isAccepted: boolean): { tone: Tone; sign: string } {
  if (pair.standing === "unknown") return { tone: "unknown", sign: severitySign.unknown };
  if (pair.standing !== "conflict") return { tone: "clear", sign: CLEAR_SIGN };
  const severity = pair.relation === "rarely" ? "caution" : "conflict";
  return { tone: isAccepted ? "accepted" : severity, sign: severitySign[severity] };
}

function standingText(pair: IsolationPair, unit: LengthUnit): string {
  if (pair.standing === "cover") return said.apartByCover;
  if (pair.standing === "time") {
    return said.apartByTime(pair.gapDays ?? 0);
  }
  if (pair.requiredM === null) return formatDistance(pair.distanceM, unit);
  const isShort = pair.standing !== "distance";
  const shown = formatMeasured(pair.distanceM, pair.requiredM, isShort, unit);
  return `${said.measuredOf(shown.measured, shown.required)}${shown.after}`;
}

/** Pairs of what moves that distance clears, but not by much; the tightest few. */
function nearlyClear(
  result: CheckResult,
  moving: ReadonlySet<string>,
  isShown: (pair: IsolationPair) => boolean,
): readonly IsolationPair[] {
  if (moving.size > FOLLOWED_MOST) return [];
  const movers = [...moving].flatMap((id) => result.standById.get(id) ?? []);
  const { stands, reach } = keptOf(result);
  const found: IsolationPair[] = [];
  for (const mover of movers) {
    // Asked of the neighbourhood alone: this is drawn on every frame.
    for (const other of groupNearly(reach, stands, mover, NEARLY_SHARE)) {
      if (moving.has(other.id)) continue;
      const farthestM = Math.max(mover.reachM, other.reachM) * NEARLY_SHARE;
      if (boundsGap(mover.outline.bounds, other.outline.bounds) > farthestM) continue;
      const pair = tighterWay(mover, other, mover.book);
      if (pair && !isShown(pair)) found.push(pair);
    }
  }
  return found.sort((a, b) => slack(a) - slack(b)).slice(0, NEARLY_MOST);
}

type Stands = CheckResult["stands"][number];

/** The direction of a pair with less to spare, if it is nearly not clear. */
function tighterWay(a: Stands, b: Stands, book: CropBook): IsolationPair | null {
  const ways = [isolationPair(a, b, book), isolationPair(b, a, book)].filter(
    (pair) =>
      pair !== null &&
      pair.standing === "distance" &&
      pair.distanceM < (pair.requiredM ?? 0) * NEARLY_SHARE,
  );
  return ways.sort((p, q) => (p ? slack(p) : 0) - (q ? slack(q) : 0))[0] ?? null;
}

function slack(pair: IsolationPair): number {
  return pair.distanceM - (pair.requiredM ?? 0);
}
