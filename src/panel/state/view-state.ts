/** What the window shows beside the plan: which view, which drawer, which dialog. Never saved in a plan. */
import type { ReactElement } from "react";
import { create } from "zustand";

export type MainView = "sheet" | "tables" | "lots" | "compare" | "walk";
export type Drawer = "seed-list" | "findings" | "particulars" | "bloom";

/** The dialog that is up: made by `dialog()`, shown by the window. */
export interface OpenedDialog {
  readonly name: string;
  readonly content: ReactElement;
}

interface ViewState {
  readonly view: MainView;
  /** On a narrow screen the one region that is up; null: the sheet alone. */
  readonly drawer: Drawer | null;
  readonly isBloomOpen: boolean;
  readonly dialog: OpenedDialog | null;
  /** How often the field for finding was asked for; each time it takes the focus. */
  readonly findAsked: number;
}

interface ViewActions {
  readonly showView: (view: MainView) => void;
  /** Brings a drawer up, or puts it away when it is up. */
  readonly toggleDrawer: (drawer: Drawer) => void;
  /** Clears the way to the sheet. */
  readonly showSheet: () => void;
  readonly toggleBloom: () => void;
  readonly openFind: () => void;
  readonly openDialog: (dialog: OpenedDialog) => void;
  readonly closeDialog: () => void;
}

export const useViewState = create<ViewState & ViewActions>()((set, get) => ({
  view: "sheet",
  drawer: null,
  isBloomOpen: true,
  dialog: null,
  findAsked: 0,
  showView: (view) => set({ view, drawer: null }),
  toggleDrawer: (drawer) => set({ drawer: get().drawer === drawer ? null : drawer }),
  showSheet: () => set({ view: "sheet", drawer: null }),
  toggleBloom: () => set({ isBloomOpen: !get().isBloomOpen }),
  openFind: () => set({ findAsked: get().findAsked + 1 }),
  openDialog: (dialog) => set({ dialog }),
  closeDialog: () => set({ dialog: null }),
}));

/** The view as it is at this moment, for what happens on a press or a key; nothing is watched. */
export function viewNow(): ViewState & ViewActions {
  return useViewState.getState();
}
