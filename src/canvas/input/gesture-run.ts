/** The one gesture at work, moved at most once a frame and ended exactly once. */
import { onceAFrame } from "./once-a-frame.ts";
import { isSamePlace } from "../tools/gestures.ts";
import type { Gesture, SheetPointer } from "../tools/tool.ts";

export interface GestureRun {
  readonly isBusy: () => boolean;
  /** Whether the gesture at work belongs to this pointer. */
  readonly belongsTo: (pointerId: number) => boolean;
  readonly start: (pointerId: number, gesture: Gesture) => void;
  readonly move: (pointer: SheetPointer) => void;
  /** Moves to where the pointer was let go, unless it is there, and ends. */
  readonly end: (pointer: SheetPointer) => void;
  /** Puts back what it has done; false when none is at work. */
  readonly cancel: () => boolean;
}

export function gestureRun(): GestureRun {
  let atWork: { readonly pointerId: number; readonly gesture: Gesture } | null = null;
  let movedTo: SheetPointer | null = null;
  const move = (gesture: Gesture | undefined, pointer: SheetPointer) => {
    movedTo = pointer;
    gesture?.move(pointer);
  };
  const moves = onceAFrame<SheetPointer>((pointer) => move(atWork?.gesture, pointer));
  const take = () => {
    const gesture = atWork?.gesture;
    atWork = null;
    moves.drop();
    return gesture;
  };
  return {
    isBusy: () => atWork !== null,
    belongsTo: (pointerId) => atWork?.pointerId === pointerId,
    start: (pointerId, gesture) => {
      atWork = { pointerId, gesture };
      movedTo = null;
    },
    move: moves.run,
    end: (pointer) => {
      const gesture = take();
      if (!isSamePlace(movedTo, pointer)) move(gesture, pointer);
      gesture?.end(pointer);
    },
    cancel: () => {
      const gesture = take();
      gesture?.cancel();
      return gesture !== undefined;
    },
  };
}
