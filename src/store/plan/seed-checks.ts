/**
 * Checks that are loaded once a plan needs them, then all is checked anew: those that reckon with
 * seed lots, and those of what ground remembers.
 */
import { joinGroundReckoning, needsGround } from "../../core/checks/ground-checks.ts";
import { joinSeedReckoning } from "../../core/checks/seed-lots.ts";
import type { Plan } from "../../core/model/plan.ts";
import { usePlanStore } from "./plan-store.ts";

/** Watches the open plan from now on for lots. */
export function watchSeedLots(): void {
  loadOnce(
    ({ lots }) => lots.length > 0,
    async () => {
      const { seedReckoning } = await import("../../core/shelf/seed-reckoning.ts");
      joinSeedReckoning(seedReckoning);
    },
  );
}

/** Watches it for earlier crops, marks on the ground and days of clearing. */
export function watchGround(): void {
  loadOnce(needsGround, async () => {
    const { groundReckoning } = await import("../../core/ground/ground-reckoning.ts");
    joinGroundReckoning(groundReckoning);
  });
}

function loadOnce(isNeeded: (plan: Plan) => boolean, join: () => Promise<void>): void {
  let loading: Promise<void> | null = null;
  const look = ({
    plan,
    shown,
  }: Pick<ReturnType<typeof usePlanStore.getState>, "plan" | "shown">) => {
    if (loading || !(isNeeded(plan) || isNeeded(shown))) return;
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
