/**
 * Checks that are loaded once a plan needs them, then all is checked anew: those that reckon with
 * seed lots and with what few plants or an early frost do, and those of what ground remembers.
 */
import type { Finding } from "../../core/checks/all-checks.ts";
import { joinGroundReckoning, needsGround } from "../../core/checks/ground-checks.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { joinSeedReckoning } from "../../core/checks/seed-lots.ts";
import type { Plan } from "../../core/model/plan.ts";
import { usePlanStore } from "./plan-store.ts";

/** Watches the open plan from now on for lots, and for findings that have more to say. */
export function watchSeedLots(): void {
  loadOnce(
    ({ lots }, { findings }) => lots.length > 0 || findings.some(asksForMore),
    async () => {
      const { seedReckoning } = await import("../../core/shelf/seed-reckoning.ts");
      joinSeedReckoning(seedReckoning);
    },
  );
}

function asksForMore({ check }: Finding): boolean {
  return check === "population" || check === "late-seed";
}

/** Watches it for earlier crops, marks on the ground and days of clearing. */
export function watchGround(): void {
  loadOnce(needsGround, async () => {
    const { groundReckoning } = await import("../../core/ground/ground-reckoning.ts");
    joinGroundReckoning(groundReckoning);
  });
}

function loadOnce(
  isNeeded: (plan: Plan, result: Pick<CheckResult, "findings">) => boolean,
  join: () => Promise<void>,
): void {
  let loading: Promise<void> | null = null;
  const look = ({
    plan,
    shown,
    result,
  }: Pick<ReturnType<typeof usePlanStore.getState>, "plan" | "shown" | "result">) => {
    if (loading || !(isNeeded(plan, result) || isNeeded(shown, result))) return;
    loading = join().then(
      () => usePlanStore.getState().checkAnew(),
      () => {
        // Away from the network for the moment: the next change of the plan tries again.
        loading = null;
      },
    );
  };
  usePlanStore.subscribe(look);
  look(usePlanStore.getState());
}
