/** Dragging the picture under the drawing; nothing else is touched while this tool is in hand. */
import { changePicture } from "../../core/edits/picture-edits.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { editGesture, panGesture } from "./gestures.ts";
import type { Gesture, SheetPointer, Tool } from "./tool.ts";
import * as words from "../scene/tool-words.ts";

export const movePictureTool: Tool = {
  cursor: "move",
  press: (start) => {
    const { picture } = usePlanStore.getState().plan;
    return !picture || picture.locked === true ? panGesture(start) : movePicture(start, picture);
  },
  hover: () => undefined,
  key: () => false,
  leave: () => undefined,
};

function movePicture(
  start: SheetPointer,
  from: { readonly x: number; readonly y: number },
): Gesture {
  const moved = ({ at }: SheetPointer) =>
    changePicture(
      { x: onMillimetre(from.x + at.x - start.at.x), y: onMillimetre(from.y + at.y - start.at.y) },
      words.movePicture,
    );
  return editGesture((pointer) => {
    const edit = moved(pointer);
    usePlanStore.getState().preview(edit);
    return edit;
  });
}

function onMillimetre(metres: number): number {
  return Math.round(metres * 1000) / 1000;
}
