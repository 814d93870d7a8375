/** Whether the seed on the shelf does for what is planted: enough of it, alive, of that variety. */
import type { Kind } from "../kinds/crop.ts";
import { type Check, type CheckInput, type CheckPart, joinedCheck } from "./check.ts";
import type { FindingBase } from "./finding.ts";
import type { Stand } from "./stand.ts";
import * as words from "../words/finding-words.ts";

/** The lots hold less seed than a variety's plantings take. */
export interface ShortOfSeedFinding extends FindingBase {
  readonly check: "short-of-seed";
  readonly variety: string;
  readonly varietyName: string;
  /** Plants that no seed is left for, and the seeds they take. */
  readonly missingPlants: number;
  readonly missingSeeds: number;
  /** Plants in all. */
  readonly plants: number;
}

/** A lot is dead or nearly so on the day it is sown. */
export interface OldSeedFinding extends FindingBase {
  readonly check: "old-seed";
  readonly lot: string;
  readonly code: string;
  readonly varietyName: string;
  readonly day: number;
  /** Germination on that day, fractions of 1. */
  readonly band: readonly [number, number];
  readonly standard: number;
  readonly isStandardPublished: boolean;
}

/** A planting is sown from a lot of another variety. */
export interface OtherVarietyFinding extends FindingBase {
  readonly check: "lot-of-other-variety";
  readonly subject: string;
  readonly lot: string;
  readonly code: string;
  /** Name of the lot's variety, and of the planting's. */
  readonly lotVariety: string;
  readonly varietyName: string;
}

/** Sown from seed of seed of seed, while older seed of the line is on the shelf. */
export interface MotherLotFinding extends FindingBase {
  readonly check: "mother-lot";
  readonly subject: string;
  /** The lot that is sown, and the first of its line that still has seed. */
  readonly code: string;
  readonly motherCode: string;
  /** Growings-out from that first lot to what this planting gives. */
  readonly cycles: number;
}

/** Fewer plants than a kind needs: what is said of them. */
export interface FewPlants {
  readonly plants: number;
  readonly needed: number;
  /** Which of the kind's two numbers falls short. */
  readonly floor: "viable" | "maintenance";
  readonly source: string;
  /** What that does to the variety; left out until it is reckoned. */
  readonly effect?: PopulationEffect;
}

/** What so many plants do to a variety. */
export interface PopulationEffect {
  /** How many ideal plants they amount to; null: it cannot be told. */
  readonly effective: number | null;
  /** What the seed they are sown from has behind it; null: no lot says. */
  readonly line: {
    /** Growings-out on record, and the diversity lost in those that were counted, 0 to 1. */
    readonly generations: number;
    readonly lost: number;
    readonly hasUnknown: boolean;
    readonly hasCrossing: boolean;
  } | null;
}

/** A distance of the grower's own is far below what is published for the kind. */
export interface OwnDistanceFinding extends FindingBase {
  readonly check: "own-distance";
  /** Whose it is: typed for a planting, a variety or an own kind, or a figure picked by hand. */
  readonly from: "planting" | "variety" | "kind" | "picked";
  /** The wild kind in the plan that asks more, and who says so; null: the kind's own figure does. */
  readonly wild: { readonly why: string; readonly source: string } | null;
}

/** What is sown may hold crosses, or pollinate what is true of its variety. */
export interface CrossedLotFinding extends FindingBase {
  readonly check: "crossed-lot";
  readonly subject: string;
  readonly lot: string;
  readonly code: string;
  /** Whether the lot itself may have crossed, and not its forebears alone. */
  readonly isOwn: boolean;
  /** How near what stood, by its own record; null: the record has nothing, it is said by hand. */
  readonly because: string | null;
  /** Codes of lots it comes from that were not kept apart. */
  readonly forebears: readonly string[];
  /** Codes of lots in stock to sow instead. */
  readonly instead: readonly string[];
  /** Seed plantings of its variety, from other seed, that it may pollinate unasked. */
  readonly beside: readonly string[];
}

export interface SeedReckoning {
  readonly crossed: CheckPart<CrossedLotFinding, ReckoningInput & Pick<CheckInput, "stands">>;
  readonly ownDistance: CheckPart<OwnDistanceFinding>;
  readonly short: CheckPart<ShortOfSeedFinding, ReckoningInput>;
  readonly old: CheckPart<OldSeedFinding, ReckoningInput>;
  readonly other: CheckPart<OtherVarietyFinding, ReckoningInput>;
  readonly mother: CheckPart<MotherLotFinding, ReckoningInput>;
  readonly effect: (input: ReckoningInput, stands: readonly Stand[]) => PopulationEffect;
  readonly populationWords: (few: FewPlants, kind: Kind) => readonly string[];
  readonly finishWords: (stand: Stand) => readonly string[];
}
export type ReckoningInput = Pick<CheckInput, "plan" | "layout" | "book">;

let reckoning: SeedReckoning | null = null;

/**
 * Joins the reckoning (core/shelf/seed-reckoning.ts) to the checks. It is large and of use only
 * where a plan has lots, so a window loads it when there are some and then checks anew; the command
 * line joins it at once. Until then these checks say nothing.
 */
export function joinSeedReckoning(made: SeedReckoning): void {
  reckoning = made;
}

export function isSeedReckoned(): boolean {
  return reckoning !== null;
}

/** What the plants of one population do to it; null until that can be reckoned. */
export function effectOf(input: ReckoningInput, stands: readonly Stand[]): PopulationEffect | null {
  return reckoning?.effect(input, stands) ?? null;
}

/** Sentences on few plants; undefined until they can be made. */
export function moreOnPopulation(few: FewPlants, kind: Kind): readonly string[] | undefined {
  return reckoning?.populationWords(few, kind);
}

/** Sentences on what can be done for seed that frost would catch; undefined as above. */
export function moreOnFrost(stand: Stand): readonly string[] | undefined {
  return reckoning?.finishWords(stand);
}

/** Of seed and figures alone: a move leaves all as it is. */
const shelfCheck: typeof joinedCheck = (...parts) => ({
  ...joinedCheck(...parts),
  ignoresPlace: true,
});

export const shortOfSeedCheck: Check<ShortOfSeedFinding> = {
  ...shelfCheck<ShortOfSeedFinding>("short-of-seed", words.shortOfSeed, () => reckoning?.short),
  about: "variety",
};
export const oldSeedCheck = shelfCheck<OldSeedFinding>(
  "old-seed",
  words.oldSeed,
  () => reckoning?.old,
);
export const lotOfOtherVarietyCheck = shelfCheck<OtherVarietyFinding>(
  "lot-of-other-variety",
  words.otherVariety,
  () => reckoning?.other,
);
export const crossedLotCheck = shelfCheck<CrossedLotFinding>(
  "crossed-lot",
  words.crossedLot,
  () => reckoning?.crossed,
);
export const ownDistanceCheck = shelfCheck<OwnDistanceFinding>(
  "own-distance",
  words.ownDistance,
  () => reckoning?.ownDistance,
);
export const motherLotCheck = shelfCheck<MotherLotFinding>(
  "mother-lot",
  words.motherLot,
  () => reckoning?.mother,
);
