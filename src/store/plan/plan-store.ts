/**
 * The open plan: the committed plan, what is shown (the preview while a gesture or trial runs), its
 * checks and the history. Checks are made when the plan changes and stored; components only pick
 * stored references out of it. What the window shows of it is in store/window/window-store.ts.
 */
import { create } from "zustand";
import { type CheckedLayout, checkLayout } from "../../core/checks/checked-layout.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { Edit } from "../../core/edits/edit.ts";
import { type Patch, applyPatch, difference } from "../../core/edits/patch.ts";
import { emptyPlan } from "../../core/model/empty-plan.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { idsOnSheet } from "../../core/model/collections.ts";
import type { Plan } from "../../core/model/plan.ts";
import { deedWords } from "../../core/words/deed-words.ts";
import { useWindowStore, windowAtStart } from "../window/window-store.ts";
import { layoutToOpen, rememberLayout } from "./last-layout.ts";
import { type Reading, type Readings, readings } from "./reading.ts";
import { keptWords, travelWords } from "./spoken.ts";

/** Steps kept for undo. */
export const HISTORY_DEPTH = 500;

export interface HistoryStep {
  readonly title: string;
  readonly patch: Patch;
  /** Layout the step happened on, so that undo brings it back into view. */
  readonly layoutId: string;
}

/** `gesture`: ends with the pointer or key; `trial`: stands until it is applied or put back. */
export type PreviewOwner = "gesture" | "trial";

export interface Preview {
  readonly edit: Edit;
  readonly by: PreviewOwner;
}

export interface PlanState {
  /** Crop base of the shown plan: the built-in kinds with the plan's own. */
  readonly book: CropBook;
  /** The committed plan: what is saved. */
  readonly plan: Plan;
  /** The committed plan's layout with its own checks, as planned: what files are made from. */
  readonly kept: CheckedLayout;
  /** Null: the plan is read as planned. */
  readonly reading: Reading | null;
  /** The committed plan's layout as grown; null while it is read as planned. */
  readonly grown: CheckedLayout | null;
  /** The plan on screen: the preview during a gesture, else the committed one. */
  readonly shown: Plan;
  readonly layoutId: string;
  /** Checks of the shown plan's layout, in the reading chosen. */
  readonly result: CheckResult;
  /** Plans opened in this window so far: another number, and what was begun belongs to another plan. */
  readonly openings: number;
  /** What is shown without being kept, and by whom; null: what is shown is kept. */
  readonly previewing: Preview | null;
  readonly past: readonly HistoryStep[];
  readonly future: readonly HistoryStep[];
  /** Why the plan may only be looked at, as it is told to whoever edits; null: it can be edited. */
  readonly lookOnly: string | null;
}

export interface PlanActions {
  /** Replaces everything with a plan just read; history starts anew, or where it was left. */
  readonly openPlan: (plan: Plan, history?: Pick<PlanState, "past" | "future">) => void;
  /** Shows an edit of the committed plan without keeping it. */
  readonly preview: (edit: Edit, by?: PreviewOwner) => void;
  /** Keeps an edit as one undo step; the one previewed as it is shown, not applied or checked again. */
  readonly commit: (edit: Edit) => void;
  /** Keeps a change that comes from the stored plan, also while it may only be looked at. */
  readonly follow: (edit: Edit) => void;
  /** From now on editing is refused with this reason; null allows it again. */
  readonly setLookOnly: (reason: string | null) => void;
  readonly cancelPreview: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly showLayout: (layoutId: string) => void;
  /** Reads the plan as grown from now on, or as planned again. */
  readonly read: (reading: Reading | null) => void;
  /** Checks everything anew, as after a check has been fetched. */
  readonly checkAnew: () => void;
}

function opened(plan: Plan): Omit<PlanState, "lookOnly"> {
  return {
    ...keptAs(readings(plan, layoutToOpen(plan), null)),
    reading: null,
    openings: 0,
    past: [],
    future: [],
  };
}

type Shown = Pick<PlanState, "shown" | "layoutId" | "result" | "book">;

/** What the store holds when a checked layout is on screen. */
function shownAs({ plan, layout, result, book }: CheckedLayout): Shown {
  return { shown: plan, layoutId: layout.id, result, book };
}

/** Checks of a plan about to be shown without being kept, in the reading chosen. */
function checkedToShow({ reading, layoutId, result }: PlanState, plan: Plan): CheckedLayout {
  if (!reading) return checkLayout(plan, layoutId, result);
  // Judged again from the record: a place that is tried is judged with what was seen there.
  return { ...reading.judge(plan, layoutId, reading.on, result), plan };
}

/** What is on screen, with its checks. */
function checkedAsShown({ shown, layoutId, book, result }: PlanState): CheckedLayout {
  return { plan: shown, layout: layoutOf(shown, layoutId), book, result };
}

/** What the store holds when the layout on screen is the committed plan's. */
function keptAs({
  kept,
  grown,
}: Readings): Shown & Readings & Pick<PlanState, "plan" | "previewing"> {
  const { plan } = kept;
  // As grown, the sheet draws the plan as it is kept: what the record changes is in the checks.
  return { ...shownAs({ ...(grown ?? kept), plan }), plan, kept, grown, previewing: null };
}

/** Takes out of the selection what a plan about to be shown does not hold. */
function selectStillThere(shown: Plan, layoutId: string): void {
  const { selection, select } = useWindowStore.getState();
  const present = idsOnSheet(shown, layoutOf(shown, layoutId));
  const kept = selection.filter((id) => present.has(id));
  if (kept.length < selection.length) select(kept);
}

interface Travelled {
  readonly step: HistoryStep;
  readonly now: Readings;
  readonly history: Pick<PlanState, "past" | "future">;
}

/** One step along the history; null when there is none or a gesture runs. */
function travelled(state: PlanState, direction: "back" | "forward"): Travelled | null {
  const isBack = direction === "back";
  const step = (isBack ? state.past : state.future).at(-1);
  if (!step || state.previewing) return null;
  const plan = applyPatch(state.plan, step.patch, direction);
  return {
    step,
    now: readings(plan, step.layoutId, state.reading, state),
    history: isBack
      ? { past: state.past.slice(0, -1), future: [...state.future, step] }
      : { past: [...state.past, step], future: state.future.slice(0, -1) },
  };
}

const announce = (text: string) => useWindowStore.getState().announce(text);

type Set = (change: Partial<PlanState>) => void;
type Get = () => PlanState & PlanActions;

/** Ends a trial, if there is one. */
function putBackTrial(set: Set, state: PlanState, isSaid: boolean): void {
  const { previewing } = state;
  if (previewing?.by !== "trial") return;
  set(keptAs(state));
  if (isSaid) announce(`${deedWords.tryCancelled(previewing.edit.title)}.`);
}

/** Keeps an edit, whoever asks. */
function keep(set: Set, get: Get, edit: Edit): void {
  const state = get();
  const isShown = state.previewing?.edit === edit;
  const plan = isShown ? state.shown : edit.apply(state.plan);
  const patch = difference(state.plan, plan);
  const note = edit.note?.(state.plan) ?? null;
  if (!patch) {
    get().cancelPreview();
    if (note !== null) announce(`${note}.`);
    return;
  }
  const now =
    isShown && !state.reading
      ? { kept: checkedAsShown(state), grown: null }
      : readings(plan, state.layoutId, state.reading, state);
  const step = { title: edit.title, patch, layoutId: now.kept.layout.id };
  selectStillThere(plan, state.layoutId);
  set({ ...keptAs(now), past: [...state.past, step].slice(-HISTORY_DEPTH), future: [] });
  announce(keptWords(edit, note, state.kept, now));
}

/** Whether the plan may only be looked at; says so, and ends what was begun. */
function isRefused({ lookOnly, cancelPreview }: PlanState & PlanActions): boolean {
  if (lookOnly === null) return false;
  cancelPreview();
  announce(lookOnly);
  return true;
}

/** One step along the history, in either direction. */
function travel(set: Set, get: Get, direction: "back" | "forward"): void {
  if (isRefused(get())) return;
  const isBack = direction === "back";
  if (get().previewing?.by === "trial") {
    putBackTrial(set, get(), isBack);
    // What is tried is what undo takes back; the steps kept before it stay.
    if (isBack) return;
  }
  const next = travelled(get(), direction);
  if (!next) return;
  const { step, now, history } = next;
  selectStillThere(now.kept.plan, now.kept.layout.id);
  set({ ...keptAs(now), ...history });
  announce(travelWords(step.title, direction, now));
}

function planActions(set: Set, get: Get): PlanActions {
  return {
    openPlan: (plan, history) => {
      const next = opened(plan);
      useWindowStore.setState(windowAtStart());
      set({ ...next, ...history, openings: get().openings + 1 });
    },
    preview: (edit, by = "gesture") => {
      const state = get();
      // A drag asks on every frame: it is answered with silence, its end with the reason.
      if (state.lookOnly !== null) return;
      const shown = edit.apply(state.plan);
      const previewing = { edit, by };
      if (shown === state.shown) {
        if (state.previewing) set({ previewing });
        return;
      }
      set({ ...shownAs(checkedToShow(state, shown)), previewing });
    },
    commit: (edit) => {
      if (!isRefused(get())) keep(set, get, edit);
    },
    follow: (edit) => keep(set, get, edit),
    setLookOnly: (lookOnly) => {
      if (lookOnly !== null) get().cancelPreview();
      set({ lookOnly });
    },
    cancelPreview: () => {
      if (get().previewing) set(keptAs(get()));
    },
    undo: () => travel(set, get, "back"),
    redo: () => travel(set, get, "forward"),
    showLayout: (layoutId) => {
      putBackTrial(set, get(), false);
      const state = get();
      if (state.previewing) return;
      useWindowStore.setState({ selection: [], openFinding: null });
      set(keptAs(readings(state.plan, layoutId, state.reading, state)));
      rememberLayout(state.plan.id, layoutId);
    },
    read: (reading) => {
      get().cancelPreview();
      const { plan, layoutId } = get();
      set({ reading, ...keptAs(readings(plan, layoutId, reading, get())) });
    },
    checkAnew: () => {
      const { plan, layoutId, reading, shown, previewing } = get();
      set(keptAs(readings(plan, layoutId, reading)));
      // What is being tried is kept as it is checked: it is checked anew as well.
      if (previewing) set({ ...shownAs(checkedToShow(get(), shown)), previewing });
    },
  };
}

export const usePlanStore = create<PlanState & PlanActions>()((set, get) => ({
  ...opened(emptyPlan("new-plan", 2027)),
  lookOnly: null,
  ...planActions(set, get),
}));

/** Drops what was begun in a plan once another one is opened; gives back a function that stops. */
export function onAnotherPlan(drop: () => void): () => void {
  return usePlanStore.subscribe((state, before) => {
    if (state.openings !== before.openings) drop();
  });
}
