/**
 * The copy of the program on the device: kept for working without a network, and renewed only when
 * the grower asks for it. A new version is fetched in the background and waits; a page that is open
 * goes on with the version it began with.
 */
import { create } from "zustand";
import { finishTyping, flushAutosave } from "./autosave.ts";
import { hasWorkToLose } from "./current-plan.ts";
import { note } from "./diagnostics.ts";
import { tell } from "./save-state.ts";
import * as words from "./words.ts";

interface ProgramUpdate {
  /** A newer version lies ready. */
  readonly isReady: boolean;
}

export const useProgramUpdate = create<ProgramUpdate>()(() => ({ isReady: false }));

let registration: ServiceWorkerRegistration | null = null;

/** Has the browser keep the program on the device. Where it cannot, everything else works. */
export async function keepProgramHere(workerAddress: string): Promise<void> {
  if (!("serviceWorker" in navigator)) return;
  try {
    registration = await navigator.serviceWorker.register(workerAddress, {
      updateViaCache: "none",
    });
    watch(registration);
  } catch (error) {
    note("offline", words.notKeptOffline(String(error)));
  }
}

function watch(kept: ServiceWorkerRegistration): void {
  const offer = () => {
    // Without a worker in charge this is the first visit, not an update.
    if (kept.waiting && navigator.serviceWorker.controller) {
      useProgramUpdate.setState({ isReady: true });
    }
  };
  offer();
  kept.addEventListener("updatefound", () => {
    const coming = kept.installing;
    coming?.addEventListener("statechange", () => {
      if (coming.state === "installed") offer();
      if (coming.state === "redundant") note("offline", words.updateIncomplete);
    });
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") kept.update().catch(() => undefined);
  });
}

/** Puts the offer away until the page is opened again. */
export function postponeUpdate(): void {
  useProgramUpdate.setState({ isReady: false });
}

/** Saves, then loads the page anew with the version that waits. Unsaved work holds it back. */
export async function loadUpdate(): Promise<void> {
  if (!(await isSafeToLeave())) return;
  const waiting = registration?.waiting;
  if (!waiting) {
    window.location.reload();
    return;
  }
  navigator.serviceWorker.addEventListener("controllerchange", () => window.location.reload(), {
    once: true,
  });
  waiting.postMessage("take-over");
}

/** Saves and loads the page anew, as when a part of the program could not be fetched. */
export async function reloadPage(): Promise<void> {
  if (await isSafeToLeave()) window.location.reload();
}

async function isSafeToLeave(): Promise<boolean> {
  finishTyping();
  await flushAutosave();
  if (!hasWorkToLose()) return true;
  tell(words.unsavedBeforeUpdate);
  return false;
}
