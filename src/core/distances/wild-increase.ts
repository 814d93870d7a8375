/**
 * The increases sources ask for beside wild and weedy plants. The kind of the pollen source is
 * known, so they are applied unasked, to published figures, at every level, and named.
 */
import { METRES_PER_FOOT } from "../model/length.ts";

export interface WildIncrease {
  /** Ids of the seed parents' kinds. */
  readonly parents: readonly string[];
  /** Id of the wild or weedy kind whose pollen it is about. */
  readonly wild: string;
  /** The least distance, metres. */
  readonly atLeastM: number;
  /** As printed, with what it is printed for. */
  readonly why: string;
  /** Id of a source (sources.ts). */
  readonly source: string;
}

export const wildIncreases: readonly WildIncrease[] = [
  {
    parents: ["sunflower"],
    wild: "wild-sunflower",
    atLeastM: 5280 * METRES_PER_FOOT,
    why: "5280 ft from wild plants and volunteers (footnote 45)",
    source: "cfr-201-76",
  },
  {
    parents: ["carrot"],
    wild: "wild-carrot",
    atLeastM: 1000,
    why: "wild carrot counts as a contaminant, 1000 m at the strictest class; a handbook asks for a cage wherever wild carrot is near",
    source: "icar-ecourse",
  },
  {
    parents: ["beet", "chard", "sugar-beet", "fodder-beet"],
    wild: "sea-beet",
    atLeastM: 1000,
    why: "1000 m from any beet pollen but that of named milder cases, which wild and weed beet are not",
    source: "eu-2002-55",
  },
  {
    parents: ["lettuce"],
    wild: "prickly-lettuce",
    atLeastM: 40,
    why: "hybrids of lettuce and prickly lettuce were still found at 40 m, the farthest tested: pull it before it flowers",
    source: "lettuce-hybrids",
  },
  {
    parents: ["radish"],
    wild: "wild-radish",
    atLeastM: 2640 * METRES_PER_FOOT,
    why: "1/2 mile by the chart that warns of wild radishes",
    source: "garden-chart",
  },
  {
    parents: ["parsnip"],
    wild: "wild-parsnip",
    atLeastM: 1320 * METRES_PER_FOOT,
    why: "1/4 mile, the larger end, since wild and garden parsnip cross without isolation",
    source: "manual-seed-saving",
  },
];

/** The increases that can fall on a seed parent of a kind. */
export function wildIncreasesOf(kindId: string): readonly WildIncrease[] {
  return wildIncreases.filter(({ parents }) => parents.includes(kindId));
}
