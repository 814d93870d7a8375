/** The line of a variety, opened from a lot, a row of the seed list or a scanned packet. */
import { dialog } from "../state/dialog.ts";

/** Of a variety; a lot of it that is looked back from, or null: the last. */
export const lineDialog = dialog("line", async () => (await import("./LineDialog.tsx")).LineDialog);
