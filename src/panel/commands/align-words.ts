/** The sides things are lined up by, seen from the near end of a bed, as commands. */
import type { AlignSide } from "../../core/edits/align.ts";

export const alignSides: readonly { readonly side: AlignSide; readonly command: string }[] = [
  { side: "left", command: "Line up left sides" },
  { side: "middle", command: "Line up middles across" },
  { side: "right", command: "Line up right sides" },
  { side: "far", command: "Line up far ends" },
  { side: "halfway", command: "Line up middles along" },
  { side: "near", command: "Line up near ends" },
];
