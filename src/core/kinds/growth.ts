/**
 * How a kind's bloom ends and which season its figures were made for, beside its numbers. All of
 * it is common practice; a kind in neither list is hardy and ends by itself; a
 * test names those, so that none is forgotten.
 */
import type { Kind } from "./crop.ts";

function idsOf(words: string): ReadonlySet<string> {
  return new Set(words.trim().split(/\s+/));
}

/** Killed by the first frost. */
const tender = idsOf(`
  tomato currant-tomato pepper hot-pepper habanero bird-pepper aji rocoto eggplant
  husk-tomato tomatillo tobacco summer-squash pumpkin ornamental-gourd winter-squash
  butternut cushaw fig-leaf-gourd cucumber melon watermelon citron-melon bottle-gourd
  luffa angled-luffa bitter-gourd wax-gourd common-bean runner-bean lima-bean soybean
  cowpea yardlong-bean mung-bean peanut pigeon-pea hyacinth-bean sunflower
  african-marigold french-marigold zinnia cosmos nasturtium grain-amaranth
  love-lies-bleeding leaf-amaranth maize sweet-corn popcorn sorghum broomcorn rice
  proso-millet foxtail-millet pearl-millet okra basil buckwheat sesame west-india-gherkin
  blood-amaranth pigweed wild-sunflower
`);

/** Flower on until frost or cutting: the days of bloom given are where the count was broken off. */
const openEnded = idsOf(`
  tomato currant-tomato pepper hot-pepper habanero bird-pepper aji rocoto eggplant
  husk-tomato tomatillo summer-squash pumpkin ornamental-gourd winter-squash butternut
  cushaw fig-leaf-gourd cucumber melon watermelon citron-melon bottle-gourd luffa
  angled-luffa bitter-gourd wax-gourd common-bean runner-bean lima-bean cowpea
  yardlong-bean peanut pigeon-pea hyacinth-bean sweet-pea calendula african-marigold
  french-marigold zinnia cosmos nasturtium okra basil fennel west-india-gherkin mung-bean
  chickpea tobacco buckwheat sesame love-lies-bleeding wild-sunflower
`);

export interface Growth {
  readonly isTender: boolean;
  readonly isOpenEnded: boolean;
}

export function growthOf({ id }: Pick<Kind, "id">): Growth {
  return { isTender: tender.has(id), isOpenEnded: openEnded.has(id) };
}

/** Ids named above, for the test that each is a kind. */
export const growthKinds: readonly string[] = [...new Set([...tender, ...openEnded])];
