/** The few things every region shows; all are stored references. */
import { wordingOf } from "../../core/checks/checked-layout.ts";
import type { Wording } from "../../core/checks/wording.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { useFollowed } from "./followed-plan.ts";

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

/** Names and stands for words about the layout on screen. */
export function useWording(): Wording {
  return useFollowed(({ shown: plan, layoutId, book, result }) =>
    wordingOf({ plan, layout: layoutOf(plan, layoutId), book, result }),
  );
}
