/** Which kinds the words of a source mean: a species, a genus, a family. */
import type { Kind } from "../kinds/crop.ts";

/**
 * Kinds as a source words them. A species is named in full (`Beta vulgaris`), a genus by one word
 * (`Phaseolus`), a family by its ending (`Brassicaceae`); `same species` is that of the crop itself.
 */
export type Taxa = readonly string[];

/** Whether a kind is among them, for a crop of another kind. */
export function isAmong(kind: Kind, taxa: Taxa, crop: Kind): boolean {
  const [genus] = kind.species.split(" ");
  return taxa.some((taxon) =>
    taxon === "same species"
      ? kind.species === crop.species
      : taxon === kind.species || taxon === genus || taxon === kind.family,
  );
}
