/** When autosave saves: pause, ceiling, one at a time, latest wins. */
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { type SaveQueue, createSaveQueue } from "../../../src/store/keeping/save-queue.ts";

let newest = 0;
let saved: number[] = [];
let finish: (() => void)[] = [];
let queue: SaveQueue;

beforeEach(() => {
  vi.useFakeTimers();
  newest = 0;
  saved = [];
  finish = [];
  queue = createSaveQueue(
    () => {
      saved.push(newest);
      return new Promise((resolve) => finish.push(resolve));
    },
    { pauseMs: 400, ceilingMs: 2000 },
  );
});
afterEach(() => vi.useRealTimers());

function change(): void {
  newest += 1;
  queue.request();
}

test("a change waits for a pause", async () => {
  change();
  await vi.advanceTimersByTimeAsync(399);
  expect(saved).toEqual([]);
  await vi.advanceTimersByTimeAsync(1);
  expect(saved).toEqual([1]);
});

test("changes without a pause are saved at the ceiling", async () => {
  for (let step = 0; step < 21; step += 1) {
    change();
    await vi.advanceTimersByTimeAsync(100);
  }
  expect(saved).toEqual([20]);
});

test("what changes during a save is saved after it, the latest only", async () => {
  change();
  await vi.advanceTimersByTimeAsync(400);
  change();
  await vi.advanceTimersByTimeAsync(400);
  change();
  await vi.advanceTimersByTimeAsync(400);
  expect(saved).toEqual([1]);
  finish[0]?.();
  await vi.advanceTimersByTimeAsync(0);
  expect(saved).toEqual([1, 3]);
});

test("a flush begins at once and ends with a save begun after it was asked for", async () => {
  change();
  let isOver = false;
  const flushed = queue.flush().then(() => (isOver = true));
  expect(saved).toEqual([1]);
  newest += 1;
  void queue.flush();
  finish[0]?.();
  await vi.advanceTimersByTimeAsync(0);
  expect(saved).toEqual([1, 2]);
  expect(isOver).toBe(false);
  finish[1]?.();
  await flushed;
  await vi.advanceTimersByTimeAsync(5000);
  expect(saved).toEqual([1, 2]);
});

test("cancelling forgets what waits", async () => {
  change();
  queue.cancel();
  await vi.advanceTimersByTimeAsync(5000);
  expect(saved).toEqual([]);
});

test("a queue whose save broke goes on", async () => {
  const broken = createSaveQueue(() => Promise.reject(new Error("broken")), {
    pauseMs: 1,
    ceilingMs: 2,
  });
  await expect(broken.flush()).rejects.toThrow("broken");
  await expect(broken.flush()).rejects.toThrow("broken");
});
