/** Whether a lot can be kept as it is typed, said before anything changes. */
import { changeLots } from "../../core/edits/lot-edits.ts";
import { patched } from "../../core/edits/edit.ts";
import { lotBook } from "../../core/lots/lot-book.ts";
import { lotFaults } from "../../core/model/lot-problems.ts";
import { lot as lotSchema } from "../../core/model/lot-schema.ts";
import type { Lot, Plan } from "../../core/model/plan.ts";
import { expectedText } from "../../core/model/read-plan.ts";
import { commit, planNow } from "../state/plan-actions.ts";

export type LotChanges = { readonly [Key in keyof Omit<Lot, "id">]?: Lot[Key] | undefined };

/** Why the lot cannot be kept, or null: its own fields, and its code among the others. */
export function lotRefusal(plan: Pick<Plan, "lots">, lot: Lot): string | null {
  if (lot.code.trim() === "") return "Type the code of the lot";
  const twin = lotBook(plan.lots).ofCode(lot.code);
  if (twin && twin.id !== lot.id) return `${twin.code} is the code of another lot`;
  const read = lotSchema.safeParse(lot);
  if (!read.success) {
    const [issue] = read.error.issues;
    const field = fieldWords(issue?.path.join(".") ?? "");
    return `${field}: expected ${issue ? expectedText(issue) : "something else"}`;
  }
  const [fault] = lotFaults(lot);
  return fault ? `${fieldWords(fault.field)}: got ${fault.got}, expected ${fault.expected}` : null;
}

/** Changes one lot in one step, unless it could not be kept so; then says why. */
export function changeLot(lot: Lot, changes: LotChanges, title: string): string | null {
  const { plan } = planNow();
  const refusal = lotRefusal(plan, patched(lot, changes));
  if (refusal !== null) return refusal;
  commit(changeLots([lot.id], changes, title));
  return null;
}

const FIELDS: readonly (readonly [RegExp, string])[] = [
  [/^tests.*date$/, "Date of a test"],
  [/^tests.*sown$/, "Seeds sown"],
  [/^tests.*sprouted$/, "Sprouted"],
  [/^tests.*hard$/, "Hard seed"],
  [/^tests.*replicates/, "Parts"],
  [/^tests.*days$/, "Days"],
  [/^tests/, "Test"],
  [/^stored.*from$/, "Since when it lies there"],
  [/^stored.*moisturePct$/, "Moisture"],
  [/^stored/, "Storage place"],
  [/^from\.on$/, "Day received"],
  [/^from/, "Where from"],
  [/^harvestYear$/, "Harvest year"],
  [/^amount/, "Amount"],
  [/^seedsPerGram$/, "Seeds in a gram"],
  [/^treatedWith$/, "Treated with"],
  [/^code$/, "Code"],
];

function fieldWords(path: string): string {
  return FIELDS.find(([pattern]) => pattern.test(path))?.[1] ?? path;
}
