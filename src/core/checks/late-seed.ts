/** Seed that would ripen after the first autumn frost the grower has given. */
import { autumnFrostOf } from "../calendar/season-reach.ts";
import { isoFromDay, shortDate } from "../model/day.ts";
import type { Check } from "./check.ts";
import { moreOnFrost } from "./seed-lots.ts";
import { type FindingBase, findingId } from "./finding.ts";
import * as words from "../words/finding-words.ts";

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
  title: words.lateSeed,
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
      title: words.mayRipenLate(nameOf(finding.subject)),
      sentences: [
        ripeSentence(finding),
        ...((stand && moreOnFrost(stand)) ?? [words.startEarlier]),
      ],
    };
  },
};

/** When the first seed is ripe against the frost given. */
function ripeSentence(finding: LateSeedFinding): string {
  const { ripeLikely, ripeLatest, frost, isBeyond } = finding;
  if (ripeLikely > frost) {
    return words.ripeOn(shortDate(ripeLikely), shortDate(frost));
  }
  return isBeyond
    ? words.byHeat(shortDate(frost))
    : words.ripeUntil(shortDate(ripeLatest), shortDate(frost));
}
