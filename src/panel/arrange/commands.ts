import { layoutOf } from "../../core/model/layouts.ts";
import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const arrangeDialog = dialog(
  "arrange",
  async () => (await import("./ArrangeDialog.tsx")).ArrangeDialog,
);

export const arrangeLayout = opening(arrangeDialog, {
  name: "Arrange this layout for me ...",
  group: "Layouts",
  whyNot: ({ plan, layoutId }) =>
    layoutOf(plan, layoutId).plantings.length === 0 ? "Nothing is planted yet" : null,
});

const layOutDialog = dialog(
  "lay-out",
  async () => (await import("./LayOutDialog.tsx")).LayOutDialog,
);

/** Lays out what the seed list still wants, three ways. */
export const layOutSeedList = opening(layOutDialog, {
  name: "Lay out the seed list ...",
  group: "Layouts",
  also: "place all varieties plant everything automatically",
});
