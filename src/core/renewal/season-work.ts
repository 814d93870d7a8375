/** What one season asks of garden and grower: places apart, covers, ground, and work. */
import { COVERED, FIRST_YEAR_LOAD, SEED_LOAD, loadPrice } from "./item-years.ts";
import {
  type CrossingSet,
  type YearsItem,
  type YearsProblem,
  isFirstYear,
  isGrown,
} from "./years-problem.ts";

/** Places for varieties of a set when the one that asks most needs so many metres. */
export function placesApart({ apart }: CrossingSet, needM: number): number {
  return apart.find(({ metres }) => metres >= needM)?.places ?? 1;
}

/** Which of a set's varieties of one season go under a cover, so that the others stand apart. */
export interface SetCovers {
  readonly covered: readonly number[];
  /** Varieties that find no place apart, with every cover of the kind they can have. */
  readonly tooMany: number;
}

/**
 * The fewest covers. As many as can stay open, those that need the least distance first; what is
 * exposed to pollen from around the garden is covered wherever the grower has a cover for it.
 * @param grown members of the set that bear seed in the season
 */
export function coversOfSet(
  { items, covers }: Pick<YearsProblem, "items" | "covers">,
  set: CrossingSet,
  grown: readonly number[],
): SetCovers {
  const itemAt = (index: number) => items[index] as YearsItem;
  const canCover = (index: number) => covers[itemAt(index).cover] > 0;
  const isUnderCover = (index: number) => itemAt(index).isExposed && canCover(index);
  const open = grown.filter((index) => !isUnderCover(index));
  // What cannot be covered stays; of the others those go first that need the most.
  const inOrder = [...open].sort(
    (a, b) =>
      Number(canCover(a)) - Number(canCover(b)) || itemAt(a).needM - itemAt(b).needM || a - b,
  );
  const stays = inOrder.filter((index) => !canCover(index));
  let most = 0;
  for (let count = stays.length; count <= inOrder.length; count += 1) {
    const needM = Math.max(0, ...inOrder.slice(0, count).map((index) => itemAt(index).needM));
    if (count <= 1 || count <= placesApart(set, needM)) most = Math.max(most, count);
  }
  const kept = Math.max(most, stays.length);
  const needM = Math.max(0, ...stays.map((index) => itemAt(index).needM));
  const tooMany = most >= stays.length ? 0 : stays.length - placesApart(set, needM);
  return {
    covered: [...inOrder.slice(kept), ...grown.filter(isUnderCover)],
    tooMany: Math.max(0, tooMany),
  };
}

export interface SeasonWork {
  /** Items that bear seed, and biennials in the year before. */
  readonly grown: readonly number[];
  readonly firstYear: readonly number[];
  readonly covered: readonly number[];
  readonly cages: number;
  readonly bags: number;
  readonly groundM2: number;
  /** Varieties that find no place apart, set by set: [set, how many]. */
  readonly tooMany: readonly (readonly [set: number, varieties: number])[];
  /** Points of covers and of the load, which grow with each more: so that the seasons are even. */
  readonly points: number;
}

export function seasonWork(
  problem: YearsProblem,
  bitsOf: (item: number) => number,
  season: number,
): SeasonWork {
  const grown: number[] = [];
  const firstYear: number[] = [];
  for (const [index, item] of problem.items.entries()) {
    const bits = bitsOf(index);
    if (isGrown(bits, season)) grown.push(index);
    if (isFirstYear(item, bits, season)) firstYear.push(index);
  }
  const groundM2 = [...grown, ...firstYear].reduce(
    (sum, index) => sum + (problem.items[index]?.groundM2 ?? 0),
    0,
  );
  const isIn = new Set(grown);
  const covered: number[] = [];
  const tooMany: (readonly [number, number])[] = [];
  for (const [at, set] of problem.sets.entries()) {
    const here = set.members.filter((index) => isIn.has(index));
    if (here.length === 0) continue;
    const found = coversOfSet(problem, set, here);
    covered.push(...found.covered);
    if (found.tooMany > 0) tooMany.push([at, found.tooMany]);
  }
  const ofCover = (cover: YearsItem["cover"]) =>
    covered.filter((index) => problem.items[index]?.cover === cover).length;
  const load = grown.length * SEED_LOAD + firstYear.length * FIRST_YEAR_LOAD;
  return {
    grown,
    firstYear,
    covered,
    cages: ofCover("cage"),
    bags: ofCover("bag"),
    groundM2,
    tooMany,
    points: covered.length * COVERED + (loadPrice(problem) * load * (load + 1)) / 2,
  };
}

/** Square metres a set bears seed on in a season; below 0: a season before the first. */
export function restGround(
  problem: YearsProblem,
  rest: YearsProblem["rests"][number],
  bitsOf: (item: number) => number,
  season: number,
): number {
  if (season < 0) return rest.before[-season - 1] ?? 0;
  return rest.members.reduce(
    (sum, index) =>
      sum + (isGrown(bitsOf(index), season) ? (problem.items[index]?.groundM2 ?? 0) : 0),
    0,
  );
}
