/** One view of the ground for several drawings: panned and zoomed on any, all follow. */
import { type PointerEvent, useMemo, useRef, useState } from "react";
import type { Bounds } from "../../core/geometry/bounds.ts";
import type { Point } from "../../core/geometry/point.ts";
import { twoFingers } from "../input/two-fingers.ts";
import { type Size, type View, fittedView, pannedBy, zoomedAbout } from "../scene/viewport.ts";
import { wheelFactor, wheelPixels } from "../input/wheel-meaning.ts";

/** Below as much as the scale bar takes, which veils what lies under it. */
const INSET = { left: 24, top: 24, right: 24, bottom: 64 } as const;
/** A press of an arrow key, pixels; a press of plus, as a factor. */
const KEY_PAN_PX = 48;
const KEY_ZOOM = 1.25;

export interface LinkedView {
  readonly view: View;
  readonly zoomBy: (factor: number) => void;
  readonly fit: () => void;
  /** For the holder of each drawing. */
  readonly handlers: {
    readonly onPointerDown: (event: PointerEvent<HTMLElement>) => void;
    readonly onPointerMove: (event: PointerEvent<HTMLElement>) => void;
    readonly onPointerUp: (event: PointerEvent<HTMLElement>) => void;
    readonly onPointerCancel: (event: PointerEvent<HTMLElement>) => void;
  };
  /** What a key or a turn of the wheel does; whether it did anything. */
  readonly key: (key: string) => boolean;
  readonly wheel: (event: WheelEvent, at: Point) => void;
}

/** The view shows these bounds until it is moved by hand. */
export function useLinkedView(bounds: Bounds, size: Size): LinkedView {
  // Another number of drawings makes each of another size: a view is of the size it was made at.
  const [moved, setMoved] = useState<{ readonly view: View; readonly size: Size } | null>(null);
  const fingers = useRef(new Map<number, Point>());
  const { minX, minY, maxX, maxY } = bounds;
  const { widthPx, heightPx } = size;
  const fitted = useMemo(
    () => fittedView({ minX, minY, maxX, maxY }, { widthPx, heightPx }, INSET),
    [minX, minY, maxX, maxY, widthPx, heightPx],
  );
  const viewOf = (before: typeof moved) =>
    before?.size.widthPx === widthPx && before.size.heightPx === heightPx ? before.view : fitted;
  const change = (next: (view: View) => View) =>
    setMoved((before) => ({ view: next(viewOf(before)), size: { widthPx, heightPx } }));
  const zoomBy = (factor: number) =>
    change((view) => zoomedAbout(view, { x: widthPx / 2, y: heightPx / 2 }, factor));
  const fit = () => setMoved(null);
  const lift = ({ pointerId }: PointerEvent) => {
    fingers.current.delete(pointerId);
  };
  return {
    view: viewOf(moved),
    zoomBy,
    fit,
    handlers: {
      onPointerDown: (event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        fingers.current.set(event.pointerId, placeOf(event));
      },
      onPointerMove: (event) => {
        const moves = fingerMove(fingers.current, event.pointerId, placeOf(event));
        if (moves) change(moves);
      },
      onPointerUp: lift,
      onPointerCancel: lift,
    },
    key: (key) => {
      const pan = PANS.get(key);
      if (pan) change((view) => pannedBy(view, pan[0] * KEY_PAN_PX, pan[1] * KEY_PAN_PX));
      else if (key === "+" || key === "=") zoomBy(KEY_ZOOM);
      else if (key === "-") zoomBy(1 / KEY_ZOOM);
      else if (key === "0") fit();
      else return false;
      return true;
    },
    wheel: ({ deltaY, deltaMode, ctrlKey }, at) =>
      change((view) => zoomedAbout(view, at, wheelFactor(wheelPixels(deltaY, deltaMode), ctrlKey))),
  };
}

/** One finger pans, two zoom about their middle; null for a finger that is not down. */
function fingerMove(
  held: Map<number, Point>,
  pointerId: number,
  at: Point,
): ((view: View) => View) | null {
  const from = held.get(pointerId);
  if (!from) return null;
  const before = twoFingers(held.values());
  held.set(pointerId, at);
  const after = twoFingers(held.values());
  if (!before || !after) return (view) => pannedBy(view, at.x - from.x, at.y - from.y);
  const right = after.middle.x - before.middle.x;
  const down = after.middle.y - before.middle.y;
  const factor = before.apartPx === 0 ? 1 : after.apartPx / before.apartPx;
  return (view) => zoomedAbout(pannedBy(view, right, down), after.middle, factor);
}

const PANS: ReadonlyMap<string, readonly [number, number]> = new Map([
  ["ArrowLeft", [1, 0]],
  ["ArrowRight", [-1, 0]],
  ["ArrowUp", [0, 1]],
  ["ArrowDown", [0, -1]],
]);

function placeOf({ currentTarget, clientX, clientY }: PointerEvent<HTMLElement>): Point {
  const box = currentTarget.getBoundingClientRect();
  return { x: clientX - box.left, y: clientY - box.top };
}
