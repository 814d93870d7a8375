/** Seed that would ripen after the first autumn frost the grower has given. */
import { autumnFrostOf } from "../calendar/season-reach.ts";
import { isoFromDay, shortDate } from "../model/day.ts";
import type { Check } from "./check.ts";
import { moreOnFrost } from "./seed-lots.ts";
import { type FindingBase, findingId } from "./finding.ts";

/** Seed would ripen after the first autumn frost. */
export interface LateSeedFinding extends FindingBase {
  readonly check: "late-seed";
  readonly subject: string;
  /** Day numbers: when the first seed is likely and at the latest ripe, and the frost date given. */
  readonly ripeLikely: number;
  readonly ripeLatest: number;
  readonly frost: number;
  /** Whether the heat counted may not be reached before growth ends at all. */
  readonly isBeyond: boolean;
}

export const lateSeedCheck: Check<LateSeedFinding> = {
  name: "late-seed",
  ignoresPlace: true,
  title: "Seed would ripen after the first frost",
  run: ({ plan, stands }) => {
    if (plan.site.firstAutumnFrost === undefined) return [];
    const frost = autumnFrostOf(plan.season, plan.site.firstAutumnFrost);
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
          isBeyond: ripe.isBeyond === true,
        },
      ];
    });
  },
  describe: (finding, { nameOf, standOf }) => {
    const stand = standOf(finding.subject);
    return {
      title: `Seed of ${nameOf(finding.subject)} may ripen after the first frost`,
      sentences: [
        ripeSentence(finding),
        ...((stand && moreOnFrost(stand)) ?? [
          "Start it earlier, or be ready to finish it under cover.",
        ]),
      ],
    };
  },
};

/** When the first seed is ripe against the frost given. */
function ripeSentence(finding: LateSeedFinding): string {
  const { ripeLikely, ripeLatest, frost, isBeyond } = finding;
  const given = `the first frost, given as ${shortDate(frost)}`;
  if (ripeLikely > frost) {
    return `The first seed is likely ripe on ${shortDate(ripeLikely)}, the first frost is given as ${shortDate(frost)}.`;
  }
  return isBeyond
    ? `By the heat counted its seed may not be ripe by ${given}.`
    : `The first seed may take until ${shortDate(ripeLatest)}, the first frost is given as ${shortDate(frost)}.`;
}
