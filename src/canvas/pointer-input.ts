/** Presses, drags and fingers on the sheet, handed to the tool in use. */
import type { Point } from "../core/geometry/point.ts";
import { usePlanStore } from "../store/plan-store.ts";
import { gestureRun } from "./gesture-run.ts";
import { endNudge } from "./nudge.ts";
import { onceAFrame } from "./once-a-frame.ts";
import { pointerReader } from "./pointer-reader.ts";
import { sketch } from "./sketch-store.ts";
import { panGesture } from "./tools/gestures.ts";
import type { SheetPointer } from "./tools/tool.ts";
import { tools } from "./tools/tool-list.ts";
import { type TwoFingers, followFingers, twoFingers } from "./two-fingers.ts";

const LEFT = 0;
const MIDDLE = 1;

export interface PointerInput {
  /** Puts back what the gesture at work has done; false when none is. */
  readonly cancel: () => boolean;
  /** While held, presses pan whatever the tool. */
  readonly holdPan: (isHeld: boolean) => void;
  readonly stop: () => void;
}

const toolInUse = () => tools[usePlanStore.getState().tool];

export function listenToPointers(element: HTMLElement): PointerInput {
  const reader = pointerReader(element);
  const run = gestureRun();
  const fingers = new Map<number, Point>();
  let pinch: TwoFingers | null = null;
  let isPanHeld = false;
  const hovers = onceAFrame<SheetPointer>((pointer) => {
    if (!run.isBusy()) toolInUse().hover(pointer);
  });

  /** True when a second finger is down: from then on nothing is dragged. */
  const addFinger = (event: PointerEvent) => {
    fingers.set(event.pointerId, reader.pxOf(event));
    pinch = twoFingers(fingers.values());
    return pinch !== null;
  };
  const liftFinger = (event: PointerEvent) => {
    fingers.delete(event.pointerId);
    pinch = twoFingers(fingers.values());
  };
  const down = (event: PointerEvent) => {
    if (event.button !== LEFT && event.button !== MIDDLE) return;
    endNudge();
    if (event.pointerType === "touch" && addFinger(event)) {
      run.cancel();
      return;
    }
    if (run.isBusy()) return;
    reader.count(event);
    element.setPointerCapture(event.pointerId);
    hovers.drop();
    const isPan = event.button === MIDDLE || isPanHeld;
    const start = reader.read(event);
    run.start(event.pointerId, isPan ? panGesture(start) : toolInUse().press(start));
  };
  const move = (event: PointerEvent) => {
    if (fingers.has(event.pointerId)) {
      fingers.set(event.pointerId, reader.pxOf(event));
      const next = twoFingers(fingers.values());
      if (pinch && next) {
        followFingers(pinch, next);
        pinch = next;
        return;
      }
    }
    if (run.belongsTo(event.pointerId)) run.move(reader.read(event));
    else if (!run.isBusy() && event.pointerType !== "touch") hovers.run(reader.read(event));
  };
  const up = (event: PointerEvent) => {
    liftFinger(event);
    if (run.belongsTo(event.pointerId)) run.end(reader.read(event));
  };
  const lost = (event: PointerEvent) => {
    liftFinger(event);
    if (run.belongsTo(event.pointerId)) run.cancel();
  };
  const leave = () => {
    hovers.drop();
    if (!run.isBusy()) sketch({ cursor: null });
  };
  const stopListening = listen(element, {
    pointerdown: down,
    pointermove: move,
    pointerup: up,
    pointercancel: lost,
    lostpointercapture: lost,
    pointerleave: leave,
    mousedown: keepFromScrolling,
  });
  return {
    cancel: run.cancel,
    holdPan: (isHeld) => {
      if (isPanHeld === isHeld) return;
      isPanHeld = isHeld;
      if (!run.isBusy()) sketch({ cursor: isHeld ? "grab" : null });
    },
    stop: () => {
      run.cancel();
      stopListening();
    },
  };
}

/** The middle button would scroll the page. */
function keepFromScrolling(event: MouseEvent): void {
  if (event.button === MIDDLE) event.preventDefault();
}

type Listeners = {
  readonly [Name in keyof HTMLElementEventMap]?: (event: HTMLElementEventMap[Name]) => void;
};

function listen(element: HTMLElement, listeners: Listeners): () => void {
  const entries = Object.entries(listeners) as readonly (readonly [string, EventListener])[];
  for (const [name, listener] of entries) element.addEventListener(name, listener);
  return () => {
    for (const [name, listener] of entries) element.removeEventListener(name, listener);
  };
}
