/** What is said beside the shade. */
import type { Stand } from "../checks/stand.ts";
import { shadeBands } from "./shade-bands.ts";
import { SHORT_CAUTION, rarity } from "./share-words.ts";

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
