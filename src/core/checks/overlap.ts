/** Plantings that lie on the same ground at the same time. Only pairs touching a changed planting are measured again. */
import { areOnGroundTogether } from "../calendar/ground-time.ts";
import { formatLength } from "../model/length.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { overlapDepth, overlapsBy } from "../geometry/containment.ts";
import type { GradedLists } from "../lists/graded-lists.ts";
import { IdPages } from "../lists/id-pages.ts";
import { touchings } from "../nearness/near-stands.ts";
import type { Check, CheckInput } from "./check.ts";
import { listed } from "./wording.ts";
import { type FindingBase, findingId, foundLater } from "./finding.ts";
import type { Stand } from "./stand.ts";
import * as words from "../words/finding-words.ts";

/** Lying in each other by less than this is drawing, not planting. No source; our choice. */
export const OVERLAP_TOLERANCE_M = 0.02;

/** Two plantings lie on the same ground. `measuredM` is how deep they overlap. */
export interface OverlapFinding extends FindingBase {
  readonly check: "overlap";
}

export const overlapCheck: Check<OverlapFinding> = {
  name: "overlap",
  title: words.overlap,
  run: ({ stands, isUnchanged, previous }) => {
    const findings = previous.filter((finding) => finding.subjects.every(isUnchanged));
    touchings(stands, (one, other) => {
      const [a, b] = [stands[one] as Stand, stands[other] as Stand];
      if (isUnchanged(a.id) && isUnchanged(b.id)) return;
      const finding = overlapFinding(a, b);
      if (finding) findings.push(finding);
    });
    return findings;
  },
  later: overlapsLater,
  patch: ({ changes, near, nearBefore }) => {
    const changed = new Set(changes.map(({ after }) => after));
    const gone: string[] = [];
    const found: OverlapFinding[] = [];
    for (const { before, after } of changes) {
      for (const other of nearBefore(before, 0))
        gone.push(findingId("overlap", [before.id, other.id]));
      for (const other of near(after, 0)) {
        if (other === after) continue;
        if (changed.has(other) && other.id < after.id) continue;
        const finding = overlapFinding(other, after);
        if (finding) found.push(finding);
      }
    }
    return { gone, found };
  },
  describe: ({ subjects, measuredM }, { nameOf, unit }) => ({
    title: words.sameGround(listed(subjects.map(nameOf))),
    sentences: [words.overlapBy(formatLength(measuredM ?? 0, unit))],
  }),
};

/** Whether two stands are on their ground at the same time; what is around the beds always is. */
export function standTogether(a: Stand, b: Stand): boolean {
  return !a.planting || !b.planting || areOnGroundTogether(a.planting, b.planting);
}

const arePlantedTogether = (a: Stand, b: Stand): boolean =>
  a.planting !== null && b.planting !== null && standTogether(a, b);

/** The findings of a fresh run: which there are is told without measuring them. */
function overlapsLater({
  stands,
  ranks,
}: CheckInput<OverlapFinding>): GradedLists<OverlapFinding> | null {
  const order = ranks();
  if (!order) return null;
  const [ones, others]: [number[], number[]] = [[], []];
  touchings(stands, (one, other) => {
    const [a, b] = [stands[one] as Stand, stands[other] as Stand];
    if (!arePlantedTogether(a, b)) return;
    if (!overlapsBy(a.outline, b.outline, OVERLAP_TOLERANCE_M)) return;
    ones.push(one);
    others.push(other);
  });
  const columns = { one: Uint32Array.from(ones), other: Uint32Array.from(others) };
  const found = Uint32Array.from(ones.keys());
  const cautions = foundLater("overlap", found, { ...columns, stands, order }, (pair) => {
    const [one, other] = [columns.one[pair] as number, columns.other[pair] as number];
    return overlapFinding(stands[one] as Stand, stands[other] as Stand) as OverlapFinding;
  });
  return [IdPages.of<OverlapFinding>([]), cautions, IdPages.of<OverlapFinding>([])];
}

/** Taken in the order of their ids, so that a carried-forward finding equals a fresh one. */
function overlapFinding(one: Stand, other: Stand): OverlapFinding | null {
  const [a, b] = one.id < other.id ? [one, other] : [other, one];
  if (boundsGap(a.outline.bounds, b.outline.bounds) > 0 || !arePlantedTogether(a, b)) return null;
  const reach = overlapDepth(a.outline, b.outline);
  if (reach.distanceM <= OVERLAP_TOLERANCE_M) return null;
  const subjects = [a.id, b.id];
  return {
    id: findingId("overlap", subjects),
    check: "overlap",
    severity: "caution",
    subjects,
    measuredM: reach.distanceM,
    where: [reach.from, reach.to],
  };
}
