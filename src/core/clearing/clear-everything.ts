/**
 * Clear everything: the fewest and mildest changes that clear all conflicts of a layout together,
 * within what the grower allows. Whatever comes of it has been applied and judged by the checks;
 * changes that would bring a conflict, something unknown or an overlap are not given.
 */
import { type CheckedLayout, recheckLayout } from "../checks/checked-layout.ts";
import type { Finding } from "../checks/all-checks.ts";
import type { Plan } from "../model/plan.ts";
import { type Proposal, broughtFindings } from "../remedies/remedy.ts";
import { searchedChoices } from "./choice-rounds.ts";
import type { ChoiceAnswer, ChoiceProblem } from "./choice-search.ts";
import {
  type Allowances,
  CONFLICT_COST,
  type ClearingProblem,
  clearingProblem,
} from "./clearing-problem.ts";
import { type ClearingStep, clearingSteps, isHarm } from "./clearing-steps.ts";

export interface Clearing {
  /** What to do, in an order in which no step brings a conflict. */
  readonly steps: readonly ClearingStep[];
  /** Conflicts before. */
  readonly before: number;
  /** Conflicts that are left. */
  readonly left: readonly Finding[];
  /** What is not known then: none of it is called clear. */
  readonly unknowns: number;
  /** Cautions that come with it, or get worse. */
  readonly brings: readonly Finding[];
  /** Whether nothing milder is among the ways looked at. */
  readonly isProven: boolean;
  /** What the changes cost; see clearing-problem.ts. What is left counts CONFLICT_COST each. */
  readonly cost: number;
  /** Each set of these ways costs at least so much. */
  readonly atLeast: number;
  /** Ways looked at. */
  readonly ways: number;
}

/** A set of choices with what any set costs at least. */
export interface BoundedAnswer extends ChoiceAnswer {
  readonly atLeast: number;
}

/** Proves a set, or finds a cheaper one, in the time it has. */
export type Prover = (problem: ChoiceProblem, first: ChoiceAnswer) => BoundedAnswer;

/** Changes that the checks do not confirm are ruled out and others looked for, so often at most. */
const MOST_TRIES = 12;

/** Yields conflicts left by the best so far, as the choices are counted. */
export function* clearEverything(
  checked: CheckedLayout,
  allowances: Allowances,
  prove: Prover | null,
): Generator<number, Clearing> {
  const built = clearingProblem(checked, allowances);
  const bans: Bans = { single: new Set(), pairs: new Set() };
  let isCut = false;
  for (let attempt = 0; attempt < MOST_TRIES; attempt += 1) {
    const problem = withBans(built, bans);
    const answer = yield* boundedAnswer(problem, prove);
    const changes = changesOf(built, answer.taken);
    const after = recheckLayout(checked, applied(checked.plan, changes));
    const brings = after ? broughtFindings(checked.result, after.result) : [];
    const harm = brings.filter(isHarm);
    if (after && harm.length === 0) {
      return {
        steps: clearingSteps(checked, changes),
        before: conflictsIn(checked).length,
        left: conflictsIn(after),
        unknowns: unknownsIn(after),
        brings,
        // What was ruled out may have been milder together with something else.
        isProven: answer.isProven && !isCut,
        cost: answer.cost,
        atLeast: answer.atLeast,
        ways: built.ways,
      };
    }
    isCut = true;
    if (!ban(bans, harm, changes)) break;
  }
  return unchanged(checked, built);
}

function* boundedAnswer(
  problem: ChoiceProblem,
  prove: Prover | null,
): Generator<number, BoundedAnswer> {
  const run = searchedChoices(problem);
  let next = run.next();
  while (next.done !== true) {
    yield Math.floor(next.value.cost / CONFLICT_COST);
    next = run.next();
  }
  const first = next.value;
  yield Math.floor(first.cost / CONFLICT_COST);
  if (first.isProven) return { ...first, atLeast: first.cost };
  return prove ? prove(problem, first) : { ...first, atLeast: 0 };
}

function changesOf(
  { pieces }: ClearingProblem,
  taken: readonly number[] | null,
): readonly Proposal[] {
  const found = (taken ?? []).flatMap(
    (choice, piece) => pieces[piece]?.choices[choice]?.proposal ?? [],
  );
  return [...new Set(found)];
}

/** All of them, one after the other. */
function applied(plan: Plan, changes: readonly Proposal[]): Plan {
  return changes.reduce((next, { edit }) => edit.apply(next), plan);
}

function conflictsIn({ result }: CheckedLayout): readonly Finding[] {
  return result.findings.filter(({ severity }) => severity === "conflict");
}

function unknownsIn({ result }: CheckedLayout): number {
  return result.findings.filter(({ severity }) => severity === "unknown").length;
}

/** What is ruled out: ways by themselves, and two together. */
interface Bans {
  readonly single: Set<Proposal>;
  readonly pairs: Set<string>;
}

const pairOf = (a: Proposal, b: Proposal) => [a.id, b.id].sort().join("\n");

/** Rules out what brought a finding: a way alone, else each two of them; whether that is news. */
function ban({ single, pairs }: Bans, harm: readonly Finding[], changes: readonly Proposal[]) {
  const before = single.size + pairs.size;
  for (const { subjects } of harm) {
    const of = changes.filter(({ touches }) => touches.some((id) => subjects.includes(id)));
    const guilty = of.length > 0 ? of : changes;
    if (guilty.length === 1) single.add(guilty[0] as Proposal);
    for (const [index, one] of guilty.entries()) {
      for (const other of guilty.slice(index + 1)) pairs.add(pairOf(one, other));
    }
  }
  return single.size + pairs.size > before;
}

function withBans({ pieces, problem }: ClearingProblem, { single, pairs }: Bans): ChoiceProblem {
  if (single.size + pairs.size === 0) return problem;
  const wayOf = (piece: number, choice: number) => pieces[piece]?.choices[choice]?.proposal ?? null;
  return {
    ...problem,
    pieces: problem.pieces.map((list, piece) =>
      list.map((priced, choice) => {
        const way = wayOf(piece, choice);
        return way && single.has(way) ? { ...priced, cost: Infinity } : priced;
      }),
    ),
    together: (a, i, b, j) => {
      const [one, other] = [wayOf(a, i), wayOf(b, j)];
      if (one && other && one !== other && pairs.has(pairOf(one, other))) return Infinity;
      return problem.together(a, i, b, j);
    },
  };
}

/** Nothing that the checks confirm was found: all stays as it is. */
function unchanged(checked: CheckedLayout, { ways }: ClearingProblem): Clearing {
  const left = conflictsIn(checked);
  return {
    steps: [],
    before: left.length,
    left,
    unknowns: unknownsIn(checked),
    brings: [],
    isProven: false,
    cost: left.length * CONFLICT_COST,
    atLeast: 0,
    ways,
  };
}
