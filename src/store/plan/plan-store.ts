/**
 * The one store: the committed plan, what is shown (the preview while a gesture runs), the
 * findings of what is shown, selection and history. Findings are computed when the plan changes
 * and stored; components only pick stored references out of it.
 */
import { create } from "zustand";
import { type CheckedLayout, checkLayout } from "../../core/checks/checked-layout.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { codeChanges } from "../../core/beds/codes.ts";
import type { Edit } from "../../core/edits/edit.ts";
import { type Patch, applyPatch, difference } from "../../core/edits/patch.ts";
import { emptyPlan } from "../../core/model/empty-plan.ts";
import type { DayNumber } from "../../core/model/day.ts";
import { layoutOf, openingLayoutId } from "../../core/model/layouts.ts";
import { idsOnSheet } from "../../core/model/collections.ts";
import type { Plan } from "../../core/model/plan.ts";
import type { HideableKind } from "../window/hideable-kinds.ts";

/** Steps kept for undo. */
export const HISTORY_DEPTH = 500;

export interface HistoryStep {
  readonly title: string;
  readonly patch: Patch;
  /** Layout the step happened on, so that undo brings it back into view. */
  readonly layoutId: string;
}

export type ToolName =
  | "select"
  | "pan"
  | "draw-bed"
  | "draw-outline"
  | "mark-source"
  | "measure"
  | "mark-length"
  | "move-picture";

/** Something the sheet is asked to bring into view; a new object each time. */
export interface ViewRequest {
  readonly ids: readonly string[] | "all";
}

/** Objects whose menu is asked for, and where on the page it opens, CSS pixels. */
export interface ObjectMenuRequest {
  readonly ids: readonly string[];
  readonly xPx: number;
  readonly yPx: number;
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
  /** The committed plan's layout with its own checks: what paper, files and ways out are made from. */
  readonly kept: CheckedLayout;
  /** The plan on screen: the preview during a gesture, else the committed one. */
  readonly shown: Plan;
  readonly layoutId: string;
  /** Checks of the shown plan's layout. */
  readonly result: CheckResult;
  /** Plans opened in this window so far: another number, and what was begun belongs to another plan. */
  readonly openings: number;
  /** What is shown without being kept, and by whom; null: what is shown is kept. */
  readonly previewing: Preview | null;
  readonly past: readonly HistoryStep[];
  readonly future: readonly HistoryStep[];
  readonly selection: readonly string[];
  /** Id of the finding that is opened in the list and marked on the sheet. */
  readonly openFinding: string | null;
  readonly tool: ToolName;
  /** Day whose open flowers the sheet shows, or null. */
  readonly day: DayNumber | null;
  readonly viewRequest: ViewRequest;
  /** The open menu of objects, or null. */
  readonly menuRequest: ObjectMenuRequest | null;
  /** What the sheet leaves out: kinds of things, by choice of the eye and never of the plan. */
  readonly hidden: ReadonlySet<HideableKind>;
  /** What just happened, spoken to screen readers. */
  readonly announcement: string;
}

export interface PlanActions {
  /** Replaces everything with a plan just read; history starts anew, or where it was left. */
  readonly openPlan: (plan: Plan, history?: Pick<PlanState, "past" | "future">) => void;
  /** Shows an edit of the committed plan without keeping it. */
  readonly preview: (edit: Edit, by?: PreviewOwner) => void;
  /** Keeps an edit as one undo step; the one previewed as it is shown, not applied or checked again. */
  readonly commit: (edit: Edit) => void;
  readonly cancelPreview: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly select: (ids: readonly string[]) => void;
  readonly showFinding: (id: string | null) => void;
  readonly showLayout: (layoutId: string) => void;
  readonly pickTool: (tool: ToolName) => void;
  readonly showDay: (day: DayNumber | null) => void;
  readonly bringIntoView: (ids: readonly string[] | "all") => void;
  /** Opens the menu of objects beside a place; null puts it away. */
  readonly askObjectMenu: (request: ObjectMenuRequest | null) => void;
  readonly hideKinds: (hidden: ReadonlySet<HideableKind>) => void;
  readonly announce: (text: string) => void;
}

function opened(plan: Plan): PlanState {
  const kept = checkLayout(plan, openingLayoutId(plan));
  const { layout, book, result } = kept;
  return {
    book,
    plan,
    kept,
    shown: plan,
    layoutId: layout.id,
    result,
    openings: 0,
    previewing: null,
    past: [],
    future: [],
    selection: [],
    openFinding: null,
    tool: "select",
    day: null,
    viewRequest: { ids: "all" },
    menuRequest: null,
    hidden: new Set(),
    announcement: "",
  };
}

type Shown = Pick<PlanState, "shown" | "layoutId" | "result" | "book">;

/** What the store holds when a checked layout is on screen. */
function shownAs({ plan, layout, result, book }: CheckedLayout): Shown {
  return { shown: plan, layoutId: layout.id, result, book };
}

/** What is on screen, with its checks. */
function checkedAsShown({ shown, layoutId, book, result }: PlanState): CheckedLayout {
  return { plan: shown, layout: layoutOf(shown, layoutId), book, result };
}

/** What the store holds when the layout on screen is the committed plan's. */
function keptAs(kept: CheckedLayout): Shown & Pick<PlanState, "plan" | "kept" | "previewing"> {
  return { ...shownAs(kept), plan: kept.plan, kept, previewing: null };
}

/** Ids of the selection that still exist in the shown layout. */
function stillThere(state: PlanState, shown: Plan, layoutId: string): readonly string[] {
  const present = idsOnSheet(shown, layoutOf(shown, layoutId));
  const kept = state.selection.filter((id) => present.has(id));
  return kept.length === state.selection.length ? state.selection : kept;
}

function findingsSpoken(result: CheckResult): string {
  const conflicts = result.findings.filter((finding) => finding.severity === "conflict").length;
  return conflicts === 1 ? "1 conflict" : `${conflicts} conflicts`;
}

type WindowActions = Pick<
  PlanActions,
  "pickTool" | "showDay" | "bringIntoView" | "askObjectMenu" | "hideKinds" | "announce"
>;

/** What is of the window and not of the plan. */
function windowActions(set: (change: Partial<PlanState>) => void): WindowActions {
  return {
    pickTool: (tool) => set({ tool }),
    showDay: (day) => set({ day }),
    bringIntoView: (ids) => set({ viewRequest: { ids } }),
    askObjectMenu: (menuRequest) => set({ menuRequest }),
    hideKinds: (hidden) => set({ hidden }),
    announce: (announcement) => set({ announcement }),
  };
}

/** The store one step along the history; null when there is none or a gesture runs. */
function travelled(state: PlanState, direction: "back" | "forward"): Partial<PlanState> | null {
  const from = direction === "back" ? state.past : state.future;
  const step = from.at(-1);
  if (!step || state.previewing) return null;
  const plan = applyPatch(state.plan, step.patch, direction);
  const kept = checkLayout(plan, step.layoutId, state.result);
  const verb = direction === "back" ? "Undone" : "Done again";
  return {
    ...keptAs(kept),
    past: direction === "back" ? state.past.slice(0, -1) : [...state.past, step],
    future: direction === "back" ? [...state.future, step] : state.future.slice(0, -1),
    selection: stillThere(state, plan, step.layoutId),
    announcement: `${verb}: ${step.title}. ${findingsSpoken(kept.result)}.`,
  };
}

/** What is said when an edit has been kept: what it did, codes it changed, conflicts left. */
function keptWords(
  { title }: Edit,
  note: string | null,
  before: CheckedLayout,
  after: CheckedLayout,
): string {
  const codes = codeChanges(before.layout, after.layout).slice(0, 3);
  const said = [title, ...(note === null ? [] : [note]), ...codes];
  return [...said, `${findingsSpoken(after.result)}.`].join(". ");
}

export const usePlanStore = create<PlanState & PlanActions>()((set, get) => {
  /** Ends a trial, if there is one. */
  const putBack = (isSaid: boolean) => {
    const { previewing, kept } = get();
    if (previewing?.by !== "trial") return;
    set({
      ...keptAs(kept),
      ...(isSaid ? { announcement: `Put back: ${previewing.edit.title}.` } : {}),
    });
  };

  /** One step along the history, in either direction. */
  const travel = (direction: "back" | "forward") => {
    if (get().previewing?.by === "trial") {
      const isUndo = direction === "back";
      putBack(isUndo);
      // What is tried is what undo takes back; the steps kept before it stay.
      if (isUndo) return;
    }
    const next = travelled(get(), direction);
    if (next) set(next);
  };

  return {
    ...opened(emptyPlan("new-plan", 2027)),
    openPlan: (plan, history) => set({ ...opened(plan), ...history, openings: get().openings + 1 }),
    preview: (edit, by = "gesture") => {
      const state = get();
      const shown = edit.apply(state.plan);
      const previewing = { edit, by };
      if (shown === state.shown) {
        if (state.previewing) set({ previewing });
        return;
      }
      set({ ...shownAs(checkLayout(shown, state.layoutId, state.result)), previewing });
    },
    commit: (edit) => {
      const state = get();
      const isShown = state.previewing?.edit === edit;
      const plan = isShown ? state.shown : edit.apply(state.plan);
      const patch = difference(state.plan, plan);
      const note = edit.note?.(state.plan) ?? null;
      if (!patch) {
        get().cancelPreview();
        if (note !== null) set({ announcement: `${note}.` });
        return;
      }
      const kept = isShown
        ? checkedAsShown(state)
        : checkLayout(plan, state.layoutId, state.result);
      const step = { title: edit.title, patch, layoutId: kept.layout.id };
      set({
        ...keptAs(kept),
        past: [...state.past, step].slice(-HISTORY_DEPTH),
        future: [],
        selection: stillThere(state, plan, state.layoutId),
        announcement: keptWords(edit, note, state.kept, kept),
      });
    },
    cancelPreview: () => {
      const { previewing, kept } = get();
      if (previewing) set(keptAs(kept));
    },
    undo: () => travel("back"),
    redo: () => travel("forward"),
    select: (ids) => set({ selection: ids }),
    showFinding: (openFinding) => set({ openFinding }),
    showLayout: (layoutId) => {
      putBack(false);
      const state = get();
      if (state.previewing) return;
      const kept = checkLayout(state.plan, layoutId, state.result);
      set({ ...keptAs(kept), selection: [], openFinding: null });
    },
    ...windowActions(set),
  };
});

/** Drops what was begun in a plan once another one is opened; gives back a function that stops. */
export function onAnotherPlan(drop: () => void): () => void {
  return usePlanStore.subscribe((state, before) => {
    if (state.openings !== before.openings) drop();
  });
}
