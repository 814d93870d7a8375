/** Plantings for seed that give none worth keeping: biennials in their first year, and hybrids. */
import type { Check } from "./check.ts";
import { capital } from "./wording.ts";
import { type FindingBase, findingId } from "./finding.ts";

/** A biennial sown in place this season will not flower in it. */
export interface BiennialFinding extends FindingBase {
  readonly check: "biennial";
  readonly subject: string;
}

export const biennialCheck: Check<BiennialFinding> = {
  name: "biennial",
  title: "A biennial will not flower in its first year",
  run: ({ plan, stands }) =>
    stands
      .filter(
        ({ kind, planting }) =>
          kind.lifeCycle === "biennial" &&
          planting?.flowering === "yes" &&
          planting.bloom === undefined &&
          planting.start?.method === "sown" &&
          planting.start.date >= plan.season.first,
      )
      .map((stand): BiennialFinding => ({
        id: findingId("biennial", [stand.id]),
        check: "biennial",
        severity: "caution",
        subjects: [stand.id],
        subject: stand.id,
      })),
  describe: ({ subject }, { nameOf, standOf }) => ({
    title: `${nameOf(subject)} will not flower in its first year`,
    sentences: [
      `${capital(standOf(subject)?.kind.name ?? "This kind")} sown this season makes roots or leaves first and flowers after a winter. Set out overwintered plants for seed, or mark this planting as first-year.`,
    ],
  }),
};

/** Seed of a hybrid will not come true. */
export interface HybridFinding extends FindingBase {
  readonly check: "hybrid-seed";
  readonly subject: string;
}

export const hybridSeedCheck: Check<HybridFinding> = {
  name: "hybrid-seed",
  title: "A hybrid is kept for seed",
  run: ({ stands }) =>
    stands
      .filter((stand) => stand.variety?.hybrid === true && stand.planting?.purpose === "seed")
      .map((stand): HybridFinding => ({
        id: findingId("hybrid-seed", [stand.id]),
        check: "hybrid-seed",
        severity: "caution",
        subjects: [stand.id],
        subject: stand.id,
      })),
  describe: ({ subject }, { nameOf }) => ({
    title: `${nameOf(subject)} is a hybrid kept for seed`,
    sentences: [
      "Seed of a hybrid does not come true: the next generation splits into many types. It is not checked as a seed parent; its pollen still counts against others.",
    ],
  }),
};
