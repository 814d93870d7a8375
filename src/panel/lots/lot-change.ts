/** Whether a lot can be kept as it is typed, said before anything changes. */
import { changeLots } from "../../core/edits/lot-edits.ts";
import { patched } from "../../core/edits/edit.ts";
import { lotInPlanFaults } from "../../core/lots/lot-in-plan.ts";
import type { Lot, Plan } from "../../core/model/plan.ts";
import { commit, planNow } from "../state/plan-actions.ts";
import { fieldFault, fieldWords } from "./lot-field-words.ts";
import * as words from "./words.ts";

export type LotChanges = { readonly [Key in keyof Omit<Lot, "id">]?: Lot[Key] | undefined };

/** Why the lot cannot be kept on the plan's shelf, or null. */
export function lotRefusal(plan: Plan, lot: Lot): string | null {
  if (lot.code.trim() === "") return words.typeLotCode;
  const [fault] = lotInPlanFaults(plan, lot);
  return fault ? fieldFault(fieldWords(fault.field), fault.got, fault.expected) : null;
}

/** Changes one lot in one step, unless it could not be kept so; then says why. */
export function changeLot(lot: Lot, changes: LotChanges, title: string): string | null {
  const { plan } = planNow();
  const refusal = lotRefusal(plan, patched(lot, changes));
  if (refusal !== null) return refusal;
  commit(changeLots([lot.id], changes, title));
  return null;
}
