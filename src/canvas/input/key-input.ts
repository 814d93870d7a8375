/**
 * Keys while the sheet has the focus that are no commands: they belong to the gesture, the tool or
 * the view. Delete, zoom and the like go on to the window. Tab is left alone, so that nobody is caught in it.
 */
import { TYPED_INTO } from "../../store/window/typed-into.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { arrowDirection, cancelNudge, endNudge, nudge } from "./nudge.ts";
import type { PointerInput } from "./pointer-input.ts";
import { tools } from "../tools/tool-list.ts";
import { useView } from "../scene/view-store.ts";

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
    if (pressKey(event, pointers) || event.key === " ") event.preventDefault();
  };
  element.addEventListener("keydown", down);
  element.addEventListener("blur", endNudge);
  const stopSpace = listenToSpace(pointers);
  // Where nothing has the focus, as after a button that went away, Escape is the sheet's.
  const lone = (event: KeyboardEvent) => {
    if (event.key === "Escape" && event.target === document.body) escape(pointers);
  };
  window.addEventListener("keydown", lone);
  return () => {
    stopSpace();
    window.removeEventListener("keydown", lone);
    endNudge();
    element.removeEventListener("keydown", down);
    element.removeEventListener("blur", endNudge);
  };
}

/**
 * The space bar pans wherever the focus is: a tool that was just chosen has left it on its button.
 * That button is pressed by the key as ever, unless something was panned meanwhile.
 */
function listenToSpace(pointers: PointerInput): () => void {
  const down = ({ key, target, ctrlKey, metaKey }: KeyboardEvent) => {
    const isTyped = target instanceof Element && target.matches(TYPED_INTO);
    if (key === " " && !isTyped && !ctrlKey && !metaKey) pointers.holdPan(true);
  };
  const up = (event: KeyboardEvent) => {
    // A button that has the focus would be pressed when the key comes up.
    if (event.key === " " && pointers.holdPan(false)) event.preventDefault();
  };
  const away = () => void pointers.holdPan(false);
  window.addEventListener("keydown", down);
  window.addEventListener("keyup", up);
  window.addEventListener("blur", away);
  return () => {
    away();
    window.removeEventListener("keydown", down);
    window.removeEventListener("keyup", up);
    window.removeEventListener("blur", away);
  };
}

/** While something is drawn, undo takes back its last corner. */
function takesLastBack(event: KeyboardEvent): boolean {
  const isUndo = (event.ctrlKey || event.metaKey) && !event.shiftKey && event.key === "z";
  return isUndo && tools[useWindowStore.getState().tool].key("Backspace");
}

/** True when the key was used. */
function pressKey(event: KeyboardEvent, pointers: PointerInput): boolean {
  const { key, shiftKey } = event;
  const { selection, tool } = useWindowStore.getState();
  if (key === "Escape") return escape(pointers);
  const arrow = arrowDirection(key);
  if (arrow) {
    if (selection.length > 0) nudge(arrow, shiftKey);
    else useView.getState().pan(-arrow.x * PAN_PX, arrow.y * PAN_PX);
    return true;
  }
  endNudge();
  return tools[tool].key(key);
}

/** The innermost thing first: the gesture, the nudge, the tool's draft, the tool, the selection. */
function escape(pointers: PointerInput): boolean {
  if (pointers.cancel() || cancelNudge()) return true;
  const { tool, pickTool, select, showFinding } = useWindowStore.getState();
  if (tools[tool].key("Escape")) return true;
  if (tool !== "select") pickTool("select");
  else {
    select([]);
    showFinding(null);
  }
  return true;
}
