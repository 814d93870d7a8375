/**
 * A browser tab: its own copy of the program over the storage, locks and messages that all tabs
 * share. Killing a tab saves nothing; opening another with its notes is what a reload is.
 */
import { vi } from "vitest";
import type { Plan } from "../../src/core/model/plan.ts";
import { writePlan } from "../../src/core/model/read-plan.ts";
import { planFromText } from "../../src/store/keeping/plan-text.ts";
import { FakeNotes } from "./fake-page.ts";
import { gardenPlan } from "./garden-plan.ts";

export type Tab = Awaited<ReturnType<typeof openTab>>;

const open: { readonly kill: () => Promise<void> }[] = [];

export async function openTab({
  notes = new FakeNotes(),
  sample = writePlan(gardenPlan()),
}: { readonly notes?: FakeNotes; readonly sample?: string } = {}) {
  vi.stubGlobal("sessionStorage", notes);
  vi.resetModules();
  const { usePlanStore } = await import("../../src/store/plan/plan-store.ts");
  const { useSaveState } = await import("../../src/store/keeping/save-state.ts");
  const { startSession, endSession } = await import("../../src/app/session.ts");
  const { askRememberedPlans } = await import("../../src/store/keeping/last-plan.ts");
  const { useWindowStore } = await import("../../src/store/window/window-store.ts");
  const { flushAutosave } = await import("../../src/store/keeping/autosave.ts");
  const { takeOver } = await import("../../src/store/keeping/plan-lock.ts");
  const file = await import("../../src/store/files/plan-file.ts");
  const { downloadPlan } = await import("../../src/store/files/download-plan.ts");
  const stored = await import("../../src/store/keeping/stored-plans.ts");
  const tab = {
    notes,
    start: () => {
      const read = planFromText(sample, "sample plan");
      // Long before the program has come, as the page does.
      askRememberedPlans(async () => (read.ok ? read.value.id : null));
      return startSession(async () => read);
    },
    kill: endSession,
    flush: flushAutosave,
    takeOver,
    file,
    download: downloadPlan,
    stored,
    store: usePlanStore,
    window: useWindowStore,
    plan: (): Plan => usePlanStore.getState().plan,
    title: () => usePlanStore.getState().plan.title,
    retitle: (title: string) =>
      usePlanStore.getState().commit({
        title: `Rename to ${title}`,
        apply: (plan) => ({ ...plan, title }),
      }),
    saveState: useSaveState,
    status: () => useSaveState.getState().state,
    notice: () => useSaveState.getState().notice,
    announced: () => useWindowStore.getState().announcement,
    problems: () => useSaveState.getState().problems,
    isReadOnly: () => useSaveState.getState().isReadOnly,
  };
  open.push(tab);
  return tab;
}

/** A tab with its plan open and stored. */
export async function startTab(wants: Parameters<typeof openTab>[0] = {}): Promise<Tab> {
  const tab = await openTab(wants);
  await tab.start();
  await tab.flush();
  return tab;
}

/** The tab dies without a word and comes back. */
export async function reload(tab: Tab): Promise<Tab> {
  await tab.kill();
  return startTab({ notes: tab.notes });
}

export async function killAllTabs(): Promise<void> {
  for (const tab of open.splice(0)) await tab.kill();
}
