/**
 * How a kind's bloom ends and which season its figures were made for, beside its numbers. All of
 * it is common practice; where a kind is missing it counts as hardy and as ending by itself.
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
  proso-millet foxtail-millet pearl-millet okra basil buckwheat sesame
`);

/** Flower on until frost or cutting: the days of bloom given are where the count was broken off. */
const openEnded = idsOf(`
  tomato currant-tomato pepper hot-pepper habanero bird-pepper aji rocoto eggplant
  husk-tomato tomatillo summer-squash pumpkin ornamental-gourd winter-squash butternut
  cushaw fig-leaf-gourd cucumber melon watermelon citron-melon bottle-gourd luffa
  angled-luffa bitter-gourd wax-gourd common-bean runner-bean lima-bean cowpea
  yardlong-bean peanut pigeon-pea hyacinth-bean sweet-pea calendula african-marigold
  french-marigold zinnia cosmos nasturtium okra basil fennel
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
