/**
 * All conflicts of a layout as one choice problem: for each planting and pollen source that a
 * conflict ties up, to leave it or to take one of the ways out; judged pair by pair by the rule of
 * the checks. What is not tied up stays.
 */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { isolationPair } from "../checks/isolation.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import { type Stand, resolveStands } from "../checks/stand.ts";
import { candidateWays, tiedStands } from "../remedies/candidate-ways.ts";
import { disturbance } from "../remedies/rank-ways.ts";
import type { Proposal } from "../remedies/remedy.ts";
import { type Choice, lieOnEachOther } from "./choice.ts";
import { type ChoiceProblem, remembered } from "./choice-search.ts";

/** What the grower allows. */
export interface Allowances {
  /** New cages at most. */
  readonly mostCages: number;
  /** Furthest a start may move, days. */
  readonly mostDays: number;
  /** Ids of plantings and surroundings that stay as they are, beside what is locked. */
  readonly staying: ReadonlySet<string>;
  /** Ids of varieties that may wait a year, or give no seed this year. */
  readonly mayWait: ReadonlySet<string>;
}

export interface ClearingChoice extends Choice {
  /** Null: it stays as it is. */
  readonly proposal: Proposal | null;
  /** Whether it lies on other ground then, and may come to lie on another. */
  readonly isMoved: boolean;
}

export interface ClearingPiece {
  readonly id: string;
  readonly choices: readonly ClearingChoice[];
}

export interface ClearingProblem {
  readonly pieces: readonly ClearingPiece[];
  readonly problem: ChoiceProblem;
  /** Ways looked at, all pieces together. */
  readonly ways: number;
}

/** A conflict that stays costs more than any change. */
export const CONFLICT_COST = 10_000;
/** What any change costs beside what it asks: few changes are better than many. No source; ours. */
const CHANGE_COST = 10;
/** Places in each other bed. */
const PLACES_PER_BED = 4;
/** Moves of one planting kept, the shortest first: with more the whole takes long to reason about. */
const MOST_MOVES = 16;
const MOVES: ReadonlySet<Proposal["way"]> = new Set(["move", "other bed", "swap"]);

export function clearingProblem(checked: CheckedLayout, allowances: Allowances): ClearingProblem {
  const judge = judgeOf(checked);
  const allowed = candidateWays(checked, {
    mostDays: allowances.mostDays,
    placesPerBed: PLACES_PER_BED,
    staying: allowances.staying,
  }).filter((way) => isAllowed(way, allowances));
  const ids = new Set([
    ...tiedStands(checked).map(({ id }) => id),
    ...allowed.flatMap(({ touches }) => touches),
  ]);
  const fixed = checked.result.stands.filter(({ id }) => !ids.has(id));
  const byId = new Map<string, ClearingChoice[]>();
  for (const id of ids) {
    const stand = checked.result.standById.get(id);
    byId.set(id, stand ? [priced(judge, fixed, { stands: [stand], proposal: null })] : []);
  }
  for (const proposal of allowed) addChoices(checked, byId, proposal, judge, fixed);
  const pieces = [...byId].map(([id, choices]): ClearingPiece => ({
    id,
    choices: trimmed(choices),
  }));
  const lists = pieces.map(({ choices }) => choices);
  const groups = pieces.map(({ id }) => checked.result.standById.get(id)?.kind.group);
  const together: ChoiceProblem["together"] = (a, i, b, j) => {
    const [one, other] = [lists[a]?.[i], lists[b]?.[j]];
    if (!one || !other) return Infinity;
    const [idA, idB] = [pieces[a]?.id ?? "", pieces[b]?.id ?? ""];
    if (areAtOdds(one, idA, other, idB)) return Infinity;
    const isApart = !one.isMoved && !other.isMoved && groups[a] !== groups[b];
    return isApart ? 0 : costTogether(judge, one.stands, other.stands);
  };
  const problem = {
    pieces: lists,
    together,
    ...(allowances.mostCages === Infinity ? {} : { mostCages: allowances.mostCages }),
  };
  return {
    pieces,
    problem: remembered(problem),
    ways: new Set(
      pieces.flatMap(({ choices }) => choices.flatMap(({ proposal }) => proposal ?? [])),
    ).size,
  };
}

/** Until a neighbour has said yes nothing is clear: that is no way to clear a layout. */
function isAllowed({ way, cost }: Proposal, { mayWait }: Allowances): boolean {
  if (way === "ask" || cost.askedOf !== null) return false;
  return cost.seedOf === null || mayWait.has(cost.seedOf);
}

/** A way is a choice of each thing it touches, taken together or not at all; its cost counts once. */
function addChoices(
  checked: CheckedLayout,
  byId: ReadonlyMap<string, ClearingChoice[]>,
  proposal: Proposal,
  judge: Judge,
  fixed: readonly Stand[],
): void {
  const after = standsAfter(checked, proposal);
  const made = proposal.touches.map((id) => {
    const stand = after.get(id);
    return { id, choice: priced(judge, fixed, { stands: stand ? [stand] : [], proposal }) };
  });
  if (made.some(({ choice }) => choice.cost === Infinity)) return;
  for (const [index, { id, choice }] of made.entries()) {
    const isFirst = index === 0;
    byId.get(id)?.push({
      ...choice,
      cost: choice.cost + (isFirst ? CHANGE_COST + disturbance(proposal.cost) : 0),
      cages: isFirst ? proposal.cost.cages : 0,
    });
  }
}

/** What a way touches as it would be; what is no longer grown is missing. */
function standsAfter(
  { plan, layout, book }: CheckedLayout,
  { edit, touches }: Proposal,
): ReadonlyMap<string, Stand> {
  const next = edit.apply(plan);
  const after = next.layouts.find(({ id }) => id === layout.id);
  const isTouched = ({ id }: { readonly id: string }) => touches.includes(id);
  const stands = resolveStands(
    { ...next, surroundings: next.surroundings.filter(isTouched) },
    { ...layout, plantings: after?.plantings.filter(isTouched) ?? [] },
    book,
  );
  return new Map(stands.map((stand) => [stand.id, stand]));
}

/** Judges two stands as they would be, against how they are now. */
interface Judge {
  readonly checked: CheckedLayout;
  /** Pairs that distance does not clear now, by `parent source`. */
  readonly now: ReadonlyMap<string, IsolationPair>;
  /** Pairs of ids whose conflict is lived with. */
  readonly accepted: ReadonlySet<string>;
}

const pairKey = (a: string, b: string) => `${a} ${b}`;

function judgeOf(checked: CheckedLayout): Judge {
  const { pairs, accepted } = checked.result;
  return {
    checked,
    now: new Map(pairs.map((pair) => [pairKey(pair.seedParent, pair.pollenSource), pair])),
    accepted: new Set(
      accepted
        .filter(({ check }) => check === "isolation")
        .flatMap(({ subjects: [a = "", b = ""] }) => [pairKey(a, b), pairKey(b, a)]),
    ),
  };
}

function priced(
  judge: Judge,
  fixed: readonly Stand[],
  choice: Pick<ClearingChoice, "stands" | "proposal">,
): ClearingChoice {
  const { standById } = judge.checked.result;
  const isMoved = choice.stands.some(
    ({ id, planting }) => planting?.outline !== standById.get(id)?.planting?.outline,
  );
  return { ...choice, isMoved, cost: costTogether(judge, choice.stands, fixed), cages: 0 };
}

function costTogether(judge: Judge, some: readonly Stand[], others: readonly Stand[]): number {
  let cost = 0;
  for (const one of some) for (const other of others) cost += costOfTwo(judge, one, other);
  return cost;
}

/** 0: nothing; a conflict that there is already and that is no worse; Infinity: one of our making. */
function costOfTwo(judge: Judge, a: Stand, b: Stand): number {
  const { standById } = judge.checked.result;
  const isAsNow = standById.get(a.id) === a && standById.get(b.id) === b;
  if (!isAsNow && lieOnEachOther(a, b)) return Infinity;
  if (a.kind.group !== b.kind.group) return 0;
  const costs = [oneWay(judge, a, b), oneWay(judge, b, a)];
  return Math.max(...costs);
}

/** Distances and days that differ by less are the same. */
const SAME = 1e-6;

function oneWay({ checked, now, accepted }: Judge, parent: Stand, source: Stand): number {
  const pair = isolationPair(parent, source, checked.book);
  if (!pair || pair.standing === "distance" || pair.relation === "rarely") return 0;
  if (pair.standing === "time" || pair.standing === "cover") return 0;
  const before = now.get(pairKey(parent.id, source.id));
  if (before?.standing !== pair.standing) return Infinity;
  if (pair.standing === "unknown") return 0;
  const isWorse =
    pair.distanceM < before.distanceM - SAME ||
    (pair.overlapDays ?? 0) > (before.overlapDays ?? 0) ||
    (pair.requiredM ?? 0) > (before.requiredM ?? 0);
  if (isWorse) return Infinity;
  return accepted.has(pairKey(parent.id, source.id)) ? 0 : CONFLICT_COST;
}

/** Whether one is a way that touches what the other belongs to, and is not taken there. */
function areAtOdds(one: ClearingChoice, idA: string, other: ClearingChoice, idB: string): boolean {
  if (one.proposal === other.proposal) return false;
  return (
    one.proposal?.touches.includes(idB) === true || other.proposal?.touches.includes(idA) === true
  );
}

/** All that is no move, and the shortest moves. */
function trimmed(choices: readonly ClearingChoice[]): readonly ClearingChoice[] {
  const isMove = ({ proposal }: ClearingChoice) => proposal !== null && MOVES.has(proposal.way);
  const moves = choices.filter(isMove).sort((a, b) => a.cost - b.cost);
  const kept = new Set(moves.slice(0, MOST_MOVES));
  return choices.filter((choice) => !isMove(choice) || kept.has(choice));
}
