/** How many rows the bloom strip shows: set by the grower, kept with this browser. */
import type { CSSProperties } from "react";
import { create } from "zustand";
import { stored } from "../../store/window/stored.ts";

export const ROWS = { least: 2, most: 40, usual: 6 } as const;

/** Height of every line, the styles have the same: as high as a finger needs where there is one. */
const HEIGHT_PX = { fine: 24, coarse: 44 } as const;
const isTouched = typeof matchMedia === "function" && matchMedia("(pointer: coarse)").matches;
export const LINE_PX = isTouched ? HEIGHT_PX.coarse : HEIGHT_PX.fine;

const heldRows = (rows: number) => Math.min(ROWS.most, Math.max(ROWS.least, Math.round(rows)));

const storedRows = stored<number>("wideberth.bloom-rows", (value) =>
  typeof value === "number" && Number.isFinite(value) ? heldRows(value) : ROWS.usual,
);

interface BloomHeight {
  readonly rows: number;
  readonly setRows: (rows: number) => void;
}

export const useBloomHeight = create<BloomHeight>()((set) => ({
  rows: storedRows.load(),
  setRows: (wanted) => {
    const rows = heldRows(wanted);
    storedRows.save(rows);
    set({ rows });
  },
}));

/** For a box of the class `bloom-chart`: as high as the grower set, drawn in or still empty. */
export function useChartHeight(): CSSProperties {
  const rows = useBloomHeight((state) => state.rows);
  return { "--rows-height": `${rows * LINE_PX}px` } as CSSProperties;
}
