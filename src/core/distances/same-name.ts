/**
 * The small distance between stock seed and another lot of the same name: law asks for it because
 * a stand of a name is not always true to it.
 */
import type { Kind } from "../kinds/crop.ts";
import { METRES_PER_FOOT } from "../model/length.ts";
import { MIXING_STRIP } from "./mixing-strip.ts";

export interface SmallDistance {
  readonly metres: number;
  readonly source: string;
  readonly words: string;
  /** Printed by a law for the kind; otherwise the strip against mixing. */
  readonly isLaw: boolean;
}

/** Rows of 7 CFR 201.76 that give a distance between classes of one variety. */
const TEN_FEET = new Set(["mustard", "oilseed-rape"]);
const HALF_OF_STOCK = new Set([
  "tomato",
  "pepper",
  "hot-pepper",
  "habanero",
  "bird-pepper",
  "aji",
  "rocoto",
]);
/** Foundation figure of tomato and pepper in the same table. */
const FOUNDATION_FEET = 200;

export function smallDistanceOf(kind: Kind): SmallDistance {
  if (HALF_OF_STOCK.has(kind.id)) {
    return law(
      (FOUNDATION_FEET / 2) * METRES_PER_FOOT,
      "half of 200 ft between classes of one variety (footnote 25)",
    );
  }
  if (TEN_FEET.has(kind.id)) {
    return law(10 * METRES_PER_FOOT, "10 ft between classes of one variety (footnote 24)");
  }
  if (kind.id === "onion") {
    return {
      metres: 1000,
      source: "icar-ecourse",
      words: "1000 m also from the same variety where it is not known to be true",
      isLaw: true,
    };
  }
  return {
    ...MIXING_STRIP,
    words: "no distance is published between lots of one name; this strip keeps harvests apart",
    isLaw: false,
  };
}

function law(metres: number, words: string): SmallDistance {
  return { metres, source: "cfr-201-76", words, isLaw: true };
}
