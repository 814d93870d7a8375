/** What is done with a kind, in words, each with who says so. */
import type { HandWay } from "./by-hand.ts";
import { type Rule, ruleCited } from "./practice.ts";
import type { UnderCover } from "./under-cover.ts";

const UNDER: Readonly<Record<UnderCover, string>> = {
  itself: "It sets seed by itself under cover",
  bees: "It needs bees inside: a small hive or nucleus, mason bees or bumblebees",
  flies:
    "It needs flies inside, fresh ones for two weeks: an onion set 10 to 20 % of its seed after three days of them and up to 60 % after two weeks",
  "flies and bees":
    "It needs flies inside, house flies and blue bottles, better with bees than bees alone; they work between 21 and 32 °C",
  bumblebees: "It needs bumblebees inside, or each flower tripped by hand",
  shaken:
    "Wind carries its pollen: put flowering stalks of several plants of the variety into one bag of close cloth, and shake it every day",
  hand: "The flowers are pollinated by hand",
};

const HAND: Readonly<Record<HandWay, string>> = {
  "buds taped":
    "Tape male and female buds shut the evening before they open, pollinate early next morning with males of other plants, tape again and mark the fruit",
  "at night":
    "It opens at night: tie the buds shut before evening, pollinate that evening, tie again and mark the fruit",
  "buds bagged":
    "Bag male and female buds before they open, as those of tomorrow are too small to tape; pollinate in the morning, bag again and mark the fruit",
  "ears and tassels":
    "Bag the ears before silks show, and the tassels; shake dry pollen of many plants over the silks, bag again at once and mark the ear. Wet pollen is of no use",
  "heads brushed":
    "Bag heads before they open and brush pollen from head to head of the variety for as long as they flower, bagging them again each time",
  "umbels brushed":
    "Bag umbels before they open and brush them every day for two weeks, with one brush for each variety",
  tripped:
    "Keep the trusses shut in bags and press each flower open by hand when it is ready, with pollen of other plants of the variety",
  "plant to plant":
    "Keep branches shut in bags and brush pollen from plant to plant of the variety; none sets with its own",
};

/** Who does the work under a cover. */
export function underWords({ value, source }: Rule<UnderCover>): string {
  return `${UNDER[value]} (${ruleCited(source)}).`;
}

/** How it is pollinated by hand. */
export function handWords({ value, source }: Rule<HandWay>): string {
  return `${HAND[value]} (${ruleCited(source)}).`;
}
