/** Living with a finding, and no longer living with it. */
import type { Plan } from "../model/plan.ts";
import type { Edit } from "./edit.ts";
import * as steps from "../words/step-words.ts";

type Acceptance = Plan["accepted"][number];

/** Keeps a finding away in its layout while it is no worse than the acceptance says. */
export function acceptFinding(acceptance: Acceptance): Edit {
  return {
    title: steps.accept,
    apply: (plan) => ({
      ...plan,
      accepted: [
        ...plan.accepted.filter((entry) => !isSame(entry, acceptance.finding, acceptance.layout)),
        acceptance,
      ],
    }),
  };
}

/** @param layoutId the layout in which it is no longer accepted */
export function withdrawAcceptance(finding: string, layoutId: string): Edit {
  return {
    title: steps.resetAccepted,
    apply: (plan) => ({
      ...plan,
      accepted: plan.accepted.filter((entry) => !isSame(entry, finding, layoutId)),
    }),
  };
}

/** Entries of older files hold for every layout. */
function isSame(entry: Acceptance, finding: string, layoutId: string | undefined): boolean {
  return entry.finding === finding && (entry.layout === undefined || entry.layout === layoutId);
}
