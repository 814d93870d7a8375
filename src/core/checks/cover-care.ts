/** What a cover costs: no pollinators inside, or a cage that wind pollen passes. */
import type { Check } from "./check.ts";
import { type CoverFinding, findingId } from "./finding.ts";
import { stopsPollen } from "./isolation.ts";
import type { Stand } from "./stand.ts";

export const coverCareCheck: Check = {
  name: "cover-care",
  title: "A cover needs care, or does not help",
  run: ({ stands }) =>
    stands.flatMap((stand) => {
      const trouble = troubleOf(stand);
      if (trouble === null) return [];
      const finding: CoverFinding = {
        id: findingId("cover-care", [stand.id]),
        check: "cover-care",
        severity: "caution",
        subjects: [stand.id],
        measuredM: null,
        requiredM: null,
        where: null,
        subject: stand.id,
        trouble,
      };
      return [finding];
    }),
};

function troubleOf(stand: Stand): CoverFinding["trouble"] | null {
  if (stand.cover === "none" || stand.planting === null) return null;
  if (!stopsPollen(stand.cover, stand.carrier)) return "wind-passes";
  const needsVisitors = stand.kind.breeding === "outcrossing" && stand.carrier === "insects";
  return stand.isSeedParent && needsVisitors && stand.cover !== "hand" ? "no-pollinators" : null;
}
