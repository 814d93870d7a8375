/** A variety being typed, and what it still lacks. */
import { nextId } from "../../core/edits/edit.ts";
import { isSameVariety } from "../../core/model/variety-key.ts";
import type { Plan, Variety } from "../../core/model/plan.ts";
import * as words from "./dialog-words.ts";

/** A variety without a kind yet has an empty one. */
export function blankVariety(plan: Plan): Variety {
  const taken = plan.varieties.map((variety) => variety.id);
  return { id: nextId("variety-", taken), name: "", kind: "" };
}

/** Why the variety cannot be kept as typed, or null. */
export function varietyProblem(plan: Plan, variety: Variety): string | null {
  if (variety.name === "") return words.typeVarietyName;
  if (variety.kind === "") return words.pickKind;
  const twin = plan.varieties.find(
    (other) => other.id !== variety.id && isSameVariety(other, variety),
  );
  return twin ? words.alreadyListed(twin.name) : null;
}

/** The variety with another kind; what belonged to the old kind goes. */
export function withKind(variety: Variety, kind: string): Variety {
  if (kind === variety.kind) return variety;
  const { form: _form, figure: _figure, ...rest } = variety;
  return { ...rest, kind };
}
