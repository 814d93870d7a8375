/** A hybrid kept for seed: its seed will not come true, and it is no seed parent to protect. */
import type { Check } from "./check.ts";
import { type FindingBase, findingId } from "./finding.ts";

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
