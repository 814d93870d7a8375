/**
 * The sets of seasons in which one variety can be grown so that its seed never dies, and what each
 * set costs in points by itself. No source for the points; our choice.
 */
import {
  type ByHand,
  type YearsItem,
  type YearsProblem,
  isGrown,
  seasonsOf,
} from "./years-problem.ts";

/** Points. What all work rests on: one variety grown for seed once. */
export const GROWING = 20;
/** One variety more under a cover in a season. */
export const COVERED = 8;
/**
 * One season that a variety waits whose seed may be dead already: more than growing it once more
 * later costs, so that it never waits to spare that.
 */
export const WAITING = 200;
/** One season that a variety waits past the early end of its band. */
const PAST_EARLY = 5;
/** Grown in the last season that can save it: should the crop fail, it is lost. */
const LAST_CHANCE = 3;
/** One unit of load in a season that has the mean load; each more costs more, so that seasons are even. */
const EVEN = 10;
/** Load of a season that bears seed, and of a biennial's year before; see season-work.ts. */
export const SEED_LOAD = 2;
export const FIRST_YEAR_LOAD = 1;

/** Points of the first unit of load in a season; the second costs twice as much, and so on. */
export function loadPrice({ items, seasons }: Pick<YearsProblem, "items" | "seasons">): number {
  const all = items.reduce(
    (sum, { lead }) => sum + SEED_LOAD + (lead === 2 ? FIRST_YEAR_LOAD : 0),
    0,
  );
  return EVEN / Math.max(1, all / seasons);
}

export interface ItemYears {
  readonly bits: number;
  readonly points: number;
}

/** The last season it must be grown in again after one, by what fresh and old seed keep. */
export function nextBy(item: YearsItem, season: number): number {
  return Math.max(season + item.keeps, item.isLate ? -1 : item.deadline);
}

/**
 * Season in which its seed may be dead for want of a growing; null: it lives to the end. A late
 * variety must be grown at some time within the seasons.
 */
export function diesBy(item: YearsItem, bits: number, seasons: number): number | null {
  const grown = seasonsOf(bits);
  const last = seasons - 1;
  const [first = Infinity] = grown;
  const deadline = item.isLate ? last : item.deadline;
  if (first > deadline && deadline <= last) return deadline;
  for (const [at, season] of grown.entries()) {
    const by = nextBy(item, season);
    if (by > last) return null;
    if ((grown[at + 1] ?? Infinity) > by) return by;
  }
  return null;
}

/** Points of a variety's seasons by themselves. */
export function itemPoints(item: YearsItem, bits: number, seasons: number): number {
  const grown = seasonsOf(bits);
  const [first] = grown;
  let points = grown.length * GROWING;
  if (first === undefined) return points;
  if (item.isLate) points += WAITING * (first - item.first);
  else {
    points += PAST_EARLY * Math.max(0, first - Math.max(item.early, item.first));
    if (first === item.deadline) points += LAST_CHANCE;
  }
  for (const season of grown) {
    if (isGrown(bits, nextBy(item, season)) && nextBy(item, season) < seasons)
      points += LAST_CHANCE;
  }
  return points;
}

/** Whether a set of seasons keeps it alive, can be grown, and is as set by hand. */
export function canBe(item: YearsItem, hand: ByHand, bits: number, seasons: number): boolean {
  if ((bits & hand.grown) !== hand.grown || (bits & hand.notGrown) !== 0) return false;
  if ((bits & ((1 << item.first) - 1)) !== 0) return false;
  return diesBy(item, bits, seasons) === null;
}

/**
 * All sets that can be, the cheapest first, without those that hold a cheaper one: what is grown
 * besides takes ground and room and gives nothing back.
 */
export function yearsOfItem(problem: YearsProblem, index: number): readonly ItemYears[] {
  const item = problem.items[index] as YearsItem;
  const hand = problem.byHand[index] ?? { grown: 0, notGrown: 0 };
  const { seasons } = problem;
  const all: ItemYears[] = [];
  for (let bits = 0; bits < 1 << seasons; bits += 1) {
    if (canBe(item, hand, bits, seasons)) {
      all.push({ bits, points: itemPoints(item, bits, seasons) });
    }
  }
  return all
    .filter(
      ({ bits, points }) =>
        !all.some(
          (less) => less.bits !== bits && (less.bits & bits) === less.bits && less.points <= points,
        ),
    )
    .sort((a, b) => a.points - b.points || a.bits - b.bits);
}
