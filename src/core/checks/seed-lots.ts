/** Whether the seed on the shelf does for what is planted: enough of it, alive, of that variety. */
import { varietyIndex } from "../lots/variety-index.ts";
import { lotsToSow } from "../lots/lot-book.ts";
import { bandWords } from "../lots/band-words.ts";
import { longDate } from "../model/day.ts";
import type { Variety } from "../model/plan.ts";
import type { Check, CheckInput } from "./check.ts";
import { type FindingBase, findingId } from "./finding.ts";

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

/** What takes the reckoning of germination and amounts. */
export interface SeedReckoning {
  readonly short: (input: ReckoningInput) => readonly ShortOfSeedFinding[];
  readonly old: (input: ReckoningInput) => readonly OldSeedFinding[];
}
export type ReckoningInput = Pick<CheckInput, "plan" | "layout" | "book">;

let reckoning: SeedReckoning | null = null;

/**
 * Joins the reckoning (core/shelf/seed-reckoning.ts) to the checks. It is large and of use only
 * where a plan has lots, so a window loads it when there are some and then checks anew; the command
 * line joins it at once. Until then the two checks that need it say nothing.
 */
export function joinSeedReckoning(made: SeedReckoning): void {
  reckoning = made;
}

export const shortOfSeedCheck: Check<ShortOfSeedFinding> = {
  name: "short-of-seed",
  title: "Less seed on the shelf than is sown",
  run: (input) => (input.plan.lots.length === 0 ? [] : (reckoning?.short(input) ?? [])),
  describe: ({ varietyName, missingPlants, missingSeeds, plants }) => ({
    title: `Seed of ${varietyName} does not reach`,
    sentences: [
      `There is none for ${missingPlants} of ${plants} plants: about ${missingSeeds} seeds are missing, reckoned with each lot's germination, what comes up, and the spare.`,
      "Sow fewer, name another lot, or get more seed.",
    ],
  }),
  about: "variety",
};

export const oldSeedCheck: Check<OldSeedFinding> = {
  name: "old-seed",
  title: "Seed too old to sow",
  run: (input) => (input.plan.lots.length === 0 ? [] : (reckoning?.old(input) ?? [])),
  describe: ({ code, varietyName, day, band, standard, isStandardPublished }) => ({
    title: `Lot ${code} of ${varietyName} may hardly come up`,
    sentences: [
      `By estimate ${bandWords(band)} of it will germinate on ${longDate(day)}, under the ${Math.round(standard * 100)} % ${isStandardPublished ? "of 7 CFR 201.31" : "that is half of it"}.`,
      "Test it, sow more of it, or sow another lot.",
    ],
  }),
};

export const lotOfOtherVarietyCheck: Check<OtherVarietyFinding> = {
  name: "lot-of-other-variety",
  title: "Sown from a lot of another variety",
  run: ({ plan, layout }) => {
    if (plan.lots.length === 0) return [];
    const varieties = varietyIndex(plan.varieties);
    return layout.plantings.flatMap((planting): readonly OtherVarietyFinding[] => {
      const variety = varieties.get(planting.variety);
      if (!variety || (!planting.lots && !variety.lots)) return [];
      return lotsToSow(plan, planting, variety).flatMap((lot) => {
        const other = varieties.get(lot.variety);
        if (!other || isSame(other, variety)) return [];
        return [
          {
            id: findingId("lot-of-other-variety", [planting.id, lot.id]),
            check: "lot-of-other-variety",
            severity: "caution",
            subjects: [planting.id],
            subject: planting.id,
            lot: lot.id,
            code: lot.code,
            lotVariety: other.name,
            varietyName: variety.name,
          },
        ];
      });
    });
  },
  describe: ({ subject, code, lotVariety, varietyName }, { nameOf }) => ({
    title: `${nameOf(subject)} is sown from a lot of ${lotVariety}`,
    sentences: [
      `Lot ${code} is of ${lotVariety}, the planting is ${varietyName}. Name another lot, or change the planting's variety.`,
    ],
  }),
};

function isSame(a: Variety, b: Variety): boolean {
  const plain = (name: string) => name.normalize("NFC").trim().toLowerCase();
  return a.id === b.id || (a.kind === b.kind && a.name !== "" && plain(a.name) === plain(b.name));
}
