/**
 * A set of choices for many pieces without a proof: a first one by branch and bound, cut off early,
 * then a few pieces at a time settled anew while the others are held, until none gets cheaper.
 */
import { type ChoiceAnswer, type ChoiceProblem, cheapestChoices } from "./choice-search.ts";
import { costOf } from "./choice-proof.ts";

/** Steps of the first set, and of each few pieces. */
const FIRST_STEPS = 4000;
const ROUND_STEPS = 12_000;
/** Pieces settled anew at a time. */
const FEW = 8;
const MOST_ROUNDS = 6;
const EPSILON = 1e-9;

/** Proven where branch and bound ended by itself; yields after each few pieces. */
export function* searchedChoices(
  problem: ChoiceProblem,
): Generator<ChoiceAnswer, ChoiceAnswer, void> {
  const first = cheapestChoices(problem, FIRST_STEPS);
  if (first.isProven || first.taken === null) return first;
  let { taken, cost }: { taken: readonly number[]; cost: number } = {
    taken: first.taken,
    cost: first.cost,
  };
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const before = cost;
    for (const piece of problem.pieces.keys()) {
      yield { taken, cost, isProven: false };
      const better = settledAnew(problem, taken, nearest(problem, taken, piece));
      if (better === null) continue;
      const now = costOf(problem, better);
      if (now < cost - EPSILON) [taken, cost] = [better, now];
    }
    if (cost >= before - EPSILON) break;
  }
  return { taken, cost, isProven: false };
}

/** A piece and those that most of its choices are tied to by what is taken of them. */
function nearest(
  { pieces, together }: ChoiceProblem,
  taken: readonly number[],
  piece: number,
): readonly number[] {
  const ties = pieces.map((_, other) => {
    if (other === piece) return Infinity;
    return (pieces[piece] ?? []).filter(
      (__, choice) => together(piece, choice, other, taken[other] ?? 0) > 0,
    ).length;
  });
  return [...pieces.keys()]
    .sort((a, b) => (ties[b] ?? 0) - (ties[a] ?? 0))
    .slice(0, FEW)
    .filter((other) => (ties[other] ?? 0) > 0);
}

/** Some pieces free, all others as they are taken. */
function settledAnew(
  problem: ChoiceProblem,
  taken: readonly number[],
  free: readonly number[],
): readonly number[] | null {
  const isFree = new Set(free);
  const options = problem.pieces.map((list, piece) =>
    isFree.has(piece) ? [...list.keys()] : [taken[piece] ?? 0],
  );
  const { taken: found } = cheapestChoices(
    {
      ...problem,
      pieces: options.map((list, piece) =>
        list.flatMap((choice) => problem.pieces[piece]?.[choice] ?? []),
      ),
      together: (a, i, b, j) => problem.together(a, options[a]?.[i] ?? 0, b, options[b]?.[j] ?? 0),
    },
    ROUND_STEPS,
  );
  return found && found.map((choice, piece) => options[piece]?.[choice] ?? 0);
}
