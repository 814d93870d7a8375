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
