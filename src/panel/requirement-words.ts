/** Where a required distance comes from, for fields and dialogs. */
import type { Requirement } from "../core/checks/isolation-pair.ts";
import { citedAs } from "../core/crops/sources.ts";
import { type LengthUnit, formatDistance } from "../core/model/length.ts";

/** `7.6 m. Why this figure. From "title of the source".` */
export function requirementWords(requirement: Requirement | null, unit: LengthUnit): string {
  if (requirement === null) return "No published distance is known here; type your own.";
  const from = requirement.source === null ? "" : ` Source: ${citedAs(requirement.source)}.`;
  return `${formatDistance(requirement.metres, unit)}: ${requirement.why}.${from}`;
}
