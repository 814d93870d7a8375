/** Marking a pollen source outside the beds: a wild stand, a neighbour's row. */
import { drawnIds, nextId } from "../../core/edits/edit.ts";
import { addSurrounding } from "../../core/edits/object-edits.ts";
import type { Surrounding } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
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
  const { plan, layoutId, commit } = usePlanStore.getState();
  const { select, pickTool } = useWindowStore.getState();
  const id = nextId("source-", drawnIds(plan, layoutOf(plan, layoutId)));
  const stepM = snapStep(plan.units);
  const place = (metres: number) =>
    pointer.isFree ? metres : Math.round(onStep(metres, 0, stepM) * 1e6) / 1e6;
  const surrounding: Surrounding = {
    id,
    label: "Pollen source",
    what: "pollen",
    outline: { shape: "point", x: place(pointer.at.x), y: place(pointer.at.y) },
    flowering: "yes",
    cover: "none",
  };
  commit(addSurrounding(surrounding));
  select([id]);
  pickTool("select");
}
