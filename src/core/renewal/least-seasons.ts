/** In how few seasons all can be renewed once, proven by a solver that is handed in. */
import type { Highs } from "highs";
import { canAllBe } from "./solve-years.ts";
import type { CoverHad, YearsProblem } from "./years-problem.ts";

export type LeastSeasons =
  /** In so many, and not in one fewer. */
  | { readonly kind: "proven"; readonly seasons: number }
  /** Time ran out: not in fewer than so many. */
  | { readonly kind: "at least"; readonly seasons: number }
  /** Not within the most seasons looked at. */
  | { readonly kind: "more than"; readonly seasons: number };

/** Seasons looked at. */
export const MOST_SEASONS_LOOKED_AT = 12;

/**
 * Each of the varieties borne seed once, whenever its lots end: what garden, covers and work let be.
 * What was set by hand is left aside.
 * @param clock seconds left, asked before each look
 */
export function leastSeasons(
  problem: YearsProblem,
  highs: Highs,
  clock: () => number,
): LeastSeasons {
  if (problem.items.length === 0) return { kind: "proven", seasons: 0 };
  let seasons = Math.max(
    fewestByCount(problem),
    1 + Math.max(...problem.items.map((item) => item.first)),
  );
  for (; seasons <= MOST_SEASONS_LOOKED_AT; seasons += 1) {
    const left = clock();
    if (left <= 0) return { kind: "at least", seasons };
    const canBe = canAllBe(onceWithin(problem, seasons), highs, left);
    if (canBe === null) return { kind: "at least", seasons };
    if (canBe) return { kind: "proven", seasons };
  }
  return { kind: "more than", seasons: MOST_SEASONS_LOOKED_AT };
}

/** Every variety due by the last of so many seasons, and not again. */
function onceWithin(problem: YearsProblem, seasons: number): YearsProblem {
  return {
    ...problem,
    seasons,
    items: problem.items.map((item) => ({
      ...item,
      deadline: seasons - 1,
      isLate: false,
      keeps: seasons,
    })),
    byHand: problem.items.map(() => ({ grown: 0, notGrown: 0 })),
  };
}

/** Counted by crossing sets, ground and work alone: never more than what is proven. */
function fewestByCount({ items, sets, covers, mostVarieties, groundM2 }: YearsProblem): number {
  const bySet = sets.map(({ members, apart }) => {
    const has = (cover: CoverHad) =>
      members.some((index) => items[index]?.cover === cover) ? covers[cover] : 0;
    // Bags give no room to what stays open: with them either all are bagged or all have a place.
    const most = Math.max(1, apart[0]?.places ?? 1, has("bag")) + has("cage");
    return Math.ceil(members.length / most);
  });
  const ground = items.reduce((sum, item) => sum + item.groundM2 * item.lead, 0);
  return Math.max(
    1,
    ...bySet,
    mostVarieties < Infinity ? Math.ceil(items.length / Math.max(1, mostVarieties)) : 1,
    groundM2 < Infinity ? Math.ceil(ground / groundM2 - 1e-9) : 1,
  );
}
