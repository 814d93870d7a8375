/** Plantings that lie on the same ground. Only pairs touching a changed planting are measured again. */
import { boundsGap } from "../geometry/bounds.ts";
import { overlapDepth } from "../geometry/containment.ts";
import type { Check } from "./check.ts";
import { type Finding, compareText, findingId } from "./finding.ts";
import type { Stand } from "./stand.ts";

/** Lying in each other by less than this is drawing, not planting. Ours. */
export const OVERLAP_TOLERANCE_M = 0.02;

export const overlapCheck: Check = {
  name: "overlap",
  title: "Two plantings lie on the same ground",
  run: ({ stands, isUnchanged, previous }) => {
    const plantings = stands.filter((stand) => stand.planting !== null);
    const findings: Finding[] = previous.filter((finding) => finding.subjects.every(isUnchanged));
    plantings.forEach((stand, index) => {
      const isOld = isUnchanged(stand.id);
      for (let other = 0; other < index; other += 1) {
        const second = plantings[other] as Stand;
        if (isOld && isUnchanged(second.id)) continue;
        const finding = overlapFinding(second, stand);
        if (finding) findings.push(finding);
      }
    });
    return findings;
  },
};

function overlapFinding(a: Stand, b: Stand): Finding | null {
  if (boundsGap(a.outline.bounds, b.outline.bounds) > 0) return null;
  const reach = overlapDepth(a.outline, b.outline);
  if (reach.distanceM <= OVERLAP_TOLERANCE_M) return null;
  const subjects = [a.id, b.id].sort(compareText);
  return {
    id: findingId("overlap", subjects),
    check: "overlap",
    severity: "caution",
    subjects,
    measuredM: reach.distanceM,
    requiredM: null,
    where: [reach.from, reach.to],
  };
}
