/** Keys while the sheet has the focus. Tab is left alone, so that nobody is caught in it. */
import { removeObjects } from "../../core/edits/object-edits.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { arrowDirection, cancelNudge, endNudge, nudge } from "./nudge.ts";
import { objectNames } from "../scene/object-names.ts";
import type { PointerInput } from "./pointer-input.ts";
import { tools } from "../tools/tool-list.ts";
import { useView, zoomAboutMiddle } from "../scene/view-store.ts";

/** With nothing selected an arrow key pans by so many pixels. */
const PAN_PX = 60;

export function listenToKeys(element: HTMLElement, pointers: PointerInput): () => void {
  const down = (event: KeyboardEvent) => {
    if (takesLastBack(event)) {
      event.preventDefault();
      // The window would undo the last change of the plan as well.
      event.stopPropagation();
      return;
    }
    if (event.ctrlKey || event.metaKey || event.key === "Tab") {
      // Undo and other commands of the window find the plan as it looks.
      endNudge();
      return;
    }
    if (pressKey(event, pointers)) event.preventDefault();
  };
  const up = (event: KeyboardEvent) => {
    if (event.key === " ") pointers.holdPan(false);
  };
  const blur = () => {
    pointers.holdPan(false);
    endNudge();
  };
  element.addEventListener("keydown", down);
  element.addEventListener("keyup", up);
  element.addEventListener("blur", blur);
  return () => {
    blur();
    element.removeEventListener("keydown", down);
    element.removeEventListener("keyup", up);
    element.removeEventListener("blur", blur);
  };
}

/** While something is drawn, undo takes back its last corner. */
function takesLastBack(event: KeyboardEvent): boolean {
  const isUndo = (event.ctrlKey || event.metaKey) && !event.shiftKey && event.key === "z";
  return isUndo && tools[usePlanStore.getState().tool].key("Backspace");
}

/** True when the key was used. */
function pressKey(event: KeyboardEvent, pointers: PointerInput): boolean {
  const { key, shiftKey } = event;
  const { selection, tool } = usePlanStore.getState();
  if (key === "Escape") return escape(pointers);
  const arrow = arrowDirection(key);
  if (arrow) {
    if (selection.length > 0) nudge(arrow, shiftKey);
    else useView.getState().pan(-arrow.x * PAN_PX, arrow.y * PAN_PX);
    return true;
  }
  endNudge();
  if (tools[tool].key(key)) return true;
  switch (key) {
    case " ":
      pointers.holdPan(true);
      return true;
    case "Delete":
    case "Backspace":
      return removeSelection();
    case "+":
    case "=":
      zoomAboutMiddle("in");
      return true;
    case "-":
      zoomAboutMiddle("out");
      return true;
    case "0":
      usePlanStore.getState().bringIntoView("all");
      return true;
    default:
      return false;
  }
}

/** The innermost thing first: the gesture, the nudge, the tool's draft, the tool, the selection. */
function escape(pointers: PointerInput): boolean {
  if (pointers.cancel() || cancelNudge()) return true;
  const { tool, pickTool, select, showFinding } = usePlanStore.getState();
  if (tools[tool].key("Escape")) return true;
  if (tool !== "select") pickTool("select");
  else {
    select([]);
    showFinding(null);
  }
  return true;
}

function removeSelection(): boolean {
  const { plan, layoutId, selection, commit } = usePlanStore.getState();
  if (selection.length === 0) return false;
  const names = objectNames(plan, layoutOf(plan, layoutId), selection);
  commit(removeObjects(layoutId, selection, `Delete ${names}`));
  return true;
}
