/**
 * Which variety is grown for seed in which season, as numbers alone: made from a plan by
 * `years-of-plan.ts`, judged by `judge-years.ts`, answered by a search and by a solver.
 * Seasons are counted from 0, the plan's own. A variety's seasons are a set of bits: bit 2 is set
 * where it bears seed in season 2.
 */

/** What a grower has so many of; bags stand for pollination by hand too. */
export type CoverHad = "cage" | "bag";

/** One variety to keep alive. */
export interface YearsItem {
  /** Id of the variety. */
  readonly id: string;
  /** Ground it takes in each season it stands, square metres. */
  readonly groundM2: number;
  /** 2: it stands a season before the one it bears seed in, and takes ground in both. */
  readonly lead: 1 | 2;
  /** First season it can bear seed in. */
  readonly first: number;
  /**
   * The last season whose seed is ripe before its best lot is under the standard, by the end of the
   * band that is counted with; beyond the last season: it need not be grown yet.
   */
  readonly deadline: number;
  /** The same by the early end: each season it waits beyond costs a little. */
  readonly early: number;
  /** Its seed may be dead already, or nobody knows: as soon as can be, and each season it waits counts. */
  readonly isLate: boolean;
  /** Seasons from one growing to the last that brings fresh seed before that seed may be dead. */
  readonly keeps: number;
  /** Metres it must stand from what it crosses with; infinite: not known. */
  readonly needM: number;
  /**
   * Which of the grower's covers keeps pollen from it and lets it bear true seed; none: no cover
   * does. Of a set in which some take no cage, none takes one.
   */
  readonly cover: CoverHad | "none";
  /** What sheds pollen around the garden lies too near to every place: never without a cover. */
  readonly isExposed: boolean;
}

/** So many places lie so far from each other, and as far from pollen sources around the garden. */
export interface PlacesApart {
  readonly metres: number;
  readonly places: number;
}

/** Varieties that cross with each other, in one step or several. */
export interface CrossingSet {
  readonly members: readonly number[];
  /** For each distance some member needs, nearest first: places that far apart, at least 1. */
  readonly apart: readonly PlacesApart[];
}

/** Ground that must rest from a set of varieties before it bears their seed again. */
export interface RestRule {
  readonly members: readonly number[];
  /** Whole years that must lie between. */
  readonly years: number;
  /** Square metres the set had in seasons before: [0] the season before the first, and so on. */
  readonly before: readonly number[];
}

/** What the grower set by hand for one variety, as bits. */
export interface ByHand {
  readonly grown: number;
  readonly notGrown: number;
}

export interface YearsProblem {
  readonly seasons: number;
  readonly items: readonly YearsItem[];
  readonly sets: readonly CrossingSet[];
  readonly rests: readonly RestRule[];
  /** Ground for seed in one season, square metres; infinite: not known. */
  readonly groundM2: number;
  /** All ground there is, over which seed moves from year to year; never less than that for seed. */
  readonly landM2: number;
  /** Varieties that may bear seed in one season; infinite: no limit. */
  readonly mostVarieties: number;
  readonly covers: Readonly<Record<CoverHad, number>>;
  readonly byHand: readonly ByHand[];
}

/** Whether the grower has a cover for it at all. */
export function canCover({ covers }: Pick<YearsProblem, "covers">, { cover }: YearsItem): boolean {
  return cover !== "none" && covers[cover] > 0;
}

/** For each item its seasons, as bits. */
export type Years = readonly number[];

export function isGrown(bits: number, season: number): boolean {
  return (bits & (1 << season)) !== 0;
}

/** Seasons of bits, in order. */
export function seasonsOf(bits: number): readonly number[] {
  const seasons: number[] = [];
  for (let season = 0; bits >> season !== 0; season += 1) {
    if (isGrown(bits, season)) seasons.push(season);
  }
  return seasons;
}

/** Whether it stands its year before in a season: a biennial that bears seed in the next. */
export function isFirstYear({ lead }: YearsItem, bits: number, season: number): boolean {
  return lead === 2 && isGrown(bits, season + 1);
}

/** The same problem with some of its items left out; they keep their numbers and are never grown. */
export function withoutItems(problem: YearsProblem, left: ReadonlySet<number>): YearsProblem {
  return {
    ...problem,
    items: problem.items.map((item, index) =>
      left.has(index) ? { ...item, deadline: Infinity, isLate: false } : item,
    ),
    byHand: problem.byHand.map((hand, index) =>
      left.has(index) ? { grown: 0, notGrown: 0 } : hand,
    ),
  };
}
