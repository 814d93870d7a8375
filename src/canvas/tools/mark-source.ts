/** Marking a pollen source outside the beds: a wild stand, a neighbour's row. What flowers there is asked. */
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { askSource } from "../../store/window/source-ask.ts";
import { onStep, snapStep } from "../snap/snap.ts";
import { clickOrDrag, panGesture } from "./gestures.ts";
import type { SheetPointer, Tool } from "./tool.ts";

export const markSourceTool: Tool = {
  cursor: "crosshair",
  press: (start) => clickOrDrag(start, mark, () => panGesture(start)),
  hover: () => undefined,
  key: () => false,
  leave: () => undefined,
};

function mark(pointer: SheetPointer): void {
  const stepM = snapStep(usePlanStore.getState().plan.units);
  const place = (metres: number) =>
    pointer.isFree ? metres : Math.round(onStep(metres, 0, stepM) * 1e6) / 1e6;
  askSource({ shape: "point", x: place(pointer.at.x), y: place(pointer.at.y) });
}
