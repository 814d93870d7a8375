/** Plantings that are said to hold far more plants than their ground takes at the kind's spacing. */
import { plantRoom } from "../beds/plant-room.ts";
import type { Planting } from "../model/plan.ts";
import type { Check } from "./check.ts";
import { type CrowdedFinding, type Finding, findingId } from "./finding.ts";
import type { Stand } from "./stand.ts";

/** Up to so many times the plants that fit is closer planting, with paths counted in; beyond, a slip. Ours. */
const CROWDED_FROM = 2;

export const crowdedCheck: Check = {
  name: "crowded",
  title: "A planting holds far more plants than fit at its kind's spacing",
  run: ({ stands, isUnchanged, previous }) => {
    const findings: Finding[] = previous.filter(({ subjects }) => subjects.every(isUnchanged));
    for (const stand of stands) {
      if (stand.planting === null || isUnchanged(stand.id)) continue;
      const finding = crowdedFinding(stand, stand.planting);
      if (finding) findings.push(finding);
    }
    return findings;
  },
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
    measuredM: null,
    requiredM: null,
    where: null,
    subject: stand.id,
    plants,
    fits,
    inRowM: spacing.inRowM.value,
    betweenRowsM: spacing.betweenRowsM.value,
    source: spacing.inRowM.source,
  };
}
