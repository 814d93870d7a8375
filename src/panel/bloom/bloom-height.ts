/** How many rows the bloom strip shows: set by the grower, kept with this browser. */
import { create } from "zustand";
import { stored } from "../../store/window/stored.ts";

export const ROWS = { least: 2, most: 40, usual: 6 } as const;

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
