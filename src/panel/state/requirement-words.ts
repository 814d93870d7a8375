/** What distance a variety would need and where the figure comes from, for fields and dialogs. */
import type { Requirement } from "../../core/checks/isolation-pair.ts";
import { requirementOf } from "../../core/checks/requirement.ts";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { citedAs } from "../../core/kinds/sources.ts";
import { type LengthUnit, formatRequired } from "../../core/model/length.ts";
import type { Plan, Planting, Variety } from "../../core/model/plan.ts";
import { whyWords } from "../../core/checks/pair-words.ts";

/** `7.6 m. Why this figure. From "title of the source".` */
export function requirementWords(requirement: Requirement | null, unit: LengthUnit): string {
  if (requirement === null) return "No published distance is known here; type your own.";
  const from = requirement.source === null ? "" : ` Source: ${citedAs(requirement.source)}.`;
  return `${formatRequired(requirement.metres, unit)}: ${whyWords(requirement)}.${from}`;
}

/** What a planting of the variety would need at the plan's level, its own distance included. */
export function varietyRequirement(
  plan: Plan,
  variety: Variety,
  book: CropBook,
): Requirement | null {
  const kind = book.kind(variety.kind);
  if (!kind) return null;
  const planting: Planting = {
    id: "any",
    code: "",
    variety: variety.id,
    outline: { shape: "rectangle", x: 0, y: 0, widthM: 1, lengthM: 1, turnDeg: 0 },
    purpose: "seed",
    flowering: "yes",
    cover: "none",
  };
  return requirementOf(planting, variety, kind, plan.level);
}
