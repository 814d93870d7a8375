/** What the window shows beside the plan: which view, which drawer, which dialog. Never saved in a plan. */
import { create } from "zustand";

export type MainView = "sheet" | "tables" | "compare";
export type Drawer = "seed-list" | "findings" | "particulars" | "bloom";

export type DialogRequest =
  | { readonly kind: "settings" }
  | { readonly kind: "plot-map" }
  | { readonly kind: "files" }
  | { readonly kind: "climate" }
  | { readonly kind: "season" }
  | { readonly kind: "keys" }
  | { readonly kind: "kept-plans" }
  | { readonly kind: "diagnostics" }
  | { readonly kind: "new-bed" }
  | { readonly kind: "bed-rows" }
  | { readonly kind: "number-beds" }
  | { readonly kind: "share-bed"; readonly id: string }
  | { readonly kind: "cut-bed"; readonly id: string }
  | { readonly kind: "new-ground" }
  | { readonly kind: "commands" }
  | { readonly kind: "array" }
  | { readonly kind: "line-up" }
  | { readonly kind: "rename-object"; readonly id: string }
  /** A text to paste objects from; the reason says why the clipboard would not do. */
  | { readonly kind: "paste"; readonly reason: string | null }
  | { readonly kind: "copied-text"; readonly text: string }
  | { readonly kind: "variety"; readonly id: string | null }
  | { readonly kind: "place"; readonly varietyId: string | null; readonly bedId: string | null }
  | { readonly kind: "arrange" }
  | { readonly kind: "layout-exchange"; readonly what: "plantings" | "beds" }
  | { readonly kind: "rename-layout"; readonly id: string }
  | {
      readonly kind: "figures";
      readonly kindId: string | null;
      /** The variety a figure can be picked for at first. */
      readonly varietyId: string | null;
    }
  | { readonly kind: "own-kinds" }
  | { readonly kind: "earlier-crops" }
  | { readonly kind: "outline-import" }
  | { readonly kind: "variety-list" };

interface ViewState {
  readonly view: MainView;
  /** On a narrow screen the one region that is up; null: the sheet alone. */
  readonly drawer: Drawer | null;
  readonly isBloomOpen: boolean;
  readonly dialog: DialogRequest | null;
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
  readonly ask: (dialog: DialogRequest) => void;
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
  ask: (dialog) => set({ dialog }),
  closeDialog: () => set({ dialog: null }),
}));

/** The view as it is at this moment, for what happens on a press or a key; nothing is watched. */
export function viewNow(): ViewState & ViewActions {
  return useViewState.getState();
}
