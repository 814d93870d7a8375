/** Whether a lot can be kept as it is typed, said before anything changes. */
import { changeLots } from "../../core/edits/lot-edits.ts";
import { patched } from "../../core/edits/edit.ts";
import { lotInPlanFaults } from "../../core/lots/lot-in-plan.ts";
import type { Lot, Plan } from "../../core/model/plan.ts";
import { commit, planNow } from "../state/plan-actions.ts";

export type LotChanges = { readonly [Key in keyof Omit<Lot, "id">]?: Lot[Key] | undefined };

/** Why the lot cannot be kept on the plan's shelf, or null. */
export function lotRefusal(plan: Plan, lot: Lot): string | null {
  if (lot.code.trim() === "") return "Type the code of the lot";
  const [fault] = lotInPlanFaults(plan, lot);
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
  [/^variety$/, "Variety"],
  [/^partOf/, "Split or mixed from"],
  [/^grownFrom/, "Grown from"],
  [/^note$/, "Note"],
];

function fieldWords(path: string): string {
  return FIELDS.find(([pattern]) => pattern.test(path))?.[1] ?? path;
}
