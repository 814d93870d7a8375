/** Selecting, and dragging what is selected. */
import type { Point } from "../../core/geometry/point.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { type Handle, handleAt, handleCursor, handleSizes } from "../scene/handles.ts";
import { boxBetween, itemsAt, itemsInside } from "../scene/hit-test.ts";
import { itemHandles } from "../scene/item-handles.ts";
import { isLocked, isTakeable, lockSignAt } from "../scene/locks.ts";
import { objectNames } from "../../core/model/object-names.ts";
import { useSheetModes } from "../scene/sheet-modes.ts";
import { type SheetItem, type SheetItems, sheetItems } from "../scene/sheet-items.ts";
import { endSketch, sketch } from "./sketch-store.ts";
import { nameOf } from "../scene/item-name.ts";
import { useView } from "../scene/view-store.ts";
import { carry, dropCarried, isCarrying, moveCarried, putDown } from "./move-without-dragging.ts";
import { clickOrDrag, panGesture } from "./gestures.ts";
import { lateGesture, moveGesture } from "./late-tool.ts";
import type { Gesture, SheetPointer, Tool } from "./tool.ts";
import * as words from "../scene/tool-words.ts";

/** A pointer reaches what lies within so many pixels of it. */
const REACH_PX = { fine: 4, coarse: 14 } as const;
/** What is smaller on the screen is met as if it were so large (WCAG 2.2, 2.5.8; 2.5.5 for fingers). */
const TARGET_PX = { fine: 24, coarse: 44 } as const;
/** A finger held still so long opens the menu, milliseconds. */
const HOLD_MS = 500;

/** The object a repeated click has gone down to: dragging takes it although others lie over it. */
let dugUp: string | null = null;

export const selectTool: Tool = {
  cursor: "default",
  press: (start) => {
    if (isCarrying()) return putDown();
    const held = handleUnder(start);
    if (held) return pullGesture(start, held.item, held.handle);
    const { selection, hidden } = useWindowStore.getState();
    const locked = lockSignAt(committedItems().list, start.px, useView.getState().view, hidden);
    if (locked) {
      return clickOrDrag(
        start,
        () => select([locked.id]),
        () => emptyDrag(start),
      );
    }
    const under = itemsUnder(start);
    const dug = under.find((item) => item.id === dugUp && selection.includes(item.id));
    const top = dug ?? under[0];
    return start.isCoarse ? fingerGesture(start, top, under) : mouseGesture(start, top, under);
  },
  hover: (pointer) => {
    if (isCarrying()) {
      moveCarried(pointer);
      return;
    }
    const held = handleUnder(pointer);
    if (held) {
      sketch({ cursor: handleCursor(held.handle, held.item.shape) });
      return;
    }
    const top = itemsUnder(pointer)[0];
    const isSelected = top !== undefined && useWindowStore.getState().selection.includes(top.id);
    sketch({ cursor: isSelected ? "move" : top ? "pointer" : null });
  },
  key: (key) => (key === "Escape" || key === "Backspace") && dropCarried(),
  leave: () => {
    dugUp = null;
    dropCarried();
  },
};

/** Dragged, a handle is let go where the drag ends; clicked, it stays in hand until the next click. */
function pullGesture(start: SheetPointer, item: SheetItem, handle: Handle): Gesture {
  const pulled = () => lateGesture(({ handleGesture }) => handleGesture(start, item, handle));
  const said = handle.kind === "turn" ? words.turning : words.shaping;
  const click = () => carry(pulled(), said(nameOf(item)));
  return clickOrDrag(start, click, pulled);
}

function committedItems(): SheetItems {
  const { plan, layoutId, book } = usePlanStore.getState();
  return sheetItems(plan, layoutOf(plan, layoutId), book);
}

function itemsUnder({ at, isCoarse }: SheetPointer): readonly SheetItem[] {
  const size = isCoarse ? "coarse" : "fine";
  const { hidden } = useWindowStore.getState();
  const { scale } = useView.getState().view;
  const found = itemsAt(committedItems(), at, REACH_PX[size] / scale, TARGET_PX[size] / scale);
  return found.filter((item) => isTakeable(item, hidden));
}

/** The menu of what is selected under the pointer, else of what lies there, else of the sheet. */
export function openObjectMenu(pointer: SheetPointer): void {
  const { selection, askObjectMenu, hidden } = useWindowStore.getState();
  const view = useView.getState().view;
  const locked = lockSignAt(committedItems().list, pointer.px, view, hidden);
  const under = locked ? [locked] : itemsUnder(pointer);
  const isSelected = under.some(({ id }) => selection.includes(id));
  const ids = isSelected ? selection : under.slice(0, 1).map(({ id }) => id);
  if (!isSelected && ids.length > 0) select(ids);
  askObjectMenu({ ids, xPx: pointer.page.x, yPx: pointer.page.y });
}

/** Why nothing was selected, where something locked lies. */
function sayLocked({ at }: SheetPointer): void {
  const [item] = itemsAt(committedItems(), at, 0).filter(isLocked);
  if (!item) return;
  useWindowStore.getState().announce(words.isLocked(nameOf(item)));
}

/** The handle under the pointer, of the one object selected. */
function handleUnder(
  pointer: SheetPointer,
): { readonly item: SheetItem; readonly handle: Handle } | null {
  const [id, ...more] = useWindowStore.getState().selection;
  const item = id === undefined || more.length > 0 ? undefined : committedItems().byId.get(id);
  if (!item) return null;
  const sizes = handleSizes(pointer.isCoarse);
  const placed = itemHandles(item, committedItems(), useView.getState().view, sizes);
  const handle = handleAt(placed, pointer.px, sizes);
  return handle && { item, handle };
}

/** Another selection closes the opened finding, unless it is about what is selected. */
function select(ids: readonly string[]): void {
  const { result } = usePlanStore.getState();
  const { openFinding, showFinding, select: choose } = useWindowStore.getState();
  const opened = result.findings.find((finding) => finding.id === openFinding);
  if (!opened || !ids.some((id) => opened.subjects.includes(id))) showFinding(null);
  choose(ids);
}

function toggle(id: string): void {
  const { plan, layoutId } = usePlanStore.getState();
  const { selection, announce } = useWindowStore.getState();
  const isIn = selection.includes(id);
  select(isIn ? selection.filter((other) => other !== id) : [...selection, id]);
  const name = objectNames(plan, layoutOf(plan, layoutId), [id]);
  announce(isIn ? words.takenFromSelection(name) : words.addedToSelection(name));
}

function mouseGesture(
  start: SheetPointer,
  top: SheetItem | undefined,
  under: readonly SheetItem[],
): Gesture {
  const { selection } = useWindowStore.getState();
  const wasSelected = top !== undefined && selection.includes(top.id);
  const before = { selection, openFinding: useWindowStore.getState().openFinding };
  const isAdding = start.isShift || useSheetModes.getState().isSelectingSeveral;
  // Plantings are taken at once; a bed or hedge must be selected before it can be dragged away.
  if (top?.what === "planting" && !wasSelected && !isAdding) select([top.id]);
  const click = () => {
    if (!top) {
      select(isAdding ? selection : []);
      sayLocked(start);
    } else if (isAdding) toggle(top.id);
    else if (wasSelected && selection.length === 1 && start.clicks === 1) digDown(top, under);
    else {
      dugUp = null;
      select([top.id]);
    }
  };
  const drag = (): Gesture => {
    if (top && (wasSelected || top.what === "planting")) {
      if (!wasSelected && isAdding) select([...selection, top.id]);
      return moveGesture(start, top);
    }
    return regionGesture(start.at, isAdding ? selection : []);
  };
  const gesture = clickOrDrag(start, click, drag);
  return {
    ...gesture,
    cancel: () => {
      gesture.cancel();
      // Escape brings the selection back as well.
      useWindowStore.getState().select(before.selection);
      useWindowStore.getState().showFinding(before.openFinding);
    },
  };
}

/** A further click on what is selected goes down to what lies beneath it, then up again. */
function digDown(top: SheetItem, under: readonly SheetItem[]): void {
  const next = under[(under.indexOf(top) + 1) % under.length];
  if (!next) return;
  dugUp = next.id;
  select([next.id]);
}

/**
 * One finger: taps select, drags move what is selected and pan everything else. Held still it opens
 * the menu of what lies under it. While several are selected taps add, and drags over what is not
 * selected draw a region.
 */
function fingerGesture(
  start: SheetPointer,
  top: SheetItem | undefined,
  under: readonly SheetItem[],
): Gesture {
  const { selection } = useWindowStore.getState();
  const isAdding = useSheetModes.getState().isSelectingSeveral;
  const isSelected = top !== undefined && selection.includes(top.id);
  let hasHeld = false;
  const timer = setTimeout(() => {
    hasHeld = true;
    openObjectMenu(start);
  }, HOLD_MS);
  const tap = () => {
    if (hasHeld) return;
    if (!top) {
      if (!isAdding) select([]);
      sayLocked(start);
    } else if (isAdding) toggle(top.id);
    else if (isSelected && selection.length === 1) digDown(top, under);
    else select([top.id]);
  };
  const gesture = clickOrDrag(start, tap, () => {
    clearTimeout(timer);
    return isSelected && top && !hasHeld ? moveGesture(start, top) : emptyDrag(start);
  });
  return {
    move: gesture.move,
    end: (pointer) => {
      clearTimeout(timer);
      gesture.end(pointer);
    },
    cancel: () => {
      clearTimeout(timer);
      gesture.cancel();
    },
  };
}

/** A drag that takes hold of nothing. */
function emptyDrag(start: SheetPointer): Gesture {
  const isAdding = start.isShift || useSheetModes.getState().isSelectingSeveral;
  if (start.isCoarse && !isAdding) return panGesture(start);
  return regionGesture(start.at, isAdding ? useWindowStore.getState().selection : []);
}

/** A box over empty ground selects what lies wholly inside it. */
function regionGesture(from: Point, kept: readonly string[]): Gesture {
  const inside = ({ at }: SheetPointer) => {
    const { hidden } = useWindowStore.getState();
    const found = itemsInside(committedItems(), boxBetween(from, at))
      .filter((item) => isTakeable(item, hidden))
      .map(({ id }) => id);
    return [...new Set([...kept, ...found])];
  };
  return {
    move: (pointer) => {
      sketch({ region: [from, pointer.at] });
      const found = inside(pointer);
      const { selection } = useWindowStore.getState();
      const isSame =
        found.length === selection.length && found.every((id) => selection.includes(id));
      if (!isSame) select(found);
    },
    end: (pointer) => {
      endSketch();
      const found = inside(pointer);
      select(found);
      useWindowStore.getState().announce(words.selectedInside(found.length));
    },
    cancel: endSketch,
  };
}
