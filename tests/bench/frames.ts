/** How evenly a page in Chromium draws while a hand moves over it. */
import type { Page } from "playwright-core";

export interface Frames {
  /** Gaps between frames, milliseconds, the shortest first. */
  readonly gaps: readonly number[];
  /** Tasks of 50 ms or more, as the browser counts them. */
  readonly longTasks: number;
}

/** The gap that this share of all gaps does not exceed. */
export function gapAt({ gaps }: Frames, share: number): number {
  return gaps[Math.min(gaps.length - 1, Math.floor(gaps.length * share))] ?? 0;
}

/** Frames of several runs together. */
export function together(runs: readonly Frames[]): Frames {
  return {
    gaps: runs.flatMap((run) => run.gaps).sort((a, b) => a - b),
    longTasks: runs.reduce((sum, run) => sum + run.longTasks, 0),
  };
}

/** Frames drawn while something is done. */
export async function framesWhile(page: Page, act: () => Promise<void>): Promise<Frames> {
  await page.evaluate(() => {
    const gaps: number[] = [];
    let longTasks = 0;
    let before = performance.now();
    let isRunning = true;
    const observer = new PerformanceObserver((list) => {
      longTasks += list.getEntries().length;
    });
    observer.observe({ entryTypes: ["longtask"] });
    const step = (now: number) => {
      gaps.push(now - before);
      before = now;
      if (isRunning) requestAnimationFrame(step);
    };
    requestAnimationFrame((now) => {
      before = now;
      requestAnimationFrame(step);
    });
    Reflect.set(window, "endFrames", () => {
      isRunning = false;
      longTasks += observer.takeRecords().length;
      observer.disconnect();
      return { gaps: gaps.sort((a, b) => a - b), longTasks };
    });
  });
  await act();
  return page.evaluate(() => {
    const end: unknown = Reflect.get(window, "endFrames");
    if (typeof end !== "function") throw new Error("No frames were counted.");
    return end() as Frames;
  });
}
