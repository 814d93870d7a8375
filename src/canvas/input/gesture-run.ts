/** The one gesture at work, moved at most once a frame and ended exactly once. */
import { onceAFrame } from "./once-a-frame.ts";
import type { Gesture, SheetPointer } from "../tools/tool.ts";

export interface GestureRun {
  readonly isBusy: () => boolean;
  /** Whether the gesture at work belongs to this pointer. */
  readonly belongsTo: (pointerId: number) => boolean;
  readonly start: (pointerId: number, gesture: Gesture) => void;
  readonly move: (pointer: SheetPointer) => void;
  /** Moves to where the pointer was let go, and ends. */
  readonly end: (pointer: SheetPointer) => void;
  /** Puts back what it has done; false when none is at work. */
  readonly cancel: () => boolean;
}

export function gestureRun(): GestureRun {
  let atWork: { readonly pointerId: number; readonly gesture: Gesture } | null = null;
  const moves = onceAFrame<SheetPointer>((pointer) => atWork?.gesture.move(pointer));
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
    },
    move: moves.run,
    end: (pointer) => {
      const gesture = take();
      gesture?.move(pointer);
      gesture?.end(pointer);
    },
    cancel: () => {
      const gesture = take();
      gesture?.cancel();
      return gesture !== undefined;
    },
  };
}
