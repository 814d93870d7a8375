/** The bands of the shade: apart from its words, which are fetched with it. */

/** From which upper share on, and how much ink, 0 to 1; the most first, the last is all other ground. */
export const shadeBands: readonly { readonly from: number; readonly ink: number }[] = [
  { from: 0.05, ink: 0.42 },
  { from: 0.01, ink: 0.3 },
  { from: 0.001, ink: 0.19 },
  { from: 0.0001, ink: 0.1 },
  { from: 0, ink: 0.04 },
];
