/** Doing something at most once a frame, with the newest value. */

export interface OnceAFrame<T> {
  /** Acts at once if nothing was done in this frame, else in the next with the newest value. */
  readonly run: (value: T) => void;
  /** Acts now on a value that still waits. */
  readonly flush: () => void;
  /** Forgets a value that still waits. */
  readonly drop: () => void;
}

export function onceAFrame<T>(act: (value: T) => void): OnceAFrame<T> {
  let isFrameTaken = false;
  let waiting: { readonly value: T } | null = null;
  const takeFrame = () => {
    isFrameTaken = true;
    requestAnimationFrame(() => {
      isFrameTaken = false;
      if (!waiting) return;
      takeFrame();
      flush();
    });
  };
  const flush = () => {
    const next = waiting;
    waiting = null;
    if (next) act(next.value);
  };
  return {
    run: (value) => {
      if (isFrameTaken) {
        waiting = { value };
        return;
      }
      takeFrame();
      act(value);
    },
    flush,
    drop: () => {
      waiting = null;
    },
  };
}
