/** A variety being typed, and what it still lacks. */
import { requirementOf } from "../core/checks/stand.ts";
import type { Requirement } from "../core/checks/isolation-pair.ts";
import type { CropBook } from "../core/crops/crop-book.ts";
import { nextId } from "../core/edits/edit.ts";
import type { Plan, Planting, Variety } from "../core/model/plan.ts";

/** A variety without a kind yet has an empty one. */
export function blankVariety(plan: Plan): Variety {
  const taken = plan.varieties.map((variety) => variety.id);
  return { id: nextId("variety-", taken), name: "", kind: "" };
}

/** Why the variety cannot be kept as typed, or null. */
export function varietyProblem(plan: Plan, variety: Variety): string | null {
  if (variety.name === "") return "Type the variety's name";
  if (variety.kind === "") return "Pick the kind it belongs to";
  const twin = plan.varieties.find(
    (other) =>
      other.id !== variety.id && other.kind === variety.kind && sameName(other.name, variety.name),
  );
  return twin ? `${twin.name} is already in the seed list` : null;
}

function sameName(a: string, b: string): boolean {
  return a.normalize("NFC").trim().toLowerCase() === b.normalize("NFC").trim().toLowerCase();
}

/** The variety with another kind; what belonged to the old kind goes. */
export function withKind(variety: Variety, kind: string): Variety {
  if (kind === variety.kind) return variety;
  const { form: _form, figure: _figure, ...rest } = variety;
  return { ...rest, kind };
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
