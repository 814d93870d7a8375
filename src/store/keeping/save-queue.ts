/**
 * When to save: a short pause after the last change, but never longer than a ceiling while changes
 * go on; one save at a time; a change during a save is saved after it, latest only. `save` looks
 * up what is newest when it starts, and reports its own failures: it must not reject.
 */
export interface SaveQueue {
  /** Something changed. */
  readonly request: () => void;
  /** Saves now; settles when a save begun after this call has ended. */
  readonly flush: () => Promise<void>;
  /** Forgets what is waiting; a save under way goes on. */
  readonly cancel: () => void;
}

export interface SavePace {
  /** Pause after the last change, milliseconds. */
  readonly pauseMs: number;
  /** Longest a change waits, milliseconds. */
  readonly ceilingMs: number;
}

export function createSaveQueue(save: () => Promise<void>, pace: SavePace): SaveQueue {
  let pause: ReturnType<typeof setTimeout> | undefined;
  let ceiling: ReturnType<typeof setTimeout> | undefined;
  let running: Promise<void> | null = null;
  let isWanted = false;

  const cancel = () => {
    clearTimeout(pause);
    clearTimeout(ceiling);
    pause = undefined;
    ceiling = undefined;
    isWanted = false;
  };

  const runAll = async () => {
    try {
      for (;;) {
        cancel();
        await save();
        if (!isWanted) break;
      }
    } finally {
      running = null;
    }
  };

  const flush = () => {
    if (running) isWanted = true;
    else running = runAll();
    return running;
  };

  return {
    request: () => {
      clearTimeout(pause);
      pause = setTimeout(() => void flush(), pace.pauseMs);
      ceiling ??= setTimeout(() => void flush(), pace.ceilingMs);
    },
    flush,
    cancel,
  };
}
