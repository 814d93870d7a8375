/**
 * Work of the window's own thread that can wait is done in what frames leave over: each piece by a
 * timer of its own, several such works would add up to frames that come late.
 */

/** At most so many milliseconds at a time, also while nothing is drawn: a press waits no longer. */
const SLICE_MS = 16;
/** The same where frames leave nothing over, or the browser does not say what they leave. */
const BUSY_SLICE_MS = 5;
/** Frames that leave nothing over hold work up for so many milliseconds. */
const PATIENCE_MS = 250;

/**
 * Has a piece of work done soon; what it gives back takes the work back.
 * @param work told until when it may go on, in the time of performance.now()
 */
export function betweenFrames(work: (until: number) => void): () => void {
  if (typeof requestIdleCallback !== "function") {
    const timer = setTimeout(() => work(performance.now() + BUSY_SLICE_MS));
    return () => clearTimeout(timer);
  }
  const asked = requestIdleCallback(
    (left) => {
      const forMs = left.didTimeout ? BUSY_SLICE_MS : Math.min(left.timeRemaining(), SLICE_MS);
      work(performance.now() + forMs);
    },
    { timeout: PATIENCE_MS },
  );
  return () => cancelIdleCallback(asked);
}
