/**
 * From the first moment to the last: opens the plan this tab had, else the one saved last, else a
 * sample; only then begins to save.
 */
import { fail, flushAutosave, startAutosave } from "../store/keeping/autosave.ts";
import { guardEdits } from "../store/keeping/look-only.ts";
import { acceptDroppedFiles } from "../store/files/file-drop.ts";
import { noteChanged } from "../store/files/file-reminder.ts";
import { askToKeepStorage } from "../store/keeping/keep-storage.ts";
import { rememberedHere, rememberedPlans } from "../store/keeping/last-plan.ts";
import { freshPlan } from "../store/keeping/plan-copy.ts";
import { closePlanDb, watchPlanDb } from "../store/keeping/plan-db.ts";
import { watchPlanLock } from "../store/keeping/plan-lock.ts";
import { usePlanStore } from "../store/plan/plan-store.ts";
import { tell, useSaveState } from "../store/keeping/save-state.ts";
import { faultReason } from "../store/keeping/storage-fault.ts";
import type { Plan } from "../core/model/plan.ts";
import { type Read, refuse } from "../core/model/problem.ts";
import { isPartMissing } from "../panel/window/part-missing.ts";
import { openFromOutside, openStored } from "../store/keeping/switch-plan.ts";
import {
  becomeLooker,
  becomeWriter,
  catchUp,
  keepBoth,
} from "../store/keeping/other-tab-changes.ts";
import * as words from "./words.ts";

/** The sample plan, or what is wrong with it: opened only where no plan is stored. */
type LoadSample = () => Promise<Read<Plan>>;

let started: Promise<void> | null = null;
let stops: readonly (() => void)[] = [];

/** Opens a plan and starts saving; to be called once, as early as possible. Never rejects. */
export function startSession(sample: LoadSample): Promise<void> {
  started ??= start(sample);
  return started;
}

/** Lets go of everything, without saving: as when the tab dies. */
export async function endSession(): Promise<void> {
  for (const stop of stops) stop();
  stops = [];
  started = null;
  await closePlanDb();
}

async function start(sample: LoadSample): Promise<void> {
  guardEdits(words.opening);
  watchPlanDb({
    blocked: () => tell(words.blocked),
    outdated,
    cut: () =>
      void import("../store/keeping/store-again.ts").then(({ storeAgainIfGone }) =>
        storeAgainIfGone(),
      ),
  });
  const stopLock = watchPlanLock({
    handOver: flushAutosave,
    lost: becomeLooker,
    granted: becomeWriter,
    savedElsewhere: catchUp,
  });
  // In a new tab it is asked for while the storage answers: that is most often a first visit.
  const early = rememberedHere() === null ? sample() : null;
  early?.catch(() => undefined);
  await openAtStart(() => early ?? sample());
  const stopAutosave = startAutosave({
    conflict: (planId) => void keepBoth(planId),
    stored: (planId) => {
      void askToKeepStorage();
      // A plan just opened lies somewhere already; an edited one may not.
      if (usePlanStore.getState().past.length > 0) noteChanged(planId);
    },
    returned: () => void catchUp(),
  });
  stops = [stopAutosave, stopLock, acceptDroppedFiles(window)];
}

async function openAtStart(sample: LoadSample): Promise<void> {
  let isDamaged = false;
  let isOpen = false;
  try {
    for (const planId of await rememberedPlans()) {
      const found = await openStored(planId);
      isDamaged ||= found === "damaged";
      isOpen = found === "found";
      if (isOpen) break;
    }
    if (!isOpen) await openSampleAtStart(sample, "sample");
    if (isDamaged) tell(words.unreadable);
  } catch (error) {
    // What is stored could not be looked at. The sample stands in and is not stored by itself, or
    // the next start would take it for the plan that was open last.
    await openSampleAtStart(sample, "stand-in");
    fail(isPartMissing(String(error)) ? words.readerMissing : faultReason(error));
  }
}

/** Opens the sample; should it be faulty or out of reach, an empty plan, and says why. */
async function openSampleAtStart(sample: LoadSample, source: "sample" | "stand-in"): Promise<void> {
  const read = await sample().catch(() =>
    refuse({ file: words.samplePlan, object: "", field: "", ...words.sampleMissing }),
  );
  await openFromOutside(read.ok ? read.value : freshPlan(), source);
  if (!read.ok) useSaveState.setState({ problems: read.problems });
}

/** A newer version of the program is about to change the storage: this tab saves and stops. */
async function outdated(): Promise<void> {
  await flushAutosave();
  guardEdits(words.outdated);
  tell(words.outdated);
}
