/** Living with a finding, and no longer living with it. */
import type { Edit } from "./edit.ts";

/** Keeps a finding away until its requirement changes. `requiredM` is what was required now. */
export function acceptFinding(finding: string, requiredM: number | null, reason: string): Edit {
  return {
    title: "Accept a finding",
    apply: (plan) => ({
      ...plan,
      accepted: [
        ...plan.accepted.filter((entry) => entry.finding !== finding),
        { finding, reason, requiredM },
      ],
    }),
  };
}

export function withdrawAcceptance(finding: string): Edit {
  return {
    title: "Take back an acceptance",
    apply: (plan) => ({
      ...plan,
      accepted: plan.accepted.filter((entry) => entry.finding !== finding),
    }),
  };
}
