/** Plantings that reach out of their bed or stand in none, and beds that reach out of the site. */
import { formatLength } from "../model/length.ts";
import { protrusion } from "../geometry/containment.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type { BedOutline, Check } from "./check.ts";
import type { Description, Wording } from "./wording.ts";
import { type FindingBase, findingId } from "./finding.ts";
import type { Stand } from "./stand.ts";
import * as words from "../words/finding-words.ts";

/** Reaching out by less than this is a stake's width, not a mistake. No source; our choice. */
export const OUTSIDE_TOLERANCE_M = 0.01;

/** A planting reaches out of its bed, or a bed out of the site; or a planting stands in no bed. */
export interface OutsideFinding extends FindingBase {
  readonly check: "outside";
  readonly inner: string;
  /** Id of the bed; "site" for the site outline; "beds" for a planting that stands in none. */
  readonly outer: string;
}

export const outsideCheck: Check<OutsideFinding> = {
  name: "outside",
  title: words.placeOutside,
  run: ({ plan, layout, stands, bedOutlines, isUnchanged, previous }) => {
    const findings = previous.filter(
      (finding) =>
        finding.outer !== "site" && finding.outer !== "beds" && finding.subjects.every(isUnchanged),
    );
    const site = plan.site.outline ? outlineOf(plan.site.outline) : null;
    const hasBeds = layout.beds.length > 0;
    for (const stand of stands) {
      const bed = bedOutlines.get(stand.planting?.bed ?? "");
      if (bed && isUnchanged(stand.id) && isUnchanged(bed.bed.id)) continue;
      findings.push(...standFindings(stand, bed, hasBeds, site));
    }
    if (site) {
      for (const { bed, outline } of bedOutlines.values()) {
        const finding = outsideFinding(bed.id, outline, "site", site);
        if (finding) findings.push(finding);
      }
    }
    return findings;
  },
  patch: ({ plan, layout, standById, bedOutlines, changes, changedBeds }) => {
    const site = plan.site.outline ? outlineOf(plan.site.outline) : null;
    const hasBeds = layout.beds.length > 0;
    const moved = new Set(changedBeds);
    const touched = (moved.size === 0 ? [] : layout.plantings).flatMap(({ id, bed }) =>
      moved.has(bed ?? "") ? (standById.get(id) ?? []) : [],
    );
    const after = new Set([...changes.map((change) => change.after), ...touched]);
    return {
      gone: [...changes.map(({ before }) => before), ...touched]
        .flatMap(outsideIds)
        .concat(changedBeds.map((id) => findingId("outside", [id]))),
      found: [
        ...[...after].flatMap((stand) =>
          standFindings(stand, bedOutlines.get(stand.planting?.bed ?? ""), hasBeds, site),
        ),
        ...changedBeds.flatMap((id) => {
          const bed = bedOutlines.get(id);
          return (site && bed && outsideFinding(id, bed.outline, "site", site)) ?? [];
        }),
      ],
    };
  },
  describe: describeOutside,
};

/** All that a stand may be told for: beyond its bed, beyond the site, in no bed. */
function outsideIds({ id, planting }: Stand): readonly string[] {
  const bed = planting?.bed;
  return [
    findingId("outside", [id]),
    findingId("outside", [id], "beds"),
    ...(bed === undefined ? [] : [findingId("outside", [id, bed])]),
  ];
}

function standFindings(
  stand: Stand,
  bed: BedOutline | undefined,
  hasBeds: boolean,
  site: Outline | null,
): readonly OutsideFinding[] {
  if (stand.planting === null) return [];
  if (!bed) return bedlessFindings(stand, hasBeds, site);
  const finding = outsideFinding(stand.id, stand.outline, bed.bed.id, bed.outline);
  return finding ? [finding] : [];
}

/** A planting in no bed: only where there are beds is that a slip; the site holds it in any case. */
function bedlessFindings(
  stand: Stand,
  hasBeds: boolean,
  site: Outline | null,
): readonly OutsideFinding[] {
  const beyond = site ? outsideFinding(stand.id, stand.outline, "site", site) : null;
  if (!hasBeds) return beyond ? [beyond] : [];
  const off: OutsideFinding = {
    id: findingId("outside", [stand.id], "beds"),
    check: "outside",
    severity: "caution",
    subjects: [stand.id],
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
    where: [reach.from, reach.to],
    inner,
    outer,
  };
}

function describeOutside(
  { inner, outer, measuredM }: OutsideFinding,
  { nameOf, unit }: Wording,
): Description {
  if (outer === "beds") {
    return {
      title: words.noBed(nameOf(inner)),
      sentences: [words.noBedAdvice],
    };
  }
  return {
    title: words.reachesOut(nameOf(inner), nameOf(outer)),
    sentences: [words.sticksOut(formatLength(measuredM ?? 0, unit))],
  };
}
