/** A hybrid kept for seed: its seed will not come true, and it is no seed parent to protect. */
import type { Check } from "./check.ts";
import { type HybridFinding, findingId } from "./finding.ts";

export const hybridSeedCheck: Check = {
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
        measuredM: null,
        requiredM: null,
        where: null,
        subject: stand.id,
      })),
};
