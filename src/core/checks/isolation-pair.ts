/** One directed pair: a seed parent, a pollen source, and what keeps them apart, if anything. */
import type { Relation } from "../kinds/crop.ts";
import type { StatedStep } from "../distances/stated-adjustments.ts";
import type { Point } from "../geometry/point.ts";

/** What clears a pair, strongest first; `conflict` when nothing does; `unknown` when it cannot be told. */
export type Standing = "distance" | "time" | "cover" | "conflict" | "unknown";

/** Where a required distance comes from. */
export interface Requirement {
  readonly metres: number;
  readonly from: "planting" | "variety" | "figure";
  /** Id of the published figure within its kind, when `from` is "figure". */
  readonly figure: string | null;
  /** Id of the figure's source in the crop base, when there is one. */
  readonly source: string | null;
  /** In words: which figure and why this one, and what changed it. */
  readonly why: string;
  /** Whether the figure was picked by hand for the variety. */
  readonly isPicked?: boolean;
  /** The level has no figure: this one, of a laxer level, is the least, and enough is not known. */
  readonly isFloor?: boolean;
  /** The flower form decides the distance and was not said, so the longest is taken. */
  readonly isFormUnsaid?: boolean;
  /** What a source asks beside a wild plant, where that made the distance. */
  readonly increase?: string;
  /** What regulations let the grower change, step by step; absent: nothing was changed. */
  readonly adjustments?: readonly StatedStep[];
}

export interface IsolationPair {
  /** Id of the planting whose seed is kept. */
  readonly seedParent: string;
  /** Id of the planting or surrounding that sheds pollen. */
  readonly pollenSource: string;
  /** Shortest distance between the outlines, metres. */
  readonly distanceM: number;
  /** Closest points: of the seed parent, of the pollen source. */
  readonly where: readonly [Point, Point];
  /** Distance the seed parent needs, or null when no figure is known. */
  readonly requiredM: number | null;
  readonly requirement: Requirement | null;
  readonly relation: Relation;
  /** Days open together by the outer windows; null when a window is missing. */
  readonly overlapDays: number | null;
  /** Whole days between the windows; null when a window is missing. */
  readonly gapDays: number | null;
  /** Share of the seed parent's receptive days on which the source sheds, 0 to 1; null: unknown. */
  readonly exposedShare: number | null;
  /** Days that must lie between the windows for time to clear the pair. */
  readonly guardDays: number;
  readonly standing: Standing;
  /** Stands that lack bloom dates, of the two. */
  readonly lacksBloom: readonly string[];
}
