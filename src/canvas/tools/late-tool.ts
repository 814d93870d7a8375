/**
 * Drawing tools before and after they have been fetched: what is pressed before they are there is
 * kept and done when they are.
 */
import { useWindowStore } from "../../store/window/window-store.ts";
import type { SheetItem } from "../scene/sheet-items.ts";
import type { SideGap } from "../snap/side-gaps.ts";
import type * as DrawingTools from "./drawing-tools.ts";
import type { Gesture, SheetPointer, Tool } from "./tool.ts";
import * as words from "../scene/tool-words.ts";

type Tools = typeof DrawingTools;

let fetched: Tools | null = null;

/** Fetches the drawing tools; rejects where they cannot be had, and tries anew when asked again. */
export async function fetchDrawingTools(): Promise<Tools> {
  fetched ??= await import("./drawing-tools.ts");
  return fetched;
}

/** Does something with the drawing tools: at once when they are there, else when they are. */
export function withDrawingTools(act: (tools: Tools) => void): void {
  if (fetched) act(fetched);
  else {
    fetchDrawingTools().then(act, () => useWindowStore.getState().announce(words.toolNotLoaded));
  }
}

/** Distances around what is on the move, as soon as what measures them is there. */
export function gapsAround(id: string, selection: readonly string[]): readonly SideGap[] {
  return fetched?.shownGaps(id, selection) ?? [];
}

/** A tool of drawing-tools.ts. @param cursor its pointer's look, which is wanted at once */
export function drawingTool(name: keyof Tools["drawingTools"], cursor: string): Tool {
  const tool = (): Tool | undefined => fetched?.drawingTools[name];
  let isTaken = false;
  return {
    cursor,
    press: (start) =>
      lateGesture(({ drawingTools }) => (isTaken ? drawingTools[name].press(start) : null)),
    hover: (pointer) => tool()?.hover(pointer),
    key: (key) => tool()?.key(key) ?? false,
    take: () => {
      isTaken = true;
      withDrawingTools(({ drawingTools }) => {
        const there: Tool = drawingTools[name];
        if (isTaken) there.take?.();
      });
    },
    leave: () => {
      isTaken = false;
      tool()?.leave();
    },
  };
}

/** `moveGesture` of move-gesture.ts: a drag begun before it has come catches up when it does. */
export function moveGesture(start: SheetPointer, grabbed: SheetItem): Gesture {
  return lateGesture((tools) => tools.moveGesture(start, grabbed));
}

/**
 * A gesture that may have to wait for the tools; it then runs from its beginning.
 *
 * @param begin the press; null when it is not wanted any more
 */
export function lateGesture(begin: (tools: Tools) => Gesture | null): Gesture {
  let gesture: Gesture | null = null;
  let movedTo: SheetPointer | null = null;
  let endedAt: SheetPointer | null = null;
  let isCancelled = false;
  withDrawingTools((tools) => {
    if (isCancelled) return;
    gesture = begin(tools);
    if (movedTo) gesture?.move(movedTo);
    if (endedAt) gesture?.end(endedAt);
  });
  return {
    move: (pointer) => {
      movedTo = pointer;
      gesture?.move(pointer);
    },
    end: (pointer) => {
      endedAt = pointer;
      gesture?.end(pointer);
    },
    cancel: () => {
      isCancelled = true;
      gesture?.cancel();
    },
  };
}
