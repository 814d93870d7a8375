/**
 * Land years of 7 CFR 201.76 by class. The kinds carry those of the strictest class (landYears);
 * only where a laxer class has fewer do they differ.
 */
import type { Kind } from "../kinds/crop.ts";

export type UsClass = "foundation" | "registered" | "certified";

/** Fewer years for certified seed. */
const certified: ReadonlyMap<string, number> = new Map([
  ["mustard", 2],
  ["oilseed-rape", 2],
]);

/** Years for a kind and class; undefined where the table has no row for the kind. */
export function usLandYears({ id, landYears }: Kind, seedClass: UsClass): number | undefined {
  if (landYears?.source !== "cfr-201-76") return undefined;
  return (seedClass === "certified" ? certified.get(id) : undefined) ?? landYears.value;
}
