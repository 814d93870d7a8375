import type { Command } from "../commands/command.ts";
import { withLoaded } from "../commands/command.ts";

/** From the plan as planned to the plan as grown, and back. */
export const readAsGrown = {
  id: "as-grown",
  name: "Read the plan as grown, or as planned again",
  group: "View",
  also: "field record season seen what happened",
  whyNot: ({ plan, reading }) =>
    plan.entries.length > 0 || reading ? null : "Nothing is written in the field record yet",
  run: () =>
    void withLoaded(
      () => import("./read-plan-as.ts"),
      ({ switchReading }) => switchReading(),
    ),
} as const satisfies Command;
