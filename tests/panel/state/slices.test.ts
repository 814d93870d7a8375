import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { type Steps, newSlices, workedOff } from "../../../src/panel/state/slices.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Steps that take two milliseconds each and come to a word. */
function* slow(word: string, count: number, begun: string[] = []): Steps<string> {
  begun.push(word);
  for (let step = 0; step < count; step += 1) {
    vi.setSystemTime(Date.now() + 2);
    vi.spyOn(performance, "now").mockReturnValue(Date.now());
    yield;
  }
  return word;
}

test("long work is done a slice at a time, and told once it is done", () => {
  const done: string[] = [];
  const slices = newSlices<string>((word) => done.push(word));
  slices.ask(() => slow("rows", 12));
  expect(done).toEqual([]);
  vi.advanceTimersToNextTimer();
  // Of 24 milliseconds one slice has gone.
  expect(done).toEqual([]);
  let turns = 1;
  while (done.length === 0 && turns < 100) {
    vi.advanceTimersToNextTimer();
    turns += 1;
  }
  expect(done).toEqual(["rows"]);
  expect(turns).toBeGreaterThan(3);
  expect(vi.getTimerCount()).toBe(0);
});

test("what is asked for meanwhile waits; of several the newest is next, so that a drag is followed", () => {
  const done: string[] = [];
  const begun: string[] = [];
  const slices = newSlices<string>((word) => done.push(word));
  slices.ask(() => slow("first", 8, begun));
  vi.advanceTimersToNextTimer();
  slices.ask(() => slow("second", 8, begun));
  slices.ask(() => slow("third", 8, begun));
  vi.runAllTimers();
  expect(begun).toEqual(["first", "third"]);
  expect(done).toEqual(["first", "third"]);
});

test("what is ended is never told", () => {
  const done: string[] = [];
  const slices = newSlices<string>((word) => done.push(word));
  slices.ask(() => slow("gone", 8));
  vi.advanceTimersToNextTimer();
  slices.end();
  vi.runAllTimers();
  expect(done).toEqual([]);
  slices.ask(() => slow("again", 1));
  vi.runAllTimers();
  expect(done).toEqual(["again"]);
});

test("worked off at once, the same steps come to the same", () => {
  expect(workedOff(slow("whole", 3))).toBe("whole");
});
