/** What one lot has behind it: how it came about, and what its line has been through. */
import type { Kind } from "../kinds/crop.ts";
import type { Lot, Variety } from "../model/plan.ts";

/**
 * `grown`: harvested from plants; `split`: a part of another lot; `mixed`: of several lots;
 * `start`: nothing before it is known.
 */
export type HowItCame = "grown" | "split" | "mixed" | "start";

/** The growing-out a lot was harvested from, with every number as it was written down. */
export interface Growing {
  readonly plot: string | null;
  readonly season: string | null;
  readonly seedPlants: number | null;
  readonly pollenPlants: number | null;
  readonly isEqualSeed: boolean;
  readonly isHandPollinated: boolean;
  readonly size: GrowingSize;
}

/**
 * Effective population of a growing-out, or why none is told. `at least`: plants that gave pollen
 * were not counted, and those that gave seed stand for them.
 */
export type GrowingSize =
  | { readonly effective: number; readonly isAtLeast: boolean }
  | { readonly effective: null; readonly why: WhyNoSize };

export type WhyNoSize = "no seed plants" | "no pollen plants" | "no males" | "no kind";

/** What kept others' pollen away while a lot grew. */
export type IsolationMet = "met" | "not met" | "not told" | "not recorded";

export interface LineLot {
  readonly lot: Lot;
  readonly variety: Variety | undefined;
  readonly kind: Kind | undefined;
  readonly year: number | null;
  readonly how: HowItCame;
  /** Lots it was grown from or made of, in the order they are named. */
  readonly parents: readonly LineLot[];
  /** Whether the parents are read from this plan's plots, for want of a word in the lot. */
  readonly isReadFromPlan: boolean;
  readonly growing: Growing | null;
  readonly isolation: IsolationMet;
  readonly past: Past;
}

/** What a line has been through up to a lot. Of several parents the one that lost most counts. */
export interface Past {
  /** Growings-out from the first lot known, by the longest way. */
  readonly generations: number;
  /** Diversity lost over the growings-out whose effective population is known, 0 to 1. */
  readonly lost: number;
  /** The parent that lost most: its growings-out are the ones counted; null: nothing before it. */
  readonly through: LineLot | null;
  /** Whether a growing-out before or with it has no effective population: more is lost than is said. */
  readonly hasUnknown: boolean;
  /** Whether a lot before it, or itself, was not isolated, or cannot be told to have been. */
  readonly hasCrossing: boolean;
  readonly hasDoubt: boolean;
}
