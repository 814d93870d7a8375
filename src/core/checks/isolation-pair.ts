/** One directed pair: a seed parent, a pollen source, and what keeps them apart, if anything. */
import type { Basis } from "../calendar/basis.ts";
import { findingId } from "./finding.ts";
import type { FigureReason } from "../distances/required-distance.ts";
import type { IsolationFigure, Relation } from "../kinds/crop.ts";
import type { StatedStep } from "../distances/stated-adjustments.ts";
import type { Point } from "../geometry/point.ts";
import type { DayNumber } from "../model/day.ts";
import type { WayLists } from "../nearness/way-lists.ts";

/** What clears a pair, strongest first; `conflict` when nothing does; `unknown` when it cannot be told. */
export type Standing = "distance" | "time" | "cover" | "conflict" | "unknown";

/** How a way stands, as columns have it; 0: distance clears it, or the two do not cross that way. */
const CODES: Readonly<Record<Standing, number>> = {
  distance: 0,
  time: 1,
  cover: 2,
  conflict: 3,
  unknown: 4,
};

/** Added to a code where the two rarely cross. */
export const RARELY = 8;

export function codeOf(standing: Standing, relation: Relation): number {
  const code = CODES[standing];
  return code !== 0 && relation === "rarely" ? code + RARELY : code;
}

/** Whether a code says that a way stands so. */
export function isStanding(code: number, standing: Standing): boolean {
  return code % RARELY === CODES[standing];
}

/** Where a required distance comes from. */
export interface Requirement {
  readonly metres: number;
  readonly from: "planting" | "variety" | "figure";
  /** Id of the published figure within its kind, when `from` is "figure". */
  readonly figure: string | null;
  /** Id of the figure's source in the crop base, when there is one. */
  readonly source: string | null;
  /** Why this figure and no other; null: it was typed, or picked by hand. */
  readonly reason: FigureReason | null;
  /** The figure picked by hand for the variety. */
  readonly picked?: IsolationFigure;
  /** The level has no figure: this one, of a laxer level, is the least, and enough is not known. */
  readonly isFloor?: boolean;
  /** The flower form decides the distance and was not said, so the longest is taken. */
  readonly isFormUnsaid?: boolean;
  /** What a source asks beside a wild plant, where that made the distance. */
  readonly increase?: string;
  /** What regulations let the grower change, step by step; absent: nothing was changed. */
  readonly adjustments?: readonly StatedStep[];
}

/** On what a pair rests that nothing but time clears. */
export interface TimeClear {
  /** Ids of the two by their bloom. */
  readonly earlier: string;
  readonly later: string;
  /** On what the last day of the earlier and the first day of the later rest. */
  readonly closes: Basis;
  readonly opens: Basis;
  /** The less sure of the two. */
  readonly basis: Basis;
  /** One is counted in heat and the other in days: not on one basis. */
  readonly isCountedUnlike: boolean;
  /** Whether dates carry it: no rule of thumb, and one basis. */
  readonly isSure: boolean;
  /** The last safe day: the earlier may flower up to and on it ... */
  readonly lastDay: DayNumber;
  /** ... if the later opens no sooner than this. */
  readonly firstDay: DayNumber;
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
  /** Where time alone clears it; null: it does not, or a cover clears it too. */
  readonly time: TimeClear | null;
  /** Stands that lack bloom dates, of the two. */
  readonly lacksBloom: readonly string[];
}

/** One or both ways of two stands. */
export type PairWays = readonly IsolationPair[];

/** Pairs by how they stand. */
export interface JudgedPairs {
  /** All directed pairs that stand so, in the order of all pairs. */
  readonly standing: (standing: Standing) => readonly IsolationPair[];
  /** Of those judged in this run, one or both ways of any two where one way stands so. */
  readonly freshWays: (standing: Standing) => readonly PairWays[];
  /** All pairs in columns, where all were judged in this run; else null. */
  readonly ways: WayLists<IsolationPair> | null;
}

/** @param fresh those of the pairs that were judged in this run */
export function judgedAmong(
  pairs: readonly IsolationPair[],
  fresh: readonly IsolationPair[],
): JudgedPairs {
  return {
    ways: null,
    standing: (standing) => pairs.filter((pair) => pair.standing === standing),
    freshWays: (standing) =>
      [...unorderedPairs(fresh).values()].filter((ways) =>
        ways.some((way) => way.standing === standing),
      ),
  };
}

/**
 * Distances short of the requirement by less than this pass: published figures are minima, and a
 * micrometre is rounding, not ground.
 */
export const DISTANCE_TOLERANCE_M = 1e-6;

/** No distance is known, or only the least of a laxer level, and the pair lies beyond that. */
export function lacksFigure({
  requirement,
  distanceM,
}: Pick<IsolationPair, "requirement" | "distanceM">): boolean {
  if (requirement === null) return true;
  return requirement.isFloor === true && distanceM >= requirement.metres - DISTANCE_TOLERANCE_M;
}

/** Made once for a list of directed pairs. */
const known = new WeakMap<
  readonly IsolationPair[],
  ReadonlyMap<string, readonly IsolationPair[]>
>();

/** What two stands are called by together: the id of the finding about them. */
export function pairKey({ seedParent, pollenSource }: IsolationPair): string {
  return findingId("isolation", [seedParent, pollenSource]);
}

/** One or both directions of each pair of stands, by `pairKey`, in the order they are first met. */
export function unorderedPairs(
  pairs: readonly IsolationPair[],
): ReadonlyMap<string, readonly IsolationPair[]> {
  const made = known.get(pairs);
  if (made) return made;
  const byKey = new Map<string, IsolationPair[]>();
  for (const pair of pairs) {
    const key = pairKey(pair);
    const ways = byKey.get(key);
    if (ways) ways.push(pair);
    else byKey.set(key, [pair]);
  }
  known.set(pairs, byKey);
  return byKey;
}

/** Pairs of stands of which at least one direction stands so. */
export function countPairs(pairs: readonly IsolationPair[], standing: Standing): number {
  const all = [...unorderedPairs(pairs).values()];
  return all.filter((ways) => ways.some((way) => way.standing === standing)).length;
}
