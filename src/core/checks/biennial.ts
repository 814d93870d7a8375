/** Biennials sown in place this season and expected to flower in it. */
import type { Check } from "./check.ts";
import { type BiennialFinding, findingId } from "./finding.ts";

export const biennialCheck: Check = {
  name: "biennial",
  title: "A biennial will not flower in its first year",
  run: ({ plan, stands }) =>
    stands
      .filter(
        ({ kind, planting }) =>
          kind.lifeCycle === "biennial" &&
          planting?.flowering === "yes" &&
          planting.bloom === undefined &&
          planting.start?.method === "sown" &&
          planting.start.date >= plan.season.first,
      )
      .map((stand): BiennialFinding => ({
        id: findingId("biennial", [stand.id]),
        check: "biennial",
        severity: "caution",
        subjects: [stand.id],
        measuredM: null,
        requiredM: null,
        where: null,
        subject: stand.id,
      })),
};
