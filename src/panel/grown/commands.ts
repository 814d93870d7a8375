import { type Command, opening, withLoaded } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import { harvestDialog } from "./dialogs.ts";

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

export const harvestIntoLot = {
  id: "harvest",
  name: "Harvest into a lot ...",
  group: "Objects",
  also: "seed saved packet shelf isolation",
  whyNot: ({ kept }) => (kept.layout.plantings.length === 0 ? "No planting is placed yet" : null),
  run: ({ selection, kept }) => {
    const [only, more] = selection;
    const isPlanting = kept.layout.plantings.some(({ id }) => id === only);
    harvestDialog.open({ plantingId: isPlanting && more === undefined ? (only ?? null) : null });
  },
} as const satisfies Command;

const learnDialog = dialog("learn", async () => (await import("./LearnDialog.tsx")).LearnDialog);

/** What was forecast and what was seen, by variety. */
export const predictedAndSeen = opening(learnDialog, {
  name: "Predicted and seen ...",
  group: "Lists and figures",
  also: "bloom forecast learn days to flower own range",
}) satisfies Command;
