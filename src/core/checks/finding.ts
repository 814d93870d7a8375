/**
 * What the checks have to say about a plan: plain data, JSON-safe, in a stable order. Words are
 * made from it by describe-finding.ts alone.
 */
import type { Point } from "../geometry/point.ts";
import type { IsolationPair } from "./isolation-pair.ts";

/** `conflict`: seed would mix; `caution`: look at it; `unknown`: a figure or date is missing. */
export type Severity = "conflict" | "caution" | "unknown";

/** Two places a finding is measured between, in sheet metres. */
export type Where = readonly [Point, Point];

interface FindingBase {
  /** Check name and sorted subject ids; the same finding keeps its id while numbers change. */
  readonly id: string;
  readonly severity: Severity;
  /** Ids of the plantings, beds and surroundings it is about, sorted. */
  readonly subjects: readonly string[];
  /** Measured distance, metres, or null where the check measures none. */
  readonly measuredM: number | null;
  /** Required distance, metres, or null. */
  readonly requiredM: number | null;
  readonly where: Where | null;
}

/** Two stands mix: at risk one way or both. */
export interface IsolationFinding extends FindingBase {
  readonly check: "isolation";
  /** The directions at risk, one or two, worst first. */
  readonly atRisk: readonly IsolationPair[];
}

/** A stand has no bloom dates, so pairs too close for distance cannot be cleared by time. */
export interface MissingBloomFinding extends FindingBase {
  readonly check: "missing-bloom";
  readonly subject: string;
  /** The stands it cannot be cleared against. */
  readonly against: readonly string[];
}

/** A seed parent has no isolation distance: nothing published at this level, none typed. */
export interface MissingFigureFinding extends FindingBase {
  readonly check: "missing-figure";
  readonly subject: string;
  readonly against: readonly string[];
}

/** A planting reaches out of its bed, or a bed out of the site; or a planting stands in no bed. */
export interface OutsideFinding extends FindingBase {
  readonly check: "outside";
  readonly inner: string;
  /** Id of the bed; "site" for the site outline; "beds" for a planting that stands in none. */
  readonly outer: string;
}

/** More plants than fit on the ground at the kind's spacing. */
export interface CrowdedFinding extends FindingBase {
  readonly check: "crowded";
  readonly subject: string;
  readonly plants: number;
  readonly fits: number;
  /** The spacing, metres, and who gives it. */
  readonly inRowM: number;
  readonly betweenRowsM: number;
  readonly source: string;
}

/** Two plantings lie on the same ground. `measuredM` is how deep they overlap. */
export interface OverlapFinding extends FindingBase {
  readonly check: "overlap";
}

/** Seed of a hybrid will not come true. */
export interface HybridFinding extends FindingBase {
  readonly check: "hybrid-seed";
  readonly subject: string;
}

/** A covered stand of an insect-pollinated outcrosser sets no seed by itself. */
export interface CoverFinding extends FindingBase {
  readonly check: "cover-care";
  readonly subject: string;
  /** `no-pollinators`: insects are kept out; `wind-passes`: a cage does not stop wind pollen. */
  readonly trouble: "no-pollinators" | "wind-passes";
}

/** Fewer seed plants of a variety than its kind needs. */
export interface PopulationFinding extends FindingBase {
  readonly check: "population";
  readonly variety: string;
  readonly plants: number;
  readonly needed: number;
  /** Which of the kind's two numbers falls short. */
  readonly floor: "viable" | "maintenance";
  readonly source: string;
}

/** Seed would ripen after the first autumn frost. */
export interface LateSeedFinding extends FindingBase {
  readonly check: "late-seed";
  readonly subject: string;
  /** Day numbers: when the first seed is likely and at the latest ripe, and the frost date given. */
  readonly ripeLikely: number;
  readonly ripeLatest: number;
  readonly frost: number;
}

/** A biennial sown in place this season will not flower in it. */
export interface BiennialFinding extends FindingBase {
  readonly check: "biennial";
  readonly subject: string;
}

/** A safety caution that applies to stands of this plan. */
export interface SafetyFinding extends FindingBase {
  readonly check: "safety";
  /** Id of a caution in the crop base. */
  readonly caution: string;
}

/** A seed parent lies on ground where something it can cross with grew too few years ago. */
export interface VolunteersFinding extends FindingBase {
  readonly check: "volunteers";
  readonly subject: string;
  /** Earlier crops it lies on, the latest first. */
  readonly crops: readonly {
    readonly id: string;
    readonly kind: string;
    readonly year: number;
    readonly varietyName: string | null;
  }[];
  /** Years the ground should have been free of them, and who says so; null: none published. */
  readonly landYears: number | null;
  readonly source: string | null;
}

export type Finding =
  | IsolationFinding
  | MissingBloomFinding
  | MissingFigureFinding
  | OutsideFinding
  | OverlapFinding
  | CrowdedFinding
  | HybridFinding
  | CoverFinding
  | PopulationFinding
  | LateSeedFinding
  | BiennialFinding
  | VolunteersFinding
  | SafetyFinding;

export type CheckName = Finding["check"];

/** The stable id of a finding. */
export function findingId(check: CheckName, subjects: readonly string[], extra?: string): string {
  const parts: string[] = [check, ...[...subjects].sort(compareText)];
  if (extra !== undefined) parts.push(extra);
  return parts.join("|");
}

/** Plain code-unit order: the same on every machine and in every locale. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
