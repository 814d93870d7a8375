/** The few things every region shows; all are stored references. */
import { type Wording, wordingFor } from "../../core/checks/describe-finding.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import { layoutOf } from "../../store/plan/plan-store.ts";
import { type FollowedPlan, useFollowed } from "./followed-plan.ts";

export function useShownPlan(): Plan {
  return useFollowed((state) => state.shown);
}

export function useShownLayout(): Layout {
  return useFollowed((state) => layoutOf(state.shown, state.layoutId));
}

/** Checks of what is shown. */
export function useShownResult(): CheckResult {
  return useFollowed((state) => state.result);
}

/** Made once for every result: several regions ask for it. */
const wordings = new WeakMap<CheckResult, Wording>();

function wordingOf({ shown, layoutId, result }: FollowedPlan): Wording {
  const made = wordings.get(result);
  if (made) return made;
  const wording = wordingFor(shown, layoutOf(shown, layoutId), (id) => result.standById.get(id));
  wordings.set(result, wording);
  return wording;
}

/** Names and stands for words about the layout on screen. */
export function useWording(): Wording {
  return useFollowed(wordingOf);
}
