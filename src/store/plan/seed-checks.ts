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

type Found = Pick<CheckResult, "byCheck" | "stands">;

/** Watches the open plan from now on for lots, own distances, and findings with more to say. */
export function watchSeedLots(): void {
  loadOnce(
    ({ lots }, result) =>
      lots.length > 0 ||
      WITH_MORE.some((check) => isFound(result, check)) ||
      result.stands.some(({ requirement: own }) => own && (!own.reason || own.source === "own")),
    async () => {
      const { seedReckoning } = await import("../../core/shelf/seed-reckoning.ts");
      joinSeedReckoning(seedReckoning);
    },
  );
}

/** Checks whose findings have more to say once they are fetched. */
const WITH_MORE = ["population", "late-seed"] as const satisfies readonly Finding["check"][];

/** Asked on every frame of a drag, and so of the lists of one check alone. */
function isFound({ byCheck }: Found, check: Finding["check"]): boolean {
  return byCheck.get(check)?.some(({ all }) => all.length > 0) ?? false;
}

/** Watches it for earlier crops, marks on the ground and days of clearing. */
export function watchGround(): void {
  loadOnce(needsGround, async () => {
    const { groundReckoning } = await import("../../core/ground/ground-reckoning.ts");
    joinGroundReckoning(groundReckoning);
  });
}

function loadOnce(
  isNeeded: (plan: Plan, result: Found) => boolean,
  join: () => Promise<void>,
): void {
  let loading: Promise<void> | null = null;
  const look = ({
    plan,
    shown,
    result,
  }: Pick<ReturnType<typeof usePlanStore.getState>, "plan" | "shown" | "result">) => {
    if (loading || !(isNeeded(plan, result) || (shown !== plan && isNeeded(shown, result)))) return;
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
