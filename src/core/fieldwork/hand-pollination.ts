/**
 * What pollination by hand asks for, by the build of the flower. Common practice of seed growers;
 * the grower's own way goes before it.
 */
import type { Kind } from "../kinds/crop.ts";
import { handWords as words } from "./job-words.ts";

export interface HandPollination {
  /** The evening before: what is closed so that no insect comes first. */
  readonly close: string;
  /** The morning after. */
  readonly pollinate: string;
}

const SEPARATE_FLOWERS: HandPollination = { close: words.tapeBuds, pollinate: words.brushTaped };

/** So small and so many that those of tomorrow are hard to tell. */
const SMALL_FLOWERS: HandPollination = { close: words.bagBuds, pollinate: words.brushBagged };

const EARS: HandPollination = { close: words.bagEars, pollinate: words.shakeTassels };

const SELFING: HandPollination = { close: words.closeSelfing, pollinate: words.shakeSelfing };

const OTHERS: HandPollination = { close: words.bagBranches, pollinate: words.brushBranches };

/** The words of a kind, to follow its name: `Evenings, A01-1: tape shut ...`. */
export function handPollination({ family, breeding, id }: Kind): HandPollination {
  if (SMALL_FLOWERED.has(id)) return SMALL_FLOWERS;
  if (family === "Cucurbitaceae") return SEPARATE_FLOWERS;
  if (family === "Poaceae" && EARED.has(id)) return EARS;
  return breeding === "selfing" || breeding === "mostly selfing" ? SELFING : OTHERS;
}

const SMALL_FLOWERED: ReadonlySet<string> = new Set(["watermelon", "citron-melon"]);
const EARED: ReadonlySet<string> = new Set(["maize", "sweet-corn", "popcorn"]);
