/** Words of the list of corners. */
export const cornerWords = {
  title: "Outline from its corners",
  draws: "It is",
  list: "Corners, one to a line",
  example: "0, 0\n12.5, 0\n12.5, 9 through 14, 4.5\n9 m at 270",
  about:
    "Right and up from the sheet's 0, 0; or the length and direction of a side, in degrees clockwise from the sheet's top; or a curve, by a place it passes through.",
  zero: "Directions are clockwise from",
  fromTop: "the sheet's top",
  fromNorth: "north",
  none: "No corner yet.",
  preview: "The outline",
  read: (corners: string, area: string) => `${corners}, ${area}.`,
  closes: (length: string) => `The last side closes it: ${length}.`,
  curves: (count: string, error: string) => `${count}, kept as corners within ${error} of the arc.`,
  corner: ["corner", "corners"],
  curve: ["curve", "curves"],
  needs: (least: string) => `At least ${least} are needed.`,
  wouldGive: (problem: string) => `That would give ${problem}.`,
  replaces: "It takes the place of the edge that is there.",
  add: "Add",
  apply: "Apply",
} as const;
