/** What takes longer than a frame is worked out in slices between frames, as lists of thousands. */
import { useEffect, useMemo, useState } from "react";
import { type Steps, newSlices, workedOff } from "./slices.ts";

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
