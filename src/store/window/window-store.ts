/**
 * What the window shows, as sheet and panels tell each other: the tool in hand, what is selected,
 * what is asked for. Nothing here is saved, and nothing is undone. The plan is in
 * store/plan/plan-store.ts.
 */
import { create } from "zustand";
import type { DayNumber } from "../../core/model/day.ts";
import type { HideableKind } from "./hideable-kinds.ts";

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
  /** The view stays as it is where all of it lies in it. */
  readonly isIfOutside?: boolean;
}

/** Objects whose menu is asked for, and where on the page it opens, CSS pixels. */
export interface ObjectMenuRequest {
  readonly ids: readonly string[];
  readonly xPx: number;
  readonly yPx: number;
}

interface WindowState {
  readonly selection: readonly string[];
  /** Id of the finding that is opened in the list and marked on the sheet. */
  readonly openFinding: string | null;
  readonly tool: ToolName;
  /** Day whose open flowers the sheet shows, or null. */
  readonly day: DayNumber | null;
  /** Earlier year whose crops the sheet shows in the place of this season's plantings, or null. */
  readonly year: number | null;
  readonly viewRequest: ViewRequest;
  /** The open menu of objects, or null. */
  readonly menuRequest: ObjectMenuRequest | null;
  /** What the sheet leaves out: kinds of things, by choice of the eye and never of the plan. */
  readonly hidden: ReadonlySet<HideableKind>;
  /** What just happened, spoken to screen readers. */
  readonly announcement: string;
}

interface WindowActions {
  readonly select: (ids: readonly string[]) => void;
  readonly showFinding: (id: string | null) => void;
  readonly pickTool: (tool: ToolName) => void;
  readonly showDay: (day: DayNumber | null) => void;
  readonly showYear: (year: number | null) => void;
  readonly bringIntoView: (ids: readonly string[] | "all") => void;
  /** The same, but the view stays as it is where all of it lies in it. */
  readonly keepInView: (ids: readonly string[]) => void;
  /** Opens the menu of objects beside a place; null puts it away. */
  readonly askObjectMenu: (request: ObjectMenuRequest | null) => void;
  readonly hideKinds: (hidden: ReadonlySet<HideableKind>) => void;
  readonly announce: (text: string) => void;
}

/** What is not of an earlier year, and is left out while one is shown. */
const OF_THIS_SEASON: readonly HideableKind[] = ["plantings", "conflict lines"];

export type WindowStore = WindowState & WindowActions;

/** The window as it is when a plan is opened. */
export function windowAtStart(): WindowState {
  return {
    selection: [],
    openFinding: null,
    tool: "select",
    day: null,
    year: null,
    viewRequest: { ids: "all" },
    menuRequest: null,
    hidden: new Set(),
    announcement: "",
  };
}

export const useWindowStore = create<WindowStore>()((set) => ({
  ...windowAtStart(),
  select: (ids) => set({ selection: ids }),
  showFinding: (openFinding) => set({ openFinding }),
  pickTool: (tool) => set({ tool }),
  showDay: (day) => set({ day }),
  showYear: (year) =>
    set(({ hidden }) => {
      const others = [...hidden].filter((kind) => !OF_THIS_SEASON.includes(kind));
      return { year, hidden: new Set(year === null ? others : [...others, ...OF_THIS_SEASON]) };
    }),
  bringIntoView: (ids) => set({ viewRequest: { ids } }),
  keepInView: (ids) => set({ viewRequest: { ids, isIfOutside: true } }),
  askObjectMenu: (menuRequest) => set({ menuRequest }),
  hideKinds: (hidden) => set({ hidden }),
  announce: (announcement) => set({ announcement }),
}));
