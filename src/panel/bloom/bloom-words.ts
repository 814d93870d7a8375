/** What the bloom strip's edge says. */
export const stripHeightWords = {
  label: "Height of the bloom strip",
  title: "Drag, or use the arrow keys: how many rows the bloom strip shows",
  value: (rows: number) => `${rows} rows`,
};
