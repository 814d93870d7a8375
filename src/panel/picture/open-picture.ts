import { openPictureDesk } from "../../store/window/picture-desk.ts";
import { viewNow } from "../state/view-state.ts";

/** Opens the panel of the picture under the drawing, beside the sheet. */
export function openPicturePanel(): void {
  viewNow().showView("sheet");
  viewNow().toggleDrawer("particulars");
  openPictureDesk();
}
