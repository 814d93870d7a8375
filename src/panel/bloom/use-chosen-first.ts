/** Fingers: the first tap on a bar chooses it, the next may drag it; sliding over it changes no date. */
import { type PointerEvent, useRef } from "react";
import { windowNow } from "../state/plan-actions.ts";
import type { BarDrag } from "./use-bar-drag.ts";

/** A finger that moves less has tapped, pixels. */
const TAP_PX = 10;

type Press = PointerEvent<HTMLElement>;

/** The handlers of a drag, for fingers only once the bar is chosen. */
export function useChosenFirst(id: string, { handlers }: BarDrag) {
  /** Where a finger came down on a bar that is not chosen; null: none did. */
  const tapped = useRef<number | null>(null);
  return {
    ...handlers,
    onPointerDown: (event: Press) => {
      const isChosen = event.pointerType !== "touch" || windowNow().selection.includes(id);
      tapped.current = isChosen ? null : event.clientX;
      if (isChosen) handlers.onPointerDown(event);
    },
    onPointerUp: (event: Press) => {
      const from = tapped.current;
      tapped.current = null;
      if (from === null) handlers.onPointerUp();
      else if (Math.abs(event.clientX - from) < TAP_PX) windowNow().select([id]);
    },
    onPointerCancel: () => {
      tapped.current = null;
      handlers.onPointerCancel();
    },
  };
}
