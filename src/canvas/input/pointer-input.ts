/** Presses, drags and fingers on the sheet, handed to the tool in use. */
import { onAnotherPlan } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { gestureRun } from "./gesture-run.ts";
import { endNudge } from "./nudge.ts";
import { onceAFrame } from "./once-a-frame.ts";
import { pointerReader } from "./pointer-reader.ts";
import { useSheetModes } from "../scene/sheet-modes.ts";
import { sketch } from "../tools/sketch-store.ts";
import { panGesture } from "../tools/gestures.ts";
import type { SheetPointer } from "../tools/tool.ts";
import { openObjectMenu } from "../tools/select.ts";
import { tools } from "../tools/tool-list.ts";
import { fingerTracker } from "./two-fingers.ts";

const LEFT = 0;
const MIDDLE = 1;
const RIGHT = 2;

export interface PointerInput {
  /** Puts back what the gesture at work has done; false when none is. */
  readonly cancel: () => boolean;
  /** While held, presses pan whatever the tool. True when it is let go and something was panned. */
  readonly holdPan: (isHeld: boolean) => boolean;
  readonly stop: () => void;
}

const toolInUse = () => tools[useWindowStore.getState().tool];

export function listenToPointers(element: HTMLElement): PointerInput {
  const run = gestureRun();
  const hovers = onceAFrame<SheetPointer>((pointer) => {
    if (!run.isBusy()) toolInUse().hover(pointer);
  });
  const input: Input = {
    element,
    run,
    hovers,
    reader: pointerReader(element),
    fingers: fingerTracker(),
    isPanHeld: false,
    hasPanned: false,
  };
  const lift = (event: PointerEvent, after: "end" | "cancel") => {
    input.fingers.lift(event.pointerId);
    if (!run.belongsTo(event.pointerId)) return;
    if (after === "end") run.end(input.reader.read(event));
    else run.cancel();
  };
  const stopListening = listen(element, {
    pointerdown: (event) => press(input, event),
    pointermove: (event) => move(input, event),
    pointerup: (event) => lift(event, "end"),
    pointercancel: (event) => lift(event, "cancel"),
    lostpointercapture: (event) => lift(event, "cancel"),
    pointerleave: () => {
      hovers.drop();
      if (!run.isBusy()) sketch({ cursor: null });
    },
    mousedown: keepFromScrolling,
    contextmenu: (event) => openMenu(input, event),
    touchend: keepFromMenu,
  });
  // A gesture belongs to the plan it began in.
  const stopWatching = onAnotherPlan(run.cancel);
  return {
    cancel: run.cancel,
    holdPan: (isHeld) => {
      if (input.isPanHeld === isHeld) return false;
      const hasPanned = input.hasPanned && !isHeld;
      input.isPanHeld = isHeld;
      input.hasPanned = false;
      if (!run.isBusy()) sketch({ cursor: isHeld ? "grab" : null });
      return hasPanned;
    },
    stop: () => {
      run.cancel();
      stopWatching();
      stopListening();
    },
  };
}

/** What listens to one sheet. */
interface Input {
  readonly element: HTMLElement;
  readonly reader: ReturnType<typeof pointerReader>;
  readonly run: ReturnType<typeof gestureRun>;
  readonly fingers: ReturnType<typeof fingerTracker>;
  readonly hovers: ReturnType<typeof onceAFrame<SheetPointer>>;
  isPanHeld: boolean;
  /** Since panning was held. */
  hasPanned: boolean;
}

function press(input: Input, event: PointerEvent) {
  const { element, reader, run, fingers, hovers, isPanHeld } = input;
  if (event.button !== LEFT && event.button !== MIDDLE) return;
  endNudge();
  if (event.pointerType === "touch" && fingers.add(event.pointerId, reader.pxOf(event))) {
    run.cancel();
    return;
  }
  // The pen comes before the palm that lies on the screen already.
  if (event.pointerType === "pen") run.cancel();
  if (run.isBusy()) return;
  reader.count(event);
  element.setPointerCapture(event.pointerId);
  hovers.drop();
  if (event.pointerType === "pen") useSheetModes.setState({ isPenInUse: true });
  const isPalm = event.pointerType === "touch" && useSheetModes.getState().isPenInUse;
  const isPan = event.button === MIDDLE || isPanHeld || isPalm;
  input.hasPanned ||= isPanHeld;
  const start = reader.read(event);
  run.start(event.pointerId, isPan ? panGesture(start) : toolInUse().press(start));
}

function move({ reader, run, fingers, hovers }: Input, event: PointerEvent): void {
  if (fingers.move(event.pointerId, reader.pxOf(event))) return;
  if (run.belongsTo(event.pointerId)) run.move(reader.read(event));
  else if (!run.isBusy() && event.pointerType !== "touch") hovers.run(reader.read(event));
}

/** The second button; a finger's hold is timed by the tool, where it also works without this event. */
function openMenu({ reader, run }: Input, event: PointerEvent): void {
  event.preventDefault();
  if (event.pointerType === "touch" || run.isBusy()) return;
  if (event.button === RIGHT) openObjectMenu(reader.read(event));
}

/** Lifting the finger that opened a menu by holding still would press what came up beneath it. */
function keepFromMenu(event: TouchEvent): void {
  if (useWindowStore.getState().menuRequest && event.cancelable) event.preventDefault();
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
