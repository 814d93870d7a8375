/** Choices of this browser about the sheet: what the wheel does, and whether things snap. */
import { create } from "zustand";
import { oneOf, stored } from "./stored.ts";

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

const storedWheel = stored("wideberth.wheel", oneOf(wheelChoices));
const storedSnap = stored("wideberth.snap", oneOf(["on", "off"]));

export const useSheetPreferences = create<SheetPreferences>()((set) => ({
  wheel: storedWheel.load(),
  isSnapping: storedSnap.load() === "on",
  chooseWheel: (wheel) => {
    storedWheel.save(wheel);
    set({ wheel });
  },
  setSnapping: (isSnapping) => {
    storedSnap.save(isSnapping ? "on" : "off");
    set({ isSnapping });
  },
}));
