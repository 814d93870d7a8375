/** Selecting, and dragging what is selected. */
import type { Point } from "../../core/geometry/point.ts";
import { layoutOf, usePlanStore } from "../../store/plan-store.ts";
import { type Handle, handleAt, handleCursor, handleSizes, handlesOf } from "../handles.ts";
import { boxBetween, itemsAt, itemsInside } from "../hit-test.ts";
import { objectNames } from "../object-names.ts";
import { type SheetItem, type SheetItems, sheetItems } from "../sheet-items.ts";
import { endSketch, sketch } from "../sketch-store.ts";
import { useView } from "../view-store.ts";
import { clickOrDrag, panGesture } from "./gestures.ts";
import { moveGesture } from "./move-gesture.ts";
import { handleGesture } from "./shape-gestures.ts";
import type { Gesture, SheetPointer, Tool } from "./tool.ts";

/** A pointer reaches what lies within so many pixels of it. */
const REACH_PX = { fine: 4, coarse: 14 } as const;
/** A finger held still so long adds to the selection or takes away from it, milliseconds. */
const HOLD_MS = 500;

/** The object a repeated click has gone down to: dragging takes it although others lie over it. */
let dugUp: string | null = null;

export const selectTool: Tool = {
  cursor: "default",
  press: (start) => {
    const held = handleUnder(start);
    if (held) return handleGesture(start, held.item, held.handle);
    const { selection } = usePlanStore.getState();
    const under = itemsUnder(start);
    const dug = under.find((item) => item.id === dugUp && selection.includes(item.id));
    const top = dug ?? under[0];
    return start.isCoarse ? fingerGesture(start, top) : mouseGesture(start, top, under);
  },
  hover: (pointer) => {
    const held = handleUnder(pointer);
    if (held) {
      sketch({ cursor: handleCursor(held.handle, held.item.shape) });
      return;
    }
    const top = itemsUnder(pointer)[0];
    const isSelected = top !== undefined && usePlanStore.getState().selection.includes(top.id);
    sketch({ cursor: isSelected ? "move" : top ? "pointer" : null });
  },
  key: () => false,
  leave: () => {
    dugUp = null;
  },
};

function committedItems(): SheetItems {
  const { plan, layoutId, book } = usePlanStore.getState();
  return sheetItems(plan, layoutOf(plan, layoutId), book);
}

function itemsUnder({ at, isCoarse }: SheetPointer): readonly SheetItem[] {
  const reachPx = isCoarse ? REACH_PX.coarse : REACH_PX.fine;
  return itemsAt(committedItems(), at, reachPx / useView.getState().view.scale);
}

/** The handle under the pointer, of the one object selected. */
function handleUnder(
  pointer: SheetPointer,
): { readonly item: SheetItem; readonly handle: Handle } | null {
  const [id, ...more] = usePlanStore.getState().selection;
  const item = id === undefined || more.length > 0 ? undefined : committedItems().byId.get(id);
  if (!item) return null;
  const sizes = handleSizes(pointer.isCoarse);
  const handle = handleAt(handlesOf(item.shape, useView.getState().view, sizes), pointer.px, sizes);
  return handle && { item, handle };
}

/** Another selection closes the opened finding, unless it is about what is selected. */
function select(ids: readonly string[]): void {
  const { result, openFinding, showFinding, select: choose } = usePlanStore.getState();
  const opened = result.findings.find((finding) => finding.id === openFinding);
  if (!opened || !ids.some((id) => opened.subjects.includes(id))) showFinding(null);
  choose(ids);
}

function toggle(id: string): void {
  const { selection, plan, layoutId, announce } = usePlanStore.getState();
  const isIn = selection.includes(id);
  select(isIn ? selection.filter((other) => other !== id) : [...selection, id]);
  const name = objectNames(plan, layoutOf(plan, layoutId), [id]);
  announce(`${name} ${isIn ? "taken from" : "added to"} the selection.`);
}

function mouseGesture(
  start: SheetPointer,
  top: SheetItem | undefined,
  under: readonly SheetItem[],
): Gesture {
  const { selection } = usePlanStore.getState();
  const wasSelected = top !== undefined && selection.includes(top.id);
  const before = { selection, openFinding: usePlanStore.getState().openFinding };
  // Plantings are taken at once; a bed or hedge must be selected before it can be dragged away.
  if (top?.what === "planting" && !wasSelected && !start.isShift) select([top.id]);
  const click = () => {
    if (!top) select(start.isShift ? selection : []);
    else if (start.isShift) toggle(top.id);
    else if (wasSelected && selection.length === 1 && start.clicks === 1) digDown(top, under);
    else {
      dugUp = null;
      select([top.id]);
    }
  };
  const drag = (): Gesture => {
    if (top && (wasSelected || top.what === "planting")) {
      if (!wasSelected && start.isShift) select([...selection, top.id]);
      return moveGesture(start, top);
    }
    return regionGesture(start.at, start.isShift ? selection : []);
  };
  const gesture = clickOrDrag(start, click, drag);
  return {
    ...gesture,
    cancel: () => {
      gesture.cancel();
      // Escape brings the selection back as well.
      usePlanStore.getState().select(before.selection);
      usePlanStore.getState().showFinding(before.openFinding);
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

/** One finger: taps select, drags move what is selected and pan everything else. */
function fingerGesture(start: SheetPointer, top: SheetItem | undefined): Gesture {
  const { selection } = usePlanStore.getState();
  const isSelected = top !== undefined && selection.includes(top.id);
  let hasHeld = false;
  const timer = setTimeout(() => {
    hasHeld = true;
    if (top) toggle(top.id);
  }, HOLD_MS);
  const gesture = clickOrDrag(
    start,
    () => {
      if (!hasHeld) select(top ? [top.id] : []);
    },
    () => {
      clearTimeout(timer);
      return isSelected && top && !hasHeld ? moveGesture(start, top) : panGesture(start);
    },
  );
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

/** A box over empty ground selects what lies wholly inside it. */
function regionGesture(from: Point, kept: readonly string[]): Gesture {
  const inside = ({ at }: SheetPointer) => {
    const found = itemsInside(committedItems(), boxBetween(from, at)).map(({ id }) => id);
    return [...new Set([...kept, ...found])];
  };
  return {
    move: (pointer) => {
      sketch({ region: [from, pointer.at] });
      const found = inside(pointer);
      const { selection } = usePlanStore.getState();
      const isSame =
        found.length === selection.length && found.every((id) => selection.includes(id));
      if (!isSame) select(found);
    },
    end: (pointer) => {
      endSketch();
      const found = inside(pointer);
      select(found);
      usePlanStore.getState().announce(`${found.length} selected.`);
    },
    cancel: endSketch,
  };
}
