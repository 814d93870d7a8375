/**
 * Moving, resizing and turning without dragging (WCAG 2.2, 2.5.7): one click picks up, what is held
 * follows the pointer, the next click puts it down. Escape puts it back.
 */
import { shapeCentre } from "../../core/geometry/outline.ts";
import { useSheetPreferences } from "../../store/window/sheet-preferences.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { isLocked } from "../scene/locks.ts";
import { objectNames } from "../../core/model/object-names.ts";
import { itemsOf } from "../scene/sheet-items.ts";
import { sketch } from "./sketch-store.ts";
import { useView } from "../scene/view-store.ts";
import { toPx } from "../scene/viewport.ts";
import { moveGesture } from "./late-tool.ts";
import type { Gesture, SheetPointer } from "./tool.ts";
import * as words from "../scene/tool-words.ts";

interface Carried {
  readonly gesture: Gesture;
  readonly stopWatching: () => void;
}

let carried: Carried | null = null;

/** Picks up: from now on the gesture follows the pointer without a button held. */
export function carry(gesture: Gesture, text: string): void {
  dropCarried();
  // Whatever else changes the plan or the selection meanwhile ends it.
  const watches = [
    usePlanStore.subscribe((now, before) => {
      if (now.plan !== before.plan || now.layoutId !== before.layoutId) dropCarried();
    }),
    useWindowStore.subscribe((now, before) => {
      if (now.selection !== before.selection) dropCarried();
    }),
  ];
  const stopWatching = () => watches.forEach((stop) => stop());
  carried = { gesture, stopWatching };
  useWindowStore.getState().announce(text);
  sketch({
    bar: { text, fault: null, actions: [{ label: words.cancel, act: () => void dropCarried() }] },
  });
}

/** What is selected, held by the middle of its first object. */
export function carrySelection(): void {
  const { plan, layoutId, book } = usePlanStore.getState();
  const { selection, announce } = useWindowStore.getState();
  const layout = layoutOf(plan, layoutId);
  const items = itemsOf(plan, layout, book, new Set(selection));
  const item = items.find((entry) => !isLocked(entry));
  if (!item) {
    announce(words.selectionLocked);
    return;
  }
  const at = shapeCentre(item.shape);
  const start: SheetPointer = {
    px: toPx(useView.getState().view, at),
    at,
    page: { x: 0, y: 0 },
    isShift: false,
    isFree: !useSheetPreferences.getState().isSnapping,
    isCoarse: false,
    clicks: 1,
  };
  const names = objectNames(plan, layout, selection);
  carry(moveGesture(start, item), words.moving(names));
}

/** True while something is held: the pointer's moves and presses belong to it. */
export function isCarrying(): boolean {
  return carried !== null;
}

export function moveCarried(pointer: SheetPointer): void {
  carried?.gesture.move(pointer);
}

/** The press that puts down; a press taken back leaves it in hand. */
export function putDown(): Gesture {
  return {
    move: moveCarried,
    end: (pointer) => take()?.end(pointer),
    cancel: () => undefined,
  };
}

/** Puts it back where it was; false when nothing is held. */
export function dropCarried(): boolean {
  const gesture = take();
  gesture?.cancel();
  return gesture !== undefined;
}

function take(): Gesture | undefined {
  const gesture = carried?.gesture;
  carried?.stopWatching();
  if (carried) sketch({ bar: null });
  carried = null;
  return gesture;
}
