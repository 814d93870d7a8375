/** Safety cautions of the kinds kept for seed: each shown once, with the plantings it is about. */
import type { Check } from "./check.ts";
import { type SafetyFinding, compareText, findingId } from "./finding.ts";

export const safetyCheck: Check = {
  name: "safety",
  title: "The usual safety cautions",
  run: ({ stands }) => {
    const subjectsOf = new Map<string, string[]>();
    for (const stand of stands) {
      if (stand.planting?.purpose !== "seed") continue;
      for (const caution of stand.kind.cautions ?? []) {
        const subjects = subjectsOf.get(caution);
        if (subjects) subjects.push(stand.id);
        else subjectsOf.set(caution, [stand.id]);
      }
    }
    return [...subjectsOf].map(
      ([caution, subjects]): SafetyFinding => ({
        id: findingId("safety", [], caution),
        check: "safety",
        severity: "caution",
        subjects: [...subjects].sort(compareText),
        measuredM: null,
        requiredM: null,
        where: null,
        caution,
      }),
    );
  },
};
