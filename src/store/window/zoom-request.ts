/** Zooming of the sheet asked for from outside it; the sheet hears each request once. */
import { create } from "zustand";

interface ZoomRequest {
  readonly asked: { readonly direction: "in" | "out" } | null;
  readonly ask: (direction: "in" | "out") => void;
}

export const useZoomRequest = create<ZoomRequest>()((set) => ({
  asked: null,
  ask: (direction) => set({ asked: { direction } }),
}));
