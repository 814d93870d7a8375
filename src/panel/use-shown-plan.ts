/** The few things every region reads from the store; all are stored references. */
import { type Wording, wordingFor } from "../core/checks/describe-finding.ts";
import type { CheckResult } from "../core/checks/run-checks.ts";
import type { Layout, Plan } from "../core/model/plan.ts";
import { type PlanState, layoutOf, usePlanStore } from "../store/plan-store.ts";

export function useShownPlan(): Plan {
  return usePlanStore((state) => state.shown);
}

export function useShownLayout(): Layout {
  return usePlanStore((state) => layoutOf(state.shown, state.layoutId));
}

/** Made once for every result: several regions ask for it on each frame of a drag. */
const wordings = new WeakMap<CheckResult, Wording>();

function wordingOf({ shown, layoutId, result }: PlanState): Wording {
  const made = wordings.get(result);
  if (made) return made;
  const wording = wordingFor(shown, layoutOf(shown, layoutId), (id) => result.standById.get(id));
  wordings.set(result, wording);
  return wording;
}

/** Names and stands for words about the layout on screen. */
export function useWording(): Wording {
  return usePlanStore(wordingOf);
}
