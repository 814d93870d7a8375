/**
 * The cheapest set of choices, one of each piece, by branch and bound: no two that exclude each
 * other, and every pair that stays in conflict counted. Pieces that nothing ties together are
 * settled apart. Exact where it says so; where its steps run out before, the best it has found.
 */

/** One thing that can be done with a piece; the first of a list is to leave it as it is. */
export interface Priced {
  /** How little it is wished: the sum over all pieces is made least. */
  readonly cost: number;
  /** Cages it takes. */
  readonly cages: number;
}

export interface ChoiceProblem {
  readonly pieces: readonly (readonly Priced[])[];
  /** What two choices of two pieces cost together; 0: nothing, Infinity: they exclude each other. */
  readonly together: (a: number, choiceA: number, b: number, choiceB: number) => number;
  /** Cages at most, of all that is taken; left out: as many as it takes. */
  readonly mostCages?: number;
}

export interface ChoiceAnswer {
  /** Which choice is taken of each piece; null: no set was found. */
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

/** Pieces that are tied together, directly or through others. A limit of cages ties all of them. */
export function tiedGroups(problem: ChoiceProblem): readonly (readonly number[])[] {
  const { pieces, together, mostCages } = problem;
  if (mostCages !== undefined) return pieces.length === 0 ? [] : [[...pieces.keys()]];
  const isTied = (a: number, b: number) =>
    (pieces[a] ?? []).some((_, i) => (pieces[b] ?? []).some((__, j) => together(a, i, b, j) > 0));
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
  private cages = 0;
  private readonly taken: number[];
  /** How many of the choices taken exclude each choice, and what they add to it. */
  private readonly excluded: Int32Array[];
  private readonly added: Float64Array[];
  private readonly problem: ChoiceProblem;
  private readonly group: readonly number[];

  constructor(problem: ChoiceProblem, group: readonly number[], steps: number) {
    this.problem = problem;
    this.group = group;
    this.steps = steps;
    this.taken = group.map(() => -1);
    this.excluded = group.map((piece) => new Int32Array(this.choices(piece).length));
    this.added = group.map((piece) => new Float64Array(this.choices(piece).length));
  }

  run(): ChoiceAnswer {
    this.descend(0);
    return { taken: this.best, cost: this.bestCost, isProven: this.steps > 0 };
  }

  private choices(piece: number): readonly Priced[] {
    return this.problem.pieces[piece] ?? [];
  }

  /** Choices of the piece at a place of the group that are still free, cheapest first. */
  private free(at: number): readonly number[] {
    const choices = this.choices(this.group[at] as number);
    const most = this.problem.mostCages ?? Infinity;
    return [...choices.keys()]
      .filter((choice) => this.excluded[at]?.[choice] === 0)
      .filter((choice) => this.cages + (choices[choice]?.cages ?? 0) <= most)
      .sort((a, b) => this.costOf(at, a) - this.costOf(at, b));
  }

  /** How many choices of a piece are free, and what the cheapest of them costs. */
  private outlook(at: number): { readonly count: number; readonly least: number } {
    const choices = this.choices(this.group[at] as number);
    const most = (this.problem.mostCages ?? Infinity) - this.cages;
    let count = 0;
    let least = Infinity;
    for (let choice = 0; choice < choices.length; choice += 1) {
      if (this.excluded[at]?.[choice] !== 0 || (choices[choice]?.cages ?? 0) > most) continue;
      count += 1;
      least = Math.min(least, this.costOf(at, choice));
    }
    return { count, least };
  }

  private descend(cost: number): void {
    this.steps -= 1;
    if (this.steps <= 0 && this.best !== null) return;
    let bound = cost;
    let next = -1;
    let fewest = Infinity;
    for (let at = 0; at < this.group.length; at += 1) {
      if (this.taken[at] !== -1) continue;
      const { count, least } = this.outlook(at);
      if (count === 0) return;
      bound += least;
      if (count < fewest) [next, fewest] = [at, count];
    }
    if (bound >= this.bestCost - EPSILON) return;
    if (next === -1) {
      this.best = [...this.taken];
      this.bestCost = cost;
      return;
    }
    for (const choice of this.free(next)) {
      const more = this.costOf(next, choice);
      this.take(next, choice, 1);
      this.descend(cost + more);
      this.take(next, choice, -1);
    }
  }

  /** With what it costs beside the choices taken. */
  private costOf(at: number, choice: number): number {
    const own = this.choices(this.group[at] as number)[choice]?.cost ?? 0;
    return own + (this.added[at]?.[choice] ?? 0);
  }

  private take(at: number, choice: number, sign: 1 | -1): void {
    const piece = this.group[at] as number;
    this.taken[at] = sign === 1 ? choice : -1;
    this.cages += sign * (this.choices(piece)[choice]?.cages ?? 0);
    for (const [other, there] of this.group.entries()) {
      if (other === at || this.taken[other] !== -1) continue;
      const [excluded, added] = [this.excluded[other], this.added[other]];
      if (!excluded || !added) continue;
      for (let each = 0; each < excluded.length; each += 1) {
        const cost = this.problem.together(piece, choice, there, each);
        if (cost === Infinity) excluded[each] = (excluded[each] ?? 0) + sign;
        else if (cost > 0) added[each] = (added[each] ?? 0) + sign * cost;
      }
    }
  }
}

/** The same problem with every pair asked once and remembered. */
export function remembered(problem: ChoiceProblem): ChoiceProblem {
  const count = problem.pieces.length;
  const tables = new Map<number, Float64Array>();
  const tableOf = (a: number, b: number) => {
    const key = a * count + b;
    const found = tables.get(key);
    if (found) return found;
    const width = problem.pieces[b]?.length ?? 0;
    const height = problem.pieces[a]?.length ?? 0;
    const table = new Float64Array(height * width);
    for (let i = 0; i < height; i += 1) {
      for (let j = 0; j < width; j += 1) table[i * width + j] = problem.together(a, i, b, j);
    }
    tables.set(key, table);
    return table;
  };
  const together: ChoiceProblem["together"] = (a, choiceA, b, choiceB) => {
    if (a > b) return together(b, choiceB, a, choiceA);
    const width = problem.pieces[b]?.length ?? 0;
    return tableOf(a, b)[choiceA * width + choiceB] ?? 0;
  };
  return { ...problem, together };
}
