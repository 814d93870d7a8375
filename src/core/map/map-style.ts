/** How things are drawn on paper, and the words the key has for each way. Black on white. */
import type { Planting, Surrounding } from "../model/plan.ts";
import type { Pen } from "../page/scene.ts";

export type StyleName =
  | "bed"
  | "seed"
  | "not seed"
  | "conflict"
  | "pollen"
  | "point"
  | "hedge"
  | "fence"
  | "tree"
  | "building"
  | "water"
  | "path"
  | "slope"
  | "other"
  | "site"
  | "measure"
  | "rows"
  | "stake"
  | "differs"
  | "was";

export interface Style {
  readonly pen: Pen;
  /** A white line along the middle of the pen makes it double. */
  readonly isDouble?: boolean;
  /** Grey of its ground where that is not the paper's white. */
  readonly fill?: number;
  /** What the key says. */
  readonly words: string;
}

/**
 * In the order of the key. Told apart without colour or grey by what is in them, not by dashes
 * alone: ticks, waves, posts, a black corner; see ground-marks.ts.
 */
export const styles: Readonly<Record<StyleName, Style>> = {
  seed: { pen: { widthMm: 0.55 }, words: "for seed" },
  "not seed": { pen: { widthMm: 0.4, dashMm: [1.5, 0.9] }, words: "not for seed" },
  conflict: { pen: { widthMm: 1.1 }, isDouble: true, words: "in a conflict" },
  measure: { pen: { widthMm: 0.35 }, words: "too close" },
  rows: { pen: { widthMm: 0.3 }, words: "row ends; dot: row 1" },
  stake: { pen: { widthMm: 0.35 }, words: "stake for tapes" },
  pollen: { pen: { widthMm: 0.4, dashMm: [2.4, 0.8, 0.4, 0.8] }, words: "pollen source" },
  point: { pen: { widthMm: 0.35 }, words: "single plant or stand" },
  bed: { pen: { widthMm: 0.25 }, words: "bed" },
  site: { pen: { widthMm: 0.3, dashMm: [6, 1, 0.6, 1, 0.6, 1] }, words: "site's edge" },
  hedge: { pen: { widthMm: 0.9, dashMm: [0.5, 0.5] }, words: "hedge" },
  fence: { pen: { widthMm: 0.3, dashMm: [1.6, 0.5] }, words: "fence" },
  tree: { pen: { widthMm: 0.3, dashMm: [0.8, 0.5] }, words: "tree; cross: trunk" },
  building: { pen: { widthMm: 0.8 }, words: "building" },
  water: { pen: { widthMm: 0.3 }, words: "water" },
  path: { pen: { widthMm: 0.15 }, fill: 0.9, words: "path" },
  slope: { pen: { widthMm: 0.2, dashMm: [4, 1.5] }, words: "slope; arrow: down" },
  other: { pen: { widthMm: 0.25, dashMm: [0.4, 0.8] }, words: "other ground" },
  differs: {
    pen: { widthMm: 2, grey: 0.62 },
    words: "differs; its number stands in the list of differences",
  },
  was: { pen: { widthMm: 0.45, dashMm: [0.8, 0.8] }, words: "as it was, or what was removed" },
};

export const styleNames = Object.keys(styles) as readonly StyleName[];

export function plantingStyle(planting: Planting, isInConflict: boolean): StyleName {
  if (isInConflict) return "conflict";
  return planting.purpose === "seed" ? "seed" : "not seed";
}

export function surroundingStyle(surrounding: Surrounding): StyleName {
  return surrounding.what === "pollen" && surrounding.outline.shape === "point"
    ? "point"
    : surrounding.what;
}

/** A covered planting says so beside its code: the helper looks for a cage, not for a sign. */
export function coverWords(cover: Planting["cover"]): string {
  return { none: "", cage: "cage", bags: "bags", hand: "hand" }[cover];
}

/** Type sizes in points; nothing on the sheet is smaller than the last. */
export const TYPE_PT = { title: 15, code: 10, body: 9, small: 8, least: 7 } as const;
