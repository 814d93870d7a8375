/** Presses, drags and fingers on the sheet, handed to the tool in use. */
import type { Point } from "../core/geometry/point.ts";
import { usePlanStore } from "../store/plan-store.ts";
import { endNudge } from "./nudge.ts";
import { onceAFrame } from "./once-a-frame.ts";
import { sketch } from "./sketch-store.ts";
import { panGesture } from "./tools/gestures.ts";
import type { Gesture, SheetPointer } from "./tools/tool.ts";
import { tools } from "./tools/tool-list.ts";
import { type TwoFingers, followFingers, twoFingers } from "./two-fingers.ts";
import { useView } from "./view-store.ts";
import { toSheet } from "./viewport.ts";

const LEFT = 0;
const MIDDLE = 1;
/** Presses nearer in time and place than this are a double click. */
const DOUBLE_MS = 400;
const DOUBLE_PX = 6;

export interface PointerInput {
  /** Puts back what the gesture at work has done; false when none is. */
  readonly cancel: () => boolean;
  /** While held, presses pan whatever the tool. */
  readonly holdPan: (isHeld: boolean) => void;
  readonly stop: () => void;
}

interface Pressed {
  readonly id: number;
  readonly gesture: Gesture;
}

export function listenToPointers(element: HTMLElement): PointerInput {
  let pressed: Pressed | null = null;
  let isPanHeld = false;
  let pinch: TwoFingers | null = null;
  let lastPress = { time: -Infinity, px: { x: 0, y: 0 }, clicks: 0 };
  const fingers = new Map<number, Point>();

  const pxOf = (event: PointerEvent): Point => {
    const box = element.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const pointerOf = (event: PointerEvent): SheetPointer => {
    const px = pxOf(event);
    return {
      px,
      at: toSheet(useView.getState().view, px),
      isShift: event.shiftKey,
      isAlt: event.altKey,
      isCoarse: event.pointerType === "touch",
      clicks: lastPress.clicks,
    };
  };
  const moves = onceAFrame<SheetPointer>((pointer) => pressed?.gesture.move(pointer));
  const hovers = onceAFrame<SheetPointer>((pointer) => {
    if (!pressed) tools[usePlanStore.getState().tool].hover(pointer);
  });
  const cancel = () => {
    if (!pressed) return false;
    const { gesture } = pressed;
    pressed = null;
    moves.drop();
    gesture.cancel();
    return true;
  };
  const countClicks = (event: PointerEvent) => {
    const px = pxOf(event);
    const isAgain =
      event.timeStamp - lastPress.time < DOUBLE_MS &&
      Math.hypot(px.x - lastPress.px.x, px.y - lastPress.px.y) < DOUBLE_PX;
    lastPress = { time: event.timeStamp, px, clicks: isAgain ? lastPress.clicks + 1 : 1 };
  };

  const down = (event: PointerEvent) => {
    if (event.button !== LEFT && event.button !== MIDDLE) return;
    endNudge();
    if (event.pointerType === "touch") {
      fingers.set(event.pointerId, pxOf(event));
      pinch = twoFingers(fingers.values());
      if (pinch) {
        cancel();
        return;
      }
    }
    if (pressed) return;
    countClicks(event);
    element.setPointerCapture(event.pointerId);
    hovers.drop();
    const start = pointerOf(event);
    const isPan = event.button === MIDDLE || isPanHeld;
    const gesture = isPan ? panGesture(start) : tools[usePlanStore.getState().tool].press(start);
    pressed = { id: event.pointerId, gesture };
  };
  const move = (event: PointerEvent) => {
    if (fingers.has(event.pointerId)) {
      fingers.set(event.pointerId, pxOf(event));
      const next = twoFingers(fingers.values());
      if (pinch && next) {
        followFingers(pinch, next);
        pinch = next;
        return;
      }
    }
    if (pressed?.id === event.pointerId) moves.run(pointerOf(event));
    else if (!pressed && event.pointerType !== "touch") hovers.run(pointerOf(event));
  };
  const up = (event: PointerEvent) => {
    fingers.delete(event.pointerId);
    pinch = twoFingers(fingers.values());
    if (pressed?.id !== event.pointerId) return;
    const pointer = pointerOf(event);
    moves.drop();
    pressed.gesture.move(pointer);
    const { gesture } = pressed;
    pressed = null;
    gesture.end(pointer);
  };
  const lost = (event: PointerEvent) => {
    fingers.delete(event.pointerId);
    pinch = twoFingers(fingers.values());
    if (pressed?.id === event.pointerId) cancel();
  };
  /** The middle button would scroll the page. */
  const mouseDown = (event: MouseEvent) => {
    if (event.button === MIDDLE) event.preventDefault();
  };
  const leave = () => {
    hovers.drop();
    if (!pressed) sketch({ cursor: null });
  };

  const listeners = {
    pointerdown: down,
    pointermove: move,
    pointerup: up,
    pointercancel: lost,
    lostpointercapture: lost,
    pointerleave: leave,
  } as const;
  for (const [name, listener] of Object.entries(listeners)) {
    element.addEventListener(name as keyof typeof listeners, listener);
  }
  element.addEventListener("mousedown", mouseDown);
  return {
    cancel,
    holdPan: (isHeld) => {
      if (isPanHeld === isHeld) return;
      isPanHeld = isHeld;
      if (!pressed) sketch({ cursor: isHeld ? "grab" : null });
    },
    stop: () => {
      cancel();
      element.removeEventListener("mousedown", mouseDown);
      for (const [name, listener] of Object.entries(listeners)) {
        element.removeEventListener(name as keyof typeof listeners, listener);
      }
    },
  };
}
