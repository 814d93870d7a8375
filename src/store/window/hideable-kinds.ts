/** Kinds of things the sheet can leave out. What is left out cannot be taken hold of either. */
export const hideableKinds = [
  "surroundings",
  "bed codes",
  "plantings",
  "rings",
  "conflict lines",
  "labels",
  "picture",
  "earlier crops",
  "grid",
] as const;
export type HideableKind = (typeof hideableKinds)[number];
