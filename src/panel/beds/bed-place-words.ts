/** Where a bed lies, and rows of them, in words. */
import type { BedAnchor } from "../../core/edits/bed-rows.ts";

export const anchorWords: Readonly<Record<BedAnchor, string>> = {
  corner: "its near left corner",
  middle: "its middle",
};

export const bedPlaceWords = {
  anchor: "x and y are those of",
  anchorFirst: "x and y are those of the first bed,",
  anchorHint: "Near and left as seen along the bed, its length going away from you.",
  placeOf: { corner: "Corner", middle: "Middle" } as Readonly<Record<BedAnchor, string>>,
  inBlocks: "Wider path after every",
  inBlocksHint: "so many beds, for blocks beside each other.",
  blockPath: "That path",
  shown: "Shown on the sheet as typed; nothing is kept yet.",
} as const;
