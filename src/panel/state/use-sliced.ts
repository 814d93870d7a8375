/** What takes longer than a frame is worked out in slices between frames, as lists of thousands. */
import { useEffect, useMemo, useState } from "react";

/** Milliseconds of work at a time. */
const SLICE_MS = 5;

export type Steps<T> = Generator<undefined, T>;

/** Works all steps off at once. */
export function workedOff<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/**
 * What the steps come to. Where they are long, what they came to last stays until they are done,
 * `before` until the first are; the newest are begun when those at work have ended, so that a drag
 * that asks again and again is followed all the while.
 * @param make begins the steps; another function asks for other steps
 */
export function useSliced<T>(make: () => Steps<T>, isLong: boolean, before: T): T {
  const short = useMemo(() => (isLong ? null : { value: workedOff(make()) }), [make, isLong]);
  const [done, setDone] = useState<{ readonly value: T } | null>(null);
  const [slices] = useState(() => newSlices<T>((value) => setDone({ value })));
  // What long steps came to once is not what they come to when they are long again.
  if (!isLong && done !== null) setDone(null);
  useEffect(() => {
    if (isLong) slices.ask(make);
    else slices.end();
  }, [slices, make, isLong]);
  useEffect(() => () => slices.end(), [slices]);
  return (short ?? done ?? { value: before }).value;
}

interface Slices<T> {
  readonly ask: (make: () => Steps<T>) => void;
  readonly end: () => void;
}

function newSlices<T>(onDone: (value: T) => void): Slices<T> {
  let steps: Steps<T> | null = null;
  let next: (() => Steps<T>) | null = null;
  let timer: ReturnType<typeof setTimeout> | null = null;
  const run = () => {
    timer = null;
    const until = performance.now() + SLICE_MS;
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
    if (steps !== null) timer ??= setTimeout(run);
  };
  return {
    ask: (make) => {
      next = make;
      begin();
    },
    end: () => {
      if (timer !== null) clearTimeout(timer);
      timer = null;
      steps = null;
      next = null;
    },
  };
}
