import { openPictureWork } from "../../store/window/picture-work.ts";
import type { Command } from "../commands/command.ts";
import { viewNow } from "../state/view-state.ts";
import * as words from "./command-words.ts";

/** The panel of the picture under the drawing, beside the sheet. */
export const pictureUnder = {
  id: "picture",
  name: words.pictureUnder,
  group: "plan",
  also: words.pictureUnderAlso,
  run: () => {
    viewNow().showView("sheet");
    viewNow().toggleDrawer("particulars");
    openPictureWork();
  },
} as const satisfies Command;
