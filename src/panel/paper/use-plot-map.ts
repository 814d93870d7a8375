import { useEffect, useRef, useState } from "react";
import { type MadePlotMap, type PlotMapChoice, makePlotMap } from "./make-plot-map.ts";

export type PlotMapProgress =
  | { readonly kind: "idle" }
  | { readonly kind: "making"; readonly done: number; readonly total: number }
  | { readonly kind: "made"; readonly map: MadePlotMap }
  | { readonly kind: "failed"; readonly reason: string };

/** One map at a time; leaving the dialog stops it. */
export function usePlotMap() {
  const [progress, setProgress] = useState<PlotMapProgress>({ kind: "idle" });
  const running = useRef<AbortController | null>(null);
  useEffect(() => () => running.current?.abort(), []);

  const make = async (choice: PlotMapChoice) => {
    const controller = new AbortController();
    running.current = controller;
    setProgress({ kind: "making", done: 0, total: 0 });
    try {
      const map = await makePlotMap(
        choice,
        (done, total) => setProgress({ kind: "making", done, total }),
        controller.signal,
      );
      if (map) setProgress({ kind: "made", map });
    } catch (error) {
      if (controller.signal.aborted) return;
      const reason = error instanceof Error ? error.message : String(error);
      setProgress({ kind: "failed", reason });
    }
  };
  const cancel = () => {
    running.current?.abort();
    setProgress({ kind: "idle" });
  };
  return { progress, make, cancel };
}
