/**
 * What pollination by hand asks for, by the build of the flower. Common practice of seed growers;
 * the grower's own way goes before it.
 */
import type { Kind } from "../kinds/crop.ts";

export interface HandPollination {
  /** The evening before: what is closed so that no insect comes first. */
  readonly close: string;
  /** The morning after. */
  readonly pollinate: string;
}

const SEPARATE_FLOWERS: HandPollination = {
  close: "tape shut male and female buds that will open next morning",
  pollinate:
    "early in the morning brush male flowers of other plants of the variety over each female one, tape it shut again and mark the fruit",
};

/** So small and so many that those of tomorrow are hard to tell. */
const SMALL_FLOWERS: HandPollination = {
  close: "bag male and female flowers in insect-proof bags before they open",
  pollinate: SEPARATE_FLOWERS.pollinate.replace("tape it shut", "bag it"),
};

const EARS: HandPollination = {
  close: "bag the ears before silks show, and the tassels",
  pollinate:
    "shake the pollen of bagged tassels over the silks, bag the ear again at once and mark it",
};

const SELFING: HandPollination = {
  close: "bag or tape buds before they open",
  pollinate: "shake or brush the closed flowers once they open, keep them closed and mark each",
};

const OTHERS: HandPollination = {
  close: "bag the flowering branches before buds open",
  pollinate:
    "brush pollen from plant to plant of the variety, bag the branches again and mark them",
};

/** The words of a kind, to follow its name: `Evenings, A01-1: tape shut ...`. */
export function handPollination({ family, breeding, id }: Kind): HandPollination {
  if (SMALL_FLOWERED.has(id)) return SMALL_FLOWERS;
  if (family === "Cucurbitaceae") return SEPARATE_FLOWERS;
  if (family === "Poaceae" && EARED.has(id)) return EARS;
  return breeding === "selfing" || breeding === "mostly selfing" ? SELFING : OTHERS;
}

const SMALL_FLOWERED: ReadonlySet<string> = new Set(["watermelon", "citron-melon"]);
const EARED: ReadonlySet<string> = new Set(["maize", "sweet-corn", "popcorn"]);
