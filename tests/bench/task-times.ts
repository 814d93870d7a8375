/**
 * How long the window's own thread is held at a time, in time of its processor: what else runs on
 * the machine makes a task take longer, not work more.
 */
import type { Page } from "playwright-core";

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time, microseconds. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

export interface TaskTimes {
  readonly longestMs: number;
  readonly over50: number;
}

/** Tasks of the busiest page's thread while something is done. */
export async function taskTimes(page: Page, act: () => Promise<void>): Promise<TaskTimes> {
  const browser = page.context().browser();
  if (!browser) throw new Error("The page has no browser to trace.");
  await browser.startTracing(page, { categories: ["toplevel", "devtools.timeline"] });
  await act();
  const trace = JSON.parse((await browser.stopTracing()).toString()) as {
    readonly traceEvents: readonly TraceEvent[];
  };
  const events = trace.traceEvents;
  const windows = events.filter(
    ({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain",
  );
  const [busiest = []] = windows
    .map(({ pid, tid }) => tasksOf(events, pid, tid))
    .sort((a, b) => sum(b) - sum(a));
  if (busiest.length === 0) throw new Error("The trace tells no processor time of any task.");
  return {
    longestMs: Math.max(...busiest),
    over50: busiest.filter((ms) => ms > 50).length,
  };
}

/** Milliseconds of each task of a thread. */
function tasksOf(events: readonly TraceEvent[], pid: number, tid: number): readonly number[] {
  return events.flatMap((event) =>
    event.pid === pid &&
    event.tid === tid &&
    event.ph === "X" &&
    event.name.endsWith("RunTask") &&
    event.tdur !== undefined
      ? [event.tdur / 1000]
      : [],
  );
}

function sum(times: readonly number[]): number {
  return times.reduce((total, each) => total + each, 0);
}
