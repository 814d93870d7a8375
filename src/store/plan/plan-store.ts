/**
 * The one store: the committed plan, what is shown (the preview while a gesture runs), the
 * findings of what is shown, selection and history. Findings are computed when the plan changes
 * and stored; components only pick stored references out of it.
 */
import { create } from "zustand";
import { type CheckResult, runChecks } from "../../core/checks/run-checks.ts";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { planBook } from "../../core/kinds/own-kinds.ts";
import { codeChanges } from "../../core/beds/codes.ts";
import type { Edit } from "../../core/edits/edit.ts";
import { type Patch, applyPatch, difference } from "../../core/edits/patch.ts";
import { emptyPlan } from "../../core/model/empty-plan.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
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

export interface PlanState {
  /** Crop base of the shown plan: the built-in kinds with the plan's own. */
  readonly book: CropBook;
  /** The committed plan: what is saved. */
  readonly plan: Plan;
  /** The plan on screen: the preview during a gesture, else the committed one. */
  readonly shown: Plan;
  readonly layoutId: string;
  /** Checks of the shown plan's layout. */
  readonly result: CheckResult;
  readonly isPreviewing: boolean;
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
  /** Replaces everything with a plan just read; history starts anew. */
  readonly openPlan: (plan: Plan) => void;
  /** Shows an edit of the committed plan without keeping it. */
  readonly preview: (edit: Edit) => void;
  /** Keeps an edit of the committed plan as one undo step. */
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

/** The layout a plan opens on: the chosen one, else the first. */
export function openingLayoutId(plan: Plan): string {
  return plan.chosenLayout ?? (plan.layouts[0] as Layout).id;
}

/** The layout with an id; the first one if it is gone. */
export function layoutOf(plan: Plan, layoutId: string): Layout {
  return plan.layouts.find((layout) => layout.id === layoutId) ?? (plan.layouts[0] as Layout);
}

function opened(plan: Plan): PlanState {
  const book = planBook(plan);
  const layoutId = openingLayoutId(plan);
  return {
    book,
    plan,
    shown: plan,
    layoutId,
    result: runChecks(plan, layoutOf(plan, layoutId), book),
    isPreviewing: false,
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

/** What the store holds after the shown plan or layout became another one. */
function shownAs(state: PlanState, shown: Plan, layoutId: string): Partial<PlanState> {
  const layout = layoutOf(shown, layoutId);
  const book = planBook(shown);
  const result = runChecks(shown, layout, book, state.result);
  return { shown, layoutId: layout.id, result, book };
}

/** Ids of the selection that still exist in the shown layout. */
function standing(state: PlanState, shown: Plan, layoutId: string): readonly string[] {
  const layout = layoutOf(shown, layoutId);
  const present = new Set<string>();
  for (const list of [layout.beds, layout.plantings, shown.surroundings]) {
    for (const item of list) present.add(item.id);
  }
  const kept = state.selection.filter((id) => present.has(id));
  return kept.length === state.selection.length ? state.selection : kept;
}

function findingsSpoken(result: CheckResult): string {
  const conflicts = result.findings.filter((finding) => finding.severity === "conflict").length;
  return conflicts === 1 ? "1 conflict" : `${conflicts} conflicts`;
}

export const usePlanStore = create<PlanState & PlanActions>()((set, get) => {
  /** One step along the history, in either direction. */
  const travel = (direction: "back" | "forward") => {
    const state = get();
    const from = direction === "back" ? state.past : state.future;
    const step = from.at(-1);
    if (!step || state.isPreviewing) return;
    const plan = applyPatch(state.plan, step.patch, direction);
    const shown = shownAs(state, plan, step.layoutId);
    const verb = direction === "back" ? "Undone" : "Done again";
    set({
      plan,
      ...shown,
      past: direction === "back" ? state.past.slice(0, -1) : [...state.past, step],
      future: direction === "back" ? [...state.future, step] : state.future.slice(0, -1),
      selection: standing(state, plan, step.layoutId),
      announcement: `${verb}: ${step.title}. ${findingsSpoken(shown.result ?? state.result)}.`,
    });
  };

  return {
    ...opened(emptyPlan("new-plan", 2027)),
    openPlan: (plan) => set(opened(plan)),
    preview: (edit) => {
      const state = get();
      const shown = edit.apply(state.plan);
      if (shown === state.shown) return;
      set({ ...shownAs(state, shown, state.layoutId), isPreviewing: true });
    },
    commit: (edit) => {
      const state = get();
      const plan = edit.apply(state.plan);
      const patch = difference(state.plan, plan);
      const note = edit.note?.(state.plan) ?? null;
      if (!patch) {
        get().cancelPreview();
        if (note !== null) set({ announcement: `${note}.` });
        return;
      }
      const shown = shownAs(state, plan, state.layoutId);
      const step = { title: edit.title, patch, layoutId: shown.layoutId ?? state.layoutId };
      set({
        plan,
        ...shown,
        isPreviewing: false,
        past: [...state.past, step].slice(-HISTORY_DEPTH),
        future: [],
        selection: standing(state, plan, state.layoutId),
        announcement: [
          edit.title,
          ...(note === null ? [] : [note]),
          ...codeChanges(
            layoutOf(state.plan, state.layoutId),
            layoutOf(plan, state.layoutId),
          ).slice(0, 3),
          `${findingsSpoken(shown.result ?? state.result)}.`,
        ].join(". "),
      });
    },
    cancelPreview: () => {
      const state = get();
      if (!state.isPreviewing) return;
      set({ ...shownAs(state, state.plan, state.layoutId), isPreviewing: false });
    },
    undo: () => travel("back"),
    redo: () => travel("forward"),
    select: (ids) => set({ selection: ids }),
    showFinding: (openFinding) => set({ openFinding }),
    showLayout: (layoutId) => {
      const state = get();
      if (state.isPreviewing) return;
      set({ ...shownAs(state, state.plan, layoutId), selection: [], openFinding: null });
    },
    pickTool: (tool) => set({ tool }),
    showDay: (day) => set({ day }),
    bringIntoView: (ids) => set({ viewRequest: { ids } }),
    askObjectMenu: (menuRequest) => set({ menuRequest }),
    hideKinds: (hidden) => set({ hidden }),
    announce: (announcement) => set({ announcement }),
  };
});
