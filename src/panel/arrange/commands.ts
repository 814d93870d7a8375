import { layoutOf } from "../../core/model/layouts.ts";
import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

const arrangeDialog = dialog(
  "arrange",
  async () => (await import("./ArrangeDialog.tsx")).ArrangeDialog,
);

export const arrangeLayout = opening(arrangeDialog, {
  name: words.arrangeLayout,
  group: "layouts",
  whyNot: ({ plan, layoutId }) =>
    layoutOf(plan, layoutId).plantings.length === 0 ? words.nothingPlantedYet : null,
});

const layOutDialog = dialog(
  "lay-out",
  async () => (await import("./LayOutDialog.tsx")).LayOutDialog,
);

/** Lays out what the seed list still wants, three ways. */
export const layOutSeedList = opening(layOutDialog, {
  name: words.layOutSeedList,
  group: "layouts",
  also: words.layOutSeedListAlso,
});
