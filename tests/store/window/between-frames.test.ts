/** Work that can wait takes what frames leave over, and is done where they leave nothing. */
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { betweenFrames } from "../../../src/store/window/between-frames.ts";

type Idle = (left: IdleDeadline) => void;

beforeEach(() => void vi.spyOn(performance, "now").mockReturnValue(1000));
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  vi.useRealTimers();
});

/** A browser that says when it is idle, and what was asked of it. */
function idleBrowser() {
  const asked = new Map<number, Idle>();
  const patience: (number | undefined)[] = [];
  vi.stubGlobal("requestIdleCallback", (idle: Idle, options?: IdleRequestOptions) => {
    patience.push(options?.timeout);
    asked.set(patience.length, idle);
    return patience.length;
  });
  vi.stubGlobal("cancelIdleCallback", (handle: number) => void asked.delete(handle));
  const idle = (didTimeout: boolean, ms: number) => {
    for (const each of asked.values()) each({ didTimeout, timeRemaining: () => ms });
  };
  return { asked, patience, idle };
}

test("a piece of work goes on for what the frame leaves over, never for long", () => {
  const { idle, patience } = idleBrowser();
  const until: number[] = [];
  betweenFrames((end) => until.push(end));
  idle(false, 3);
  betweenFrames((end) => until.push(end));
  idle(false, 50);
  expect(until[0]).toBe(1003);
  expect(Math.max(...until)).toBeLessThanOrEqual(1016);
  // However busy the window is, it is not waited for without end.
  for (const ms of patience) expect(ms).toBeLessThanOrEqual(250);
});

test("where frames leave nothing over, a little is done all the same", () => {
  const { idle } = idleBrowser();
  const until: number[] = [];
  betweenFrames((end) => until.push(end));
  idle(true, 0);
  expect(until).toHaveLength(1);
  expect(until[0]).toBeGreaterThan(1000);
});

test("work that is taken back is not done", () => {
  const { asked, idle } = idleBrowser();
  const work = vi.fn();
  betweenFrames(work)();
  expect(asked.size).toBe(0);
  idle(false, 10);
  expect(work).not.toHaveBeenCalled();
});

test("a browser that does not say when it is idle has a timer", () => {
  vi.stubGlobal("requestIdleCallback", undefined);
  vi.useFakeTimers();
  const work = vi.fn();
  betweenFrames(work);
  const takeBack = betweenFrames(work);
  takeBack();
  vi.runAllTimers();
  expect(work).toHaveBeenCalledTimes(1);
});
