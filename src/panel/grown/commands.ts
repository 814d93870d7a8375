import { type Command, opening, withLoaded } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import { harvestDialog } from "./dialogs.ts";
import * as words from "./command-words.ts";

/** From the plan as planned to the plan as grown, and back. */
export const readAsGrown = {
  id: "as-grown",
  name: words.readAsGrown,
  group: "view",
  also: words.readAsGrownAlso,
  whyNot: ({ plan, reading }) =>
    plan.entries.length > 0 || reading ? null : words.nothingRecordedYet,
  run: () =>
    void withLoaded(
      () => import("./read-plan-as.ts"),
      ({ switchReading }) => switchReading(),
    ),
} as const satisfies Command;

export const harvestIntoLot = {
  id: "harvest",
  name: words.harvestIntoLot,
  group: "objects",
  also: words.harvestIntoLotAlso,
  whyNot: ({ kept }) => (kept.layout.plantings.length === 0 ? words.noPlantingYet : null),
  run: ({ selection, kept }) => {
    const [only, more] = selection;
    const isPlanting = kept.layout.plantings.some(({ id }) => id === only);
    harvestDialog.open({ plantingId: isPlanting && more === undefined ? (only ?? null) : null });
  },
} as const satisfies Command;

const learnDialog = dialog("learn", async () => (await import("./LearnDialog.tsx")).LearnDialog);

/** What was forecast and what was seen, by variety. */
export const predictedAndSeen = opening(learnDialog, {
  name: words.predictedAndSeen,
  group: "lists",
  also: words.predictedAndSeenAlso,
}) satisfies Command;
