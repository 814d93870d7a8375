/** Work that takes longer than a frame, done in slices between frames. */
import { betweenFrames } from "../../store/window/between-frames.ts";

export type Steps<T> = Generator<undefined, T>;

/** Works all steps off at once. */
export function workedOff<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

export interface Slices<T> {
  /** Works off these steps next; those asked for before and not begun are left out. */
  readonly ask: (make: () => Steps<T>) => void;
  /** Drops what is begun and asked for. */
  readonly end: () => void;
}

/** @param onDone told what steps came to */
export function newSlices<T>(onDone: (value: T) => void): Slices<T> {
  let steps: Steps<T> | null = null;
  let next: (() => Steps<T>) | null = null;
  let takeBack: (() => void) | null = null;
  const run = (until: number) => {
    takeBack = null;
    while (steps !== null && performance.now() < until) {
      const step = steps.next();
      if (step.done !== true) continue;
      steps = null;
      onDone(step.value);
    }
    begin();
  };
  const begin = () => {
    if (steps === null && next !== null) {
      steps = next();
      next = null;
    }
    if (steps !== null) takeBack ??= betweenFrames(run);
  };
  return {
    ask: (make) => {
      next = make;
      begin();
    },
    end: () => {
      takeBack?.();
      takeBack = null;
      steps = null;
      next = null;
    },
  };
}
