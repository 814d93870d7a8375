/** The cheapest set of choices proven by a mixed-integer solver that is handed in. */
import type { Highs, ModelData } from "highs";
import { type Row, modelData } from "../solving/model-data.ts";
import type { ChoiceAnswer, ChoiceProblem } from "./choice-search.ts";

export interface ChoiceProof extends ChoiceAnswer {
  /** No set costs less; equal to the cost where that is proven. */
  readonly atLeast: number;
}

/**
 * @param first a set already found; the answer costs no more
 * @param seconds longest time to look
 */
export function provenChoices(
  problem: ChoiceProblem,
  first: readonly number[] | null,
  highs: Highs,
  seconds: number,
): ChoiceProof {
  const starts = columnStarts(problem);
  return highs.withModel(modelOf(problem, starts), (model): ChoiceProof => {
    model.options.set({
      output_flag: false,
      time_limit: seconds,
      mip_rel_gap: 0,
      mip_abs_gap: 1e-6,
    });
    if (first) {
      const indices = first.map((choice, piece) => (starts[piece] as number) + choice);
      model.setSolution({ indices, values: indices.map(() => 1) });
    }
    model.run();
    const status = model.getModelStatus();
    const { modelStatus } = highs.constants;
    if (status === modelStatus.infeasible) {
      return { taken: null, cost: Infinity, isProven: true, atLeast: Infinity };
    }
    const isProven = status === modelStatus.optimal;
    const bound = Number(model.info.get("mip_dual_bound"));
    const atLeast = Number.isFinite(bound) ? Math.max(0, bound) : 0;
    const values = model.getSolution().colValue;
    const taken = problem.pieces.map((list, piece) =>
      Math.max(
        0,
        list.findIndex((_, choice) => (values[(starts[piece] as number) + choice] ?? 0) > 0.5),
      ),
    );
    // Counted again without the solver.
    const cost = costOf(problem, taken);
    if (!isProven) {
      const known = first ? costOf(problem, first) : Infinity;
      const better = cost < known ? { taken, cost } : { taken: first, cost: known };
      return { ...better, isProven: false, atLeast: Math.min(atLeast, better.cost) };
    }
    if (Math.abs(cost - model.getObjectiveValue()) > 1e-3) {
      throw new Error("The solver's cost is not what the choices have.");
    }
    return { taken, cost, isProven, atLeast: cost };
  });
}

/** What a set of choices costs; infinite where two exclude each other or cages are too many. */
export function costOf(problem: ChoiceProblem, taken: readonly number[]): number {
  const { pieces, together, mostCages = Infinity } = problem;
  let cost = 0;
  let cages = 0;
  for (const [a, choice] of taken.entries()) {
    cost += pieces[a]?.[choice]?.cost ?? 0;
    cages += pieces[a]?.[choice]?.cages ?? 0;
    for (let b = a + 1; b < taken.length; b += 1)
      cost += together(a, choice, b, taken[b] as number);
  }
  return cages > mostCages ? Infinity : cost;
}

function columnStarts({ pieces }: ChoiceProblem): readonly number[] {
  let count = 0;
  return pieces.map(({ length }) => {
    count += length;
    return count - length;
  });
}

/** A yes or no for each choice, one yes a piece, and a yes for each pair that stays in conflict. */
function modelOf(problem: ChoiceProblem, starts: readonly number[]): ModelData {
  const { pieces, mostCages } = problem;
  const costs = pieces.flatMap((list) => list.map(({ cost }) => cost));
  const own = costs.length;
  const rows: Row[] = pieces.map((list, piece) => ({
    terms: list.map((_, choice) => [(starts[piece] as number) + choice, 1] as const),
    lower: 1,
    upper: 1,
  }));
  if (mostCages !== undefined) {
    const terms = pieces.flatMap((list, piece) =>
      list.flatMap(({ cages }, choice) =>
        cages > 0 ? [[(starts[piece] as number) + choice, cages] as const] : [],
      ),
    );
    if (terms.length > 0) rows.push({ terms, lower: -Infinity, upper: mostCages });
  }
  for (let a = 0; a < pieces.length; a += 1) {
    for (let b = a + 1; b < pieces.length; b += 1) {
      for (const { cost, left, right } of crossings(problem, a, b)) {
        const excuse = cost === Infinity ? [] : [[costs.push(cost) - 1, -1] as const];
        const terms = [
          ...left.map((choice) => [(starts[a] as number) + choice, 1] as const),
          ...right.map((choice) => [(starts[b] as number) + choice, 1] as const),
          ...excuse,
        ];
        rows.push({ terms, lower: -Infinity, upper: 1 });
      }
    }
  }
  // What is ruled out is no yes.
  const columns = costs.map((cost, column) => ({
    cost: cost === Infinity ? 0 : cost,
    most: column < own && cost === Infinity ? 0 : 1,
    isWhole: true,
  }));
  return modelData(columns, rows);
}

interface Crossing {
  readonly cost: number;
  readonly left: readonly number[];
  readonly right: readonly number[];
}

/**
 * Groups such that every choice on the left meets every one on the right at one cost: one row a
 * group is both shorter and tighter than one for each pair. Groups of one cost do not share a pair,
 * so that none is counted twice.
 */
function crossings({ pieces, together }: ChoiceProblem, a: number, b: number): readonly Crossing[] {
  const groups = new Map<string, { cost: number; left: number[]; right: number[] }>();
  for (const here of (pieces[a] ?? []).keys()) {
    const byCost = new Map<number, number[]>();
    for (const there of (pieces[b] ?? []).keys()) {
      const cost = together(a, here, b, there);
      if (cost > 0) byCost.set(cost, [...(byCost.get(cost) ?? []), there]);
    }
    for (const [cost, right] of byCost) {
      const key = `${cost} ${right.join()}`;
      const group = groups.get(key) ?? { cost, left: [], right };
      group.left.push(here);
      groups.set(key, group);
    }
  }
  return [...groups.values()];
}
