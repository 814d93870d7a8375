/** The checks that reckon with seed lots: loaded once a plan has some, then all is checked anew. */
import { joinSeedReckoning } from "../../core/checks/seed-lots.ts";
import { usePlanStore } from "./plan-store.ts";

let loading: Promise<void> | null = null;

/** Watches the open plan from now on. */
export function watchSeedLots(): void {
  const look = ({ plan }: { readonly plan: { readonly lots: readonly unknown[] } }) => {
    if (plan.lots.length === 0 || loading) return;
    loading = join().catch(() => {
      // Away from the network for the moment: the next change of the plan tries again.
      loading = null;
    });
  };
  usePlanStore.subscribe(look);
  look(usePlanStore.getState());
}

async function join(): Promise<void> {
  const { seedReckoning } = await import("../../core/shelf/seed-reckoning.ts");
  joinSeedReckoning(seedReckoning);
  usePlanStore.getState().checkAnew();
}
