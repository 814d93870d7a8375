/** Plantings that reach out of their bed, and beds that reach out of the site. */
import { protrusion } from "../geometry/containment.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type { Check } from "./check.ts";
import { type Finding, type OutsideFinding, findingId } from "./finding.ts";

/** Reaching out by less than this is a stake's width, not a mistake. Ours. */
export const OUTSIDE_TOLERANCE_M = 0.01;

export const outsideCheck: Check = {
  name: "outside",
  title: "A planting reaches out of its bed, or a bed out of the site",
  run: ({ plan, stands, bedOutlines, isUnchanged, previous }) => {
    const findings: Finding[] = previous.filter(
      (finding) =>
        finding.check === "outside" &&
        finding.outer !== "site" &&
        finding.subjects.every(isUnchanged),
    );
    for (const stand of stands) {
      const bed = bedOutlines.get(stand.planting?.bed ?? "");
      if (!bed || (isUnchanged(stand.id) && isUnchanged(bed.bed.id))) continue;
      const finding = outsideFinding(stand.id, stand.outline, bed.bed.id, bed.outline);
      if (finding) findings.push(finding);
    }
    if (plan.site.outline) {
      const site = outlineOf(plan.site.outline);
      for (const { bed, outline } of bedOutlines.values()) {
        const finding = outsideFinding(bed.id, outline, "site", site);
        if (finding) findings.push(finding);
      }
    }
    return findings;
  },
};

function outsideFinding(
  inner: string,
  innerOutline: Outline,
  outer: string,
  outerOutline: Outline,
): OutsideFinding | null {
  const reach = protrusion(innerOutline, outerOutline);
  if (reach.distanceM <= OUTSIDE_TOLERANCE_M) return null;
  const subjects = outer === "site" ? [inner] : [inner, outer].sort();
  return {
    id: findingId("outside", subjects),
    check: "outside",
    severity: "caution",
    subjects,
    measuredM: reach.distanceM,
    requiredM: null,
    where: [reach.from, reach.to],
    inner,
    outer,
  };
}
