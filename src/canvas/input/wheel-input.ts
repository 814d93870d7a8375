/** The wheel, trackpad gestures and pinches over the sheet; the page itself stays still. */
import { useSheetPreferences } from "../../store/window/sheet-preferences.ts";
import { useView } from "../scene/view-store.ts";
import { type WheelMemory, wheelFactor, wheelMeaning, wheelPixels } from "./wheel-meaning.ts";

/** Safari's own pinch events; not in the standard types. */
interface PinchEvent extends UIEvent {
  readonly scale: number;
  readonly clientX: number;
  readonly clientY: number;
}

export function listenToWheel(element: HTMLElement): () => void {
  let memory: WheelMemory | null = null;
  let pinched = 1;
  const placeOf = (event: { readonly clientX: number; readonly clientY: number }) => {
    const box = element.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const turn = (event: WheelEvent) => {
    event.preventDefault();
    const { deltaX, deltaY, deltaMode, ctrlKey, metaKey, timeStamp } = event;
    const isCtrl = ctrlKey || metaKey;
    const { wheel } = useSheetPreferences.getState();
    const turned = { deltaX, deltaY, deltaMode, isCtrl, time: timeStamp };
    const meaning = wheelMeaning(turned, memory, wheel);
    memory = isCtrl ? null : { meaning, time: timeStamp };
    const x = wheelPixels(deltaX, deltaMode);
    const y = wheelPixels(deltaY, deltaMode);
    const { zoom, pan } = useView.getState();
    if (meaning === "zoom") zoom(placeOf(event), wheelFactor(y, ctrlKey && Math.abs(y) < 50));
    else if (event.shiftKey && x === 0) pan(-y, 0);
    else pan(-x, -y);
  };
  const pinchStart = (event: Event) => {
    event.preventDefault();
    pinched = 1;
  };
  const pinch = (event: Event) => {
    event.preventDefault();
    const { scale, ...place } = readPinch(event as PinchEvent);
    useView.getState().zoom(placeOf(place), scale / pinched);
    pinched = scale;
  };
  element.addEventListener("wheel", turn, { passive: false });
  element.addEventListener("gesturestart", pinchStart);
  element.addEventListener("gesturechange", pinch);
  return () => {
    element.removeEventListener("wheel", turn);
    element.removeEventListener("gesturestart", pinchStart);
    element.removeEventListener("gesturechange", pinch);
  };
}

function readPinch({ scale, clientX, clientY }: PinchEvent) {
  return { scale, clientX, clientY };
}
