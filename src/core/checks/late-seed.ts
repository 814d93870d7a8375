/** Seed that would ripen after the first autumn frost the grower has given. */
import { isoFromDay, shortDate } from "../model/day.ts";
import type { Check } from "./check.ts";
import { type FindingBase, findingId } from "./finding.ts";

/** Seed would ripen after the first autumn frost. */
export interface LateSeedFinding extends FindingBase {
  readonly check: "late-seed";
  readonly subject: string;
  /** Day numbers: when the first seed is likely and at the latest ripe, and the frost date given. */
  readonly ripeLikely: number;
  readonly ripeLatest: number;
  readonly frost: number;
}

export const lateSeedCheck: Check<LateSeedFinding> = {
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
          subject: stand.id,
          ripeLikely: ripe.likely,
          ripeLatest: ripe.latest,
          frost,
        },
      ];
    });
  },
  describe: ({ subject, ripeLikely, ripeLatest, frost }, { nameOf }) => ({
    title: `Seed of ${nameOf(subject)} may ripen after the first frost`,
    sentences: [
      ripeLikely > frost
        ? `The first seed is likely ripe on ${shortDate(ripeLikely)}, the first frost is given as ${shortDate(frost)}.`
        : `The first seed may take until ${shortDate(ripeLatest)}, the first frost is given as ${shortDate(frost)}.`,
      "Start it earlier, or be ready to finish it under cover.",
    ],
  }),
};
