import { openPictureWork } from "../../store/window/picture-work.ts";
import type { Command } from "../commands/command.ts";
import { viewNow } from "../state/view-state.ts";

/** The panel of the picture under the drawing, beside the sheet. */
export const pictureUnder = {
  id: "picture",
  name: "Picture under the drawing",
  group: "Plan",
  also: "photo air map sketch background scale",
  run: () => {
    viewNow().showView("sheet");
    viewNow().toggleDrawer("particulars");
    openPictureWork();
  },
} as const satisfies Command;
