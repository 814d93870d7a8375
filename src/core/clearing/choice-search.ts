/**
 * The cheapest set of choices in which no two clash, by branch and bound. Pieces that nothing ties
 * together are settled apart from each other. Exact where it says so; where its steps run out
 * before, the best it has found.
 */
import type { Choice } from "./choice.ts";

/** For each piece its choices, and for each two of them whether they clash. */
export interface ChoiceProblem {
  readonly pieces: readonly (readonly Choice[])[];
  readonly clash: (a: number, choiceA: number, b: number, choiceB: number) => boolean;
}

export interface ChoiceAnswer {
  /** Which choice is taken of each piece; null: no set without a clash was found. */
  readonly taken: readonly number[] | null;
  readonly cost: number;
  /** Whether nothing cheaper is among the choices, or there is no set at all. */
  readonly isProven: boolean;
}

/** Steps of one group of pieces that are tied together. */
const STEPS = 200_000;
const EPSILON = 1e-9;

export function cheapestChoices(problem: ChoiceProblem, steps = STEPS): ChoiceAnswer {
  const taken = problem.pieces.map(() => 0);
  let cost = 0;
  let isProven = true;
  for (const group of tiedGroups(problem)) {
    const found = new GroupSearch(problem, group, steps).run();
    isProven &&= found.isProven;
    if (found.taken === null) return { taken: null, cost: Infinity, isProven };
    group.forEach((piece, at) => (taken[piece] = found.taken?.[at] ?? 0));
    cost += found.cost;
  }
  return { taken, cost, isProven };
}

/** Pieces that a clash ties together, directly or through others. */
function tiedGroups({ pieces, clash }: ChoiceProblem): readonly (readonly number[])[] {
  const isTied = (a: number, b: number) =>
    (pieces[a] ?? []).some((_, i) => (pieces[b] ?? []).some((__, j) => clash(a, i, b, j)));
  const left = new Set(pieces.keys());
  const groups: number[][] = [];
  for (const first of pieces.keys()) {
    if (!left.delete(first)) continue;
    const group = [first];
    for (let at = 0; at < group.length; at += 1) {
      for (const other of left) {
        if (!isTied(group[at] as number, other)) continue;
        left.delete(other);
        group.push(other);
      }
    }
    groups.push(group);
  }
  return groups;
}

/** Depth first through the choices of one group, the piece with the fewest left first. */
class GroupSearch {
  private steps: number;
  private best: number[] | null = null;
  private bestCost = Infinity;
  private readonly taken: number[];
  /** How many of the choices taken forbid each choice. */
  private readonly forbidden: Int32Array[];

  private readonly problem: ChoiceProblem;
  private readonly group: readonly number[];

  constructor(problem: ChoiceProblem, group: readonly number[], steps: number) {
    this.problem = problem;
    this.group = group;
    this.steps = steps;
    this.taken = group.map(() => -1);
    this.forbidden = group.map((piece) => new Int32Array(this.choices(piece).length));
  }

  run(): ChoiceAnswer {
    this.descend(0);
    return { taken: this.best, cost: this.bestCost, isProven: this.steps > 0 };
  }

  private choices(piece: number): readonly Choice[] {
    return this.problem.pieces[piece] ?? [];
  }

  /** Choices of the piece at a place of the group that nothing taken forbids, cheapest first. */
  private free(at: number): readonly number[] {
    const choices = this.choices(this.group[at] as number);
    return [...choices.keys()]
      .filter((choice) => this.forbidden[at]?.[choice] === 0)
      .sort((a, b) => (choices[a]?.cost ?? 0) - (choices[b]?.cost ?? 0));
  }

  private descend(cost: number): void {
    this.steps -= 1;
    if (this.steps <= 0 && this.best !== null) return;
    let bound = cost;
    let next: { readonly at: number; readonly free: readonly number[] } | null = null;
    for (let at = 0; at < this.group.length; at += 1) {
      if (this.taken[at] !== -1) continue;
      const free = this.free(at);
      const [cheapest] = free;
      if (cheapest === undefined) return;
      bound += this.costOf(at, cheapest);
      if (next === null || free.length < next.free.length) next = { at, free };
    }
    if (bound >= this.bestCost - EPSILON) return;
    if (next === null) {
      this.best = [...this.taken];
      this.bestCost = cost;
      return;
    }
    for (const choice of next.free) {
      this.take(next.at, choice, 1);
      this.descend(cost + this.costOf(next.at, choice));
      this.take(next.at, choice, -1);
    }
  }

  private costOf(at: number, choice: number): number {
    return this.choices(this.group[at] as number)[choice]?.cost ?? 0;
  }

  private take(at: number, choice: number, sign: 1 | -1): void {
    this.taken[at] = sign === 1 ? choice : -1;
    for (const [other, piece] of this.group.entries()) {
      if (other === at || this.taken[other] !== -1) continue;
      const list = this.forbidden[other] as Int32Array;
      for (let there = 0; there < list.length; there += 1) {
        if (this.problem.clash(this.group[at] as number, choice, piece, there)) {
          list[there] = (list[there] ?? 0) + sign;
        }
      }
    }
  }
}

/** The same problem with every pair asked once and remembered. */
export function remembered(problem: ChoiceProblem): ChoiceProblem {
  const tables = new Map<string, Uint8Array>();
  const tableOf = (a: number, b: number) => {
    const key = `${a} ${b}`;
    const found = tables.get(key);
    if (found) return found;
    const [left, right] = [problem.pieces[a] ?? [], problem.pieces[b] ?? []];
    const table = Uint8Array.from({ length: left.length * right.length }, (_, at) =>
      problem.clash(a, Math.floor(at / right.length), b, at % right.length) ? 1 : 0,
    );
    tables.set(key, table);
    return table;
  };
  const clash: ChoiceProblem["clash"] = (a, choiceA, b, choiceB) => {
    if (a > b) return clash(b, choiceB, a, choiceA);
    const width = problem.pieces[b]?.length ?? 0;
    return tableOf(a, b)[choiceA * width + choiceB] === 1;
  };
  return { pieces: problem.pieces, clash };
}
