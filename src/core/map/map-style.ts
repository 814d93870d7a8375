/** How things are drawn on paper, black on white; what the key says of each stands in map-words.ts. */
import type { Planting, Surrounding } from "../model/plan.ts";
import type { Pen } from "../page/scene.ts";

export type StyleName =
  | "bed"
  | "seed"
  | "not seed"
  | "conflict"
  | "disease"
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
}

/**
 * In the order of the key. Told apart without colour or grey by what is in them, not by dashes
 * alone: ticks, waves, posts, a black corner; see ground-marks.ts.
 */
export const styles: Readonly<Record<StyleName, Style>> = {
  seed: { pen: { widthMm: 0.55 } },
  "not seed": { pen: { widthMm: 0.4, dashMm: [1.5, 0.9] } },
  conflict: { pen: { widthMm: 1.1 }, isDouble: true },
  disease: { pen: { widthMm: 0.3 } },
  measure: { pen: { widthMm: 0.35 } },
  rows: { pen: { widthMm: 0.3 } },
  stake: { pen: { widthMm: 0.35 } },
  pollen: { pen: { widthMm: 0.4, dashMm: [2.4, 0.8, 0.4, 0.8] } },
  point: { pen: { widthMm: 0.35 } },
  bed: { pen: { widthMm: 0.25 } },
  site: { pen: { widthMm: 0.3, dashMm: [6, 1, 0.6, 1, 0.6, 1] } },
  hedge: { pen: { widthMm: 0.9, dashMm: [0.5, 0.5] } },
  fence: { pen: { widthMm: 0.3, dashMm: [1.6, 0.5] } },
  tree: { pen: { widthMm: 0.3, dashMm: [0.8, 0.5] } },
  building: { pen: { widthMm: 0.8 } },
  water: { pen: { widthMm: 0.3 } },
  path: { pen: { widthMm: 0.15 }, fill: 0.9 },
  slope: { pen: { widthMm: 0.2, dashMm: [4, 1.5] } },
  other: { pen: { widthMm: 0.25, dashMm: [0.4, 0.8] } },
  differs: {
    pen: { widthMm: 2, grey: 0.62 },
  },
  was: { pen: { widthMm: 0.45, dashMm: [0.8, 0.8] } },
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

/** Type sizes in points; nothing on the sheet is smaller than the last. */
export const TYPE_PT = { title: 15, code: 10, body: 9, small: 8, least: 7 } as const;
