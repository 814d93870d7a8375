/** What one season asks of garden and grower: places apart, covers, ground, and work. */
import { COVERED, FIRST_YEAR_LOAD, SEED_LOAD, loadPrice } from "./item-years.ts";
import {
  type CoverHad,
  type CrossingSet,
  type YearsItem,
  type YearsProblem,
  canCover,
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
 * A cage keeps pollen in as well as out. Bags do not: the other flowers of what is bagged are open,
 * so it stands apart from every one that stays open, or none stays open.
 * @param grown members of the set that bear seed in the season
 */
export function coversOfSet(
  problem: Pick<YearsProblem, "items" | "covers">,
  set: CrossingSet,
  grown: readonly number[],
): SetCovers {
  const itemAt = (index: number) => problem.items[index] as YearsItem;
  const isCoverable = (index: number) => canCover(problem, itemAt(index));
  const isBag = (index: number) => isCoverable(index) && itemAt(index).cover === "bag";
  const stays = grown.filter((index) => !isCoverable(index));
  const mayStay = grown
    .filter((index) => isCoverable(index) && !itemAt(index).isExposed)
    .sort((a, b) => itemAt(a).needM - itemAt(b).needM || a - b);
  const needOf = (items: readonly number[]) =>
    Math.max(0, ...items.map((index) => itemAt(index).needM));
  const standApart = stays.length + grown.filter(isBag).length;
  let open: readonly number[] | null = stays.length === 0 ? [] : null;
  for (const needM of new Set([needOf(stays), ...mayStay.map((index) => itemAt(index).needM)])) {
    const room = placesApart(set, needM) - standApart;
    if (needM < needOf(stays) || room < 0) continue;
    const near = mayStay.filter((index) => itemAt(index).needM <= needM);
    const caged = near.filter((index) => !isBag(index));
    const stay = [...stays, ...near.filter(isBag), ...caged.slice(0, room)];
    if (stay.length > (open?.length ?? -1)) open = stay;
  }
  const isOpen = new Set(open ?? stays);
  return {
    covered: grown.filter((index) => !isOpen.has(index)),
    tooMany: open ? 0 : standApart - placesApart(set, needOf(stays)),
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
  const ofCover = (cover: CoverHad) =>
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
