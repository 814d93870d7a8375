/** Plantings that reach out of their bed or stand in none, and beds that reach out of the site. */
import { protrusion } from "../geometry/containment.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type { Check } from "./check.ts";
import { type Finding, type OutsideFinding, findingId } from "./finding.ts";
import type { Stand } from "./stand.ts";

/** Reaching out by less than this is a stake's width, not a mistake. Ours. */
export const OUTSIDE_TOLERANCE_M = 0.01;

export const outsideCheck: Check = {
  name: "outside",
  title: "A planting reaches out of its bed or lies in none, or a bed reaches out of the site",
  run: ({ plan, layout, stands, bedOutlines, isUnchanged, previous }) => {
    const findings: Finding[] = previous.filter(
      (finding) =>
        finding.check === "outside" &&
        finding.outer !== "site" &&
        finding.outer !== "beds" &&
        finding.subjects.every(isUnchanged),
    );
    const site = plan.site.outline ? outlineOf(plan.site.outline) : null;
    for (const stand of stands) {
      if (stand.planting !== null && !bedOutlines.has(stand.planting.bed ?? "")) {
        findings.push(...bedlessFindings(stand, layout.beds.length > 0, site));
        continue;
      }
      const bed = bedOutlines.get(stand.planting?.bed ?? "");
      if (!bed || (isUnchanged(stand.id) && isUnchanged(bed.bed.id))) continue;
      const finding = outsideFinding(stand.id, stand.outline, bed.bed.id, bed.outline);
      if (finding) findings.push(finding);
    }
    if (site) {
      for (const { bed, outline } of bedOutlines.values()) {
        const finding = outsideFinding(bed.id, outline, "site", site);
        if (finding) findings.push(finding);
      }
    }
    return findings;
  },
};

/** A planting in no bed: only where there are beds is that a slip; the site holds it in any case. */
function bedlessFindings(stand: Stand, hasBeds: boolean, site: Outline | null): readonly Finding[] {
  const beyond = site ? outsideFinding(stand.id, stand.outline, "site", site) : null;
  if (!hasBeds) return beyond ? [beyond] : [];
  const off: OutsideFinding = {
    id: findingId("outside", [stand.id], "beds"),
    check: "outside",
    severity: "caution",
    subjects: [stand.id],
    measuredM: null,
    requiredM: null,
    where: null,
    inner: stand.id,
    outer: "beds",
  };
  return beyond ? [off, beyond] : [off];
}

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
