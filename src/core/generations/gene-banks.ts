/** Plants that gene banks grow of one accession: their practice, independent of handbooks. */
import type { Kind } from "../kinds/crop.ts";

export interface GeneBankNumber {
  /** At least. */
  readonly plants: number;
  readonly source: string;
  readonly note?: string;
}

const CGN = "Centre for Genetic Resources, the Netherlands";
const ARS = "Brassica production, USDA Agricultural Research Service, Geneva";
export const CRUCIFERS = "cgn-crucifers";

const coles: GeneBankNumber = { plants: 100, source: ARS };
const crucifers: GeneBankNumber = {
  plants: 50,
  source: `Regeneration of miscellaneous crucifers, ${CGN}`,
  note: "50 to 100",
};

/** By species, as the pages print them. */
const bySpecies: ReadonlyMap<string, GeneBankNumber> = new Map(
  Object.entries<GeneBankNumber>({
    "Brassica oleracea": coles,
    "Brassica rapa": crucifers,
    "Brassica napus": crucifers,
    "Brassica juncea": crucifers,
    "Raphanus sativus": crucifers,
    "Spinacia oleracea": {
      plants: 80,
      source: `Maintenance of the spinach collection, ${CGN}`,
      note: "only half of the plants bear seed",
    },
    "Allium cepa": { plants: 250, source: `Regeneration of onion and leek, ${CGN}` },
    "Solanum lycopersicum": {
      plants: 7,
      source: `The tomato collection, ${CGN}`,
      note: "14 where the sample is mixed",
    },
  }),
);

const leek: GeneBankNumber = { plants: 80, source: `Regeneration of onion and leek, ${CGN}` };

export function geneBankNumber({
  id,
  species,
}: Pick<Kind, "id" | "species">): GeneBankNumber | null {
  return id === "leek" ? leek : (bySpecies.get(species) ?? null);
}
