/** Plantings that are said to hold far more plants than their ground takes at the kind's spacing. */
import { citedAs } from "../kinds/sources.ts";
import { formatLength } from "../model/length.ts";
import { plantRoom } from "../beds/plant-room.ts";
import type { Planting } from "../model/plan.ts";
import type { Check } from "./check.ts";
import type { Description, Wording } from "./wording.ts";
import { type FindingBase, findingId } from "./finding.ts";
import type { Stand } from "./stand.ts";
import * as words from "../words/finding-words.ts";

/** Up to so many times the plants that fit is closer planting, with paths counted in; beyond, a slip. No source; our choice. */
const CROWDED_FROM = 2;

/** More plants than fit on the ground at the kind's spacing. */
export interface CrowdedFinding extends FindingBase {
  readonly check: "crowded";
  readonly subject: string;
  readonly plants: number;
  readonly fits: number;
  /** The spacing, metres, and who gives it. */
  readonly inRowM: number;
  readonly betweenRowsM: number;
  readonly source: string;
}

export const crowdedCheck: Check<CrowdedFinding> = {
  name: "crowded",
  title: words.crowded,
  run: ({ stands, isUnchanged, previous }) => {
    const findings = previous.filter(({ subjects }) => subjects.every(isUnchanged));
    for (const stand of stands) {
      if (stand.planting === null || isUnchanged(stand.id)) continue;
      const finding = crowdedFinding(stand, stand.planting);
      if (finding) findings.push(finding);
    }
    return findings;
  },
  patch: ({ changes }) => {
    const of = (stand: Stand) => (stand.planting ? crowdedFinding(stand, stand.planting) : null);
    return {
      gone: changes.flatMap(({ before }) => of(before)?.id ?? []),
      found: changes.flatMap(({ after }) => of(after) ?? []),
    };
  },
  describe: describeCrowded,
};

/** Kinds without a published spacing are left alone; rows may run either way. */
function crowdedFinding(stand: Stand, planting: Planting): CrowdedFinding | null {
  const { plants, outline } = planting;
  const { spacing } = stand.kind;
  if (plants === undefined || !spacing) return null;
  const turned =
    outline.shape === "rectangle"
      ? { ...outline, widthM: outline.lengthM, lengthM: outline.widthM }
      : outline;
  const fits = Math.max(
    plantRoom(stand.kind, outline).plants,
    plantRoom(stand.kind, turned).plants,
  );
  if (plants <= fits * CROWDED_FROM) return null;
  return {
    id: findingId("crowded", [stand.id], `${plants} of ${fits}`),
    check: "crowded",
    severity: "caution",
    subjects: [stand.id],
    subject: stand.id,
    plants,
    fits,
    inRowM: spacing.inRowM.value,
    betweenRowsM: spacing.betweenRowsM.value,
    source: spacing.inRowM.source,
  };
}

function describeCrowded(
  { subject, plants, fits, inRowM, betweenRowsM, source }: CrowdedFinding,
  { nameOf, unit }: Wording,
): Description {
  const [inRow, between] = [formatLength(inRowM, unit), formatLength(betweenRowsM, unit)];
  return {
    title: words.holds(nameOf(subject), plants, fits),
    sentences: [words.takes(inRow, between, citedAs(source), fits), words.crowdedAdvice],
  };
}
