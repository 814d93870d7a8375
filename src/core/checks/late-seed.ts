/** Seed that would ripen after the first autumn frost the grower has given. */
import { isoFromDay } from "../model/day.ts";
import type { Check } from "./check.ts";
import { type LateSeedFinding, findingId } from "./finding.ts";

export const lateSeedCheck: Check = {
  name: "late-seed",
  title: "Seed would ripen after the first frost",
  run: ({ plan, stands }) => {
    const frost = plan.site.firstAutumnFrost;
    if (frost === undefined) return [];
    return stands.flatMap((stand): readonly LateSeedFinding[] => {
      const ripe = stand.ripe;
      if (!stand.isSeedParent || ripe === null || ripe.latest <= frost) return [];
      return [
        {
          // The frost date is what is required: accepted, it comes back when that changes.
          id: findingId("late-seed", [stand.id], isoFromDay(frost)),
          check: "late-seed",
          severity: "caution",
          subjects: [stand.id],
          measuredM: null,
          requiredM: null,
          where: null,
          subject: stand.id,
          ripeLikely: ripe.likely,
          ripeLatest: ripe.latest,
          frost,
        },
      ];
    });
  },
};
