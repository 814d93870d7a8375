/** The bands of the shade, and what is said beside it. */
import type { Stand } from "../checks/stand.ts";
import { SHORT_CAUTION, rarity } from "./share-words.ts";

/** From which upper share on, and how much ink, 0 to 1; the most first, the last is all other ground. */
export const shadeBands: readonly { readonly from: number; readonly ink: number }[] = [
  { from: 0.05, ink: 0.42 },
  { from: 0.01, ink: 0.3 },
  { from: 0.001, ink: 0.19 },
  { from: 0.0001, ink: 0.1 },
  { from: 0, ink: 0.04 },
];

/** What the shade of a planting means. */
export function shadeWords(code: string): string {
  const told = shadeBands.filter(({ from }) => from > 0).map(({ from }) => rarity(from));
  return `Shade: ${code}'s seed crossed with its middle there, upper end: from the darkest over ${told.join(", ")}, then less or not measured. ${SHORT_CAUTION}`;
}

/** Why a planting has no shade. */
export function noShadeWords(stand: Stand | undefined): string {
  if (!stand?.planting) return "Shade: select one planting kept for seed.";
  if (!stand.isSeedParent) return `Shade: no seed is kept of ${stand.planting.code}.`;
  return `Shade: none for ${stand.planting.code}. Only maize, rape and turnip are estimated, where a source around them can be.`;
}
