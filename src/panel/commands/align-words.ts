/** Names of the sides things are lined up by, seen from the near end of a bed. */
import type { AlignSide } from "../../core/edits/align.ts";

export const alignWords: readonly { readonly side: AlignSide; readonly words: string }[] = [
  { side: "left", words: "left sides" },
  { side: "middle", words: "middles across" },
  { side: "right", words: "right sides" },
  { side: "far", words: "far ends" },
  { side: "halfway", words: "middles along" },
  { side: "near", words: "near ends" },
];
