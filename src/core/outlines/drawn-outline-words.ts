/** What a drawn outline can become, in words; they are also the first names of what is drawn. */
import type { SurroundingSort } from "../model/plan.ts";

export const outlineTargetWords: Readonly<Record<"bed" | "site" | SurroundingSort, string>> = {
  bed: "Bed",
  path: "Path",
  hedge: "Hedge",
  fence: "Fence",
  tree: "Tree",
  building: "Building",
  water: "Water",
  slope: "Slope",
  pollen: "Pollen source",
  other: "Other ground",
  site: "Edge of the site",
};

export const drawSite = "Draw the site";
