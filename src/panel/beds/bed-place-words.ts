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
  placeOf: {
    corner: ["Corner, right (x)", "Corner, up (y)"],
    middle: ["Middle, right (x)", "Middle, up (y)"],
  } as Readonly<Record<BedAnchor, readonly [string, string]>>,
  inBlocks: "Beds in a block",
  inBlocksHint: "After so many beds comes a wider path; left empty, all paths are alike.",
  blockPath: "Path between blocks",
  shown: "Shown on the sheet as typed; nothing is kept yet.",
} as const;
