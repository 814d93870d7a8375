/** Dragging a bar to another first flower, once a frame; a press without a drag selects its stand. */
import { type PointerEvent, useEffect, useRef, useState } from "react";
import { onAnotherPlan } from "../../store/plan/plan-store.ts";
import { cancelShift, dragFlowerTo, endShift } from "./bar-shift.ts";
import { windowNow } from "../state/plan-actions.ts";

/** Pixels the pointer moves before a press counts as a drag. */
const DRAG_FROM_PX = 3;

interface Drag {
  readonly fromPx: number;
  readonly dayPx: number;
  readonly flower: number;
  readonly atPx: number;
  readonly isMoving: boolean;
  readonly frame: number | null;
}

export interface BarDrag {
  readonly isHeld: boolean;
  readonly handlers: {
    readonly onPointerDown: (event: PointerEvent<HTMLElement>) => void;
    readonly onPointerMove: (event: PointerEvent<HTMLElement>) => void;
    readonly onPointerUp: () => void;
    readonly onPointerCancel: () => void;
  };
  /** Puts a running drag back; false when there is none. */
  readonly cancel: () => boolean;
}

/**
 * @param flower likely first flower of the bar, a day number
 * @param axisDays days over the width of the element the bar lies in
 */
export function useBarDrag(id: string, flower: number, axisDays: number): BarDrag {
  const drag = useRef<Drag | null>(null);
  const [isHeld, setHeld] = useState(false);

  const follow = ({ atPx, fromPx, dayPx, flower: from }: Drag) =>
    dragFlowerTo(id, from + Math.round((atPx - fromPx) / dayPx));
  const finish = (isKept: boolean) => {
    const now = drag.current;
    drag.current = null;
    setHeld(false);
    if (!now) return false;
    if (now.frame !== null) cancelAnimationFrame(now.frame);
    if (!isKept) cancelShift();
    else if (now.isMoving) {
      follow(now);
      endShift();
    } else windowNow().select([id]);
    return true;
  };
  const press = (event: PointerEvent<HTMLElement>) => {
    const track = event.currentTarget.parentElement;
    if (event.button !== 0 || !track) return;
    endShift();
    event.currentTarget.setPointerCapture(event.pointerId);
    const dayPx = track.getBoundingClientRect().width / axisDays;
    const { clientX } = event;
    drag.current = { fromPx: clientX, atPx: clientX, dayPx, flower, isMoving: false, frame: null };
  };
  const move = (event: PointerEvent<HTMLElement>) => {
    const now = drag.current;
    const atPx = event.clientX;
    if (!now || (!now.isMoving && Math.abs(atPx - now.fromPx) < DRAG_FROM_PX)) return;
    const frame = now.frame ?? requestAnimationFrame(followInFrame);
    drag.current = { ...now, atPx, isMoving: true, frame };
    setHeld(true);
  };
  const followInFrame = () => {
    if (!drag.current) return;
    drag.current = { ...drag.current, frame: null };
    follow(drag.current);
  };
  useEffect(
    () =>
      onAnotherPlan(() => {
        if (drag.current?.frame) cancelAnimationFrame(drag.current.frame);
        drag.current = null;
        setHeld(false);
      }),
    [],
  );
  return {
    isHeld,
    handlers: {
      onPointerDown: press,
      onPointerMove: move,
      onPointerUp: () => void finish(true),
      onPointerCancel: () => void finish(false),
    },
    cancel: () => finish(false),
  };
}
