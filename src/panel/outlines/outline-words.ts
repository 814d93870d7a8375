/** Words for the outlines of a file. */
import { importOrigin } from "../../core/outlines/import-outlines.ts";
import type { PlacedTrace, TraceRole } from "../../core/outlines/place-trace.ts";
import type { Trace, TraceSort } from "../../core/outlines/trace.ts";
import type { Plan } from "../../core/model/plan.ts";
import { formOf } from "../../core/words/plurals.ts";

export const roleWords: Readonly<Record<TraceRole, string>> = {
  skip: "nothing: skipped",
  bed: "a bed",
  site: "the site's outline",
  hedge: "a hedge",
  fence: "a fence",
  path: "a path",
  building: "a building",
  water: "water",
  tree: "a tree",
  pollen: "a pollen source",
  other: "other ground",
};

export const sortWords: Readonly<Record<TraceSort, string>> = {
  area: "outlines",
  line: "lines",
  point: "points",
};

/** `track, 812 places, 24 corners`. */
export function traceWords(trace: Trace, placed: PlacedTrace | null): string {
  const count = trace.places.length;
  const parts = [trace.what, ...(trace.sort === "point" ? [] : [`${count} places`])];
  if (placed?.ok !== true || placed.shape.shape === "point") return parts.join(", ");
  const kept = placed.shape.shape === "rectangle" ? "a rectangle" : corners(placed.shape.corners);
  return [...parts, `drawn as ${kept}`].join(", ");
}

function corners({ length }: readonly unknown[]): string {
  return `${length} corners`;
}

/** Where on the sheet the file comes to lie. */
export function positionWords(plan: Plan, traces: readonly Trace[]): string {
  if (plan.site.position) {
    return "They are laid where their longitude and latitude say, about the position of the site.";
  }
  const { latitude, longitude } = importOrigin(plan, traces);
  const drawn = plan.layouts.some((layout) => layout.beds.length > 0);
  return `The site has no position yet: the middle of this file (latitude ${latitude.toFixed(5)}, longitude ${longitude.toFixed(5)}) becomes the origin of the sheet.${drawn ? " What is drawn already stays where it is on the sheet, which may not be its true place." : ""}`;
}

export function takeOutlinesWords(count: number): string {
  if (count === 0) return "Nothing to take";
  return formOf(count, { one: "Add 1 outline", other: `Add ${count} outlines` });
}
