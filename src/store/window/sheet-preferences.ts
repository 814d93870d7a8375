/** Choices of this browser about the sheet: what the wheel does, and whether things snap. */
import { create } from "zustand";

/** `guess` tells mice from trackpads by how they turn, and can be wrong. */
const wheelChoices = ["guess", "zoom", "pan"] as const;
export type WheelChoice = (typeof wheelChoices)[number];

interface SheetPreferences {
  readonly wheel: WheelChoice;
  /** Whether what is drawn, moved, resized or turned comes to rest on edges, middles and steps. */
  readonly isSnapping: boolean;
  readonly chooseWheel: (wheel: WheelChoice) => void;
  readonly setSnapping: (isSnapping: boolean) => void;
}

const WHEEL_KEY = "wideberth.wheel";
const SNAP_KEY = "wideberth.snap";

/** Storage may be missing, forbidden or full: a choice then lasts until the page is closed. */
function stored(key: string): string | null {
  try {
    return globalThis.localStorage?.getItem(key) ?? null;
  } catch {
    return null;
  }
}

function store(key: string, value: string): void {
  try {
    globalThis.localStorage?.setItem(key, value);
  } catch {
    return;
  }
}

export const useSheetPreferences = create<SheetPreferences>()((set) => ({
  wheel: wheelChoices.find((choice) => choice === stored(WHEEL_KEY)) ?? "guess",
  isSnapping: stored(SNAP_KEY) !== "off",
  chooseWheel: (wheel) => {
    store(WHEEL_KEY, wheel);
    set({ wheel });
  },
  setSnapping: (isSnapping) => {
    store(SNAP_KEY, isSnapping ? "on" : "off");
    set({ isSnapping });
  },
}));
