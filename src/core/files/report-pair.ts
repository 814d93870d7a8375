/** One directed pair of stands as `wideberth check --json` prints it. */
import type { Basis } from "../calendar/basis.ts";
import { type Bloom, bloomBasis } from "../calendar/bloom-window.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { IsolationPair, Requirement, Standing, TimeClear } from "../checks/isolation-pair.ts";
import type { SeasonsTried } from "../crossing-share/seasons-tried.ts";
import { localFrame } from "../geometry/local-frame.ts";
import type { Point } from "../geometry/point.ts";
import type { Relation } from "../kinds/crop.ts";
import { isoFromDay } from "../model/day.ts";
import type { Plan } from "../model/plan.ts";
import { whyWords } from "../checks/pair-words.ts";

/** Id of a stand as its file has it. */
export type ReportId = string | number;

/** Of a pair that time alone clears. Days are `YYYY-MM-DD`. */
export interface ReportTime {
  readonly earlier: ReportId;
  readonly later: ReportId;
  readonly closes: Basis;
  readonly opens: Basis;
  readonly basis: Basis;
  readonly isCountedUnlike: boolean;
  /** Whether it clears with nothing more to say. */
  readonly isSure: boolean;
  /** The earlier must be over by `lastDay`, and the later not open before `firstDay`. */
  readonly lastDay: string;
  readonly firstDay: string;
}

/** Where the distance a pair needs comes from. */
type ReportRequirement = Pick<
  Requirement,
  "from" | "figure" | "source" | "isFloor" | "isFormUnsaid" | "increase"
> & {
  /** In words: which figure and why this one, and what changed it. */
  readonly why: string;
};

/** One directed pair. Field names are a contract: see docs/command-line.md. */
export interface ReportPair {
  readonly seedParent: ReportId;
  readonly pollenSource: ReportId;
  readonly distanceM: number;
  readonly requiredM: number | null;
  readonly overlapDays: number | null;
  readonly gapDays: number | null;
  readonly standing: Standing;
  readonly relation: Relation;
  readonly guardDays: number;
  /** On what the windows compared rest; null where one is missing. */
  readonly bloomBasis: {
    readonly seedParent: Basis | null;
    readonly pollenSource: Basis | null;
  };
  /** On what a pair rests that time alone clears, and the last safe days; null: it does not. */
  readonly time: ReportTime | null;
  readonly requirement: ReportRequirement | null;
  /** Only where years were asked for; null: they make no difference to this pair, or are unknown. */
  readonly seasons?: SeasonsTried | null;
  /** Nearest points, of the seed parent first: [x, y] sheet metres; [longitude, latitude] or null. */
  readonly closest: {
    readonly sheetM: readonly (readonly [number, number])[];
    readonly lonLat: readonly (readonly [number, number])[] | null;
  };
}

/** Sheet points to [longitude, latitude]; null where the site has no position. */
export type LonLatOf = ((point: Point) => readonly [number, number]) | null;

export function lonLatReader({ site }: Plan): LonLatOf {
  if (!site.position) return null;
  const frame = localFrame(site.position, site.upBearingDeg);
  return (point) => {
    const { longitude, latitude } = frame.toLonLat(point);
    return [longitude, latitude];
  };
}

export function reportPair(
  pair: IsolationPair,
  idOf: (id: string) => ReportId,
  lonLatOf: LonLatOf,
  { result: { standById } }: CheckedLayout,
): ReportPair {
  const { requirement } = pair;
  return {
    seedParent: idOf(pair.seedParent),
    pollenSource: idOf(pair.pollenSource),
    distanceM: pair.distanceM,
    requiredM: pair.requiredM,
    overlapDays: pair.overlapDays,
    gapDays: pair.gapDays,
    standing: pair.standing,
    relation: pair.relation,
    guardDays: pair.guardDays,
    bloomBasis: {
      seedParent: basisOf(standById.get(pair.seedParent)?.receives),
      pollenSource: basisOf(standById.get(pair.pollenSource)?.sheds),
    },
    time: pair.time && reportTime(pair.time, idOf),
    requirement: requirement && {
      from: requirement.from,
      figure: requirement.figure,
      source: requirement.source,
      why: whyWords(requirement),
      ...(requirement.isFloor === true ? { isFloor: true } : {}),
      ...(requirement.isFormUnsaid === true ? { isFormUnsaid: true } : {}),
      ...(requirement.increase === undefined ? {} : { increase: requirement.increase }),
    },
    closest: {
      sheetM: pair.where.map(({ x, y }) => [x, y] as const),
      lonLat: lonLatOf && pair.where.map(lonLatOf),
    },
  };
}

function basisOf(bloom: Bloom | null | undefined): Basis | null {
  return bloom ? bloomBasis(bloom) : null;
}

function reportTime(time: TimeClear, idOf: (id: string) => ReportId): ReportTime {
  return {
    ...time,
    earlier: idOf(time.earlier),
    later: idOf(time.later),
    lastDay: isoFromDay(time.lastDay),
    firstDay: isoFromDay(time.firstDay),
  };
}
