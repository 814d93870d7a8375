import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { gestureRun } from "../../../src/canvas/input/gesture-run.ts";
import { clickOrDrag } from "../../../src/canvas/tools/gestures.ts";
import type { Gesture, SheetPointer } from "../../../src/canvas/tools/tool.ts";

let frames: (() => void)[] = [];

/** The browser comes round to the next frame. */
function nextFrame(): void {
  const due = frames;
  frames = [];
  for (const frame of due) frame();
}

beforeEach(() => {
  vi.stubGlobal("requestAnimationFrame", (frame: () => void) => frames.push(frame));
});

afterEach(() => {
  frames = [];
  vi.unstubAllGlobals();
});

function pointer(x: number): SheetPointer {
  return {
    px: { x, y: 0 },
    at: { x, y: 0 },
    isShift: false,
    page: { x: 0, y: 0 },
    isFree: false,
    isCoarse: false,
    clicks: 1,
  };
}

/** A gesture that writes down what happens to it. */
function noted(): { readonly gesture: Gesture; readonly said: string[] } {
  const said: string[] = [];
  return {
    said,
    gesture: {
      move: ({ px }) => said.push(`move ${px.x}`),
      end: ({ px }) => said.push(`end ${px.x}`),
      cancel: () => said.push("cancel"),
    },
  };
}

describe("a gesture", () => {
  test("moves at most once a frame, with the newest place", () => {
    const { gesture, said } = noted();
    const run = gestureRun();
    run.start(1, gesture);
    for (const x of [1, 2, 3]) run.move(pointer(x));
    expect(said).toEqual(["move 1"]);
    nextFrame();
    expect(said).toEqual(["move 1", "move 3"]);
    nextFrame();
    run.move(pointer(4));
    expect(said).toEqual(["move 1", "move 3", "move 4"]);
  });

  test("ends where it was let go, and no late frame moves it on", () => {
    const { gesture, said } = noted();
    const run = gestureRun();
    run.start(1, gesture);
    run.move(pointer(1));
    run.move(pointer(2));
    run.end(pointer(5));
    nextFrame();
    expect(said).toEqual(["move 1", "move 5", "end 5"]);
    expect(run.isBusy()).toBe(false);
  });

  test("let go where it has moved to does not move there again", () => {
    const { gesture, said } = noted();
    const run = gestureRun();
    run.start(1, gesture);
    run.move(pointer(3));
    run.end(pointer(3));
    run.start(2, gesture);
    run.end(pointer(3));
    expect(said).toEqual(["move 3", "end 3", "move 3", "end 3"]);
  });

  test("is cancelled once, and then there is none to cancel", () => {
    const { gesture, said } = noted();
    const run = gestureRun();
    run.start(7, gesture);
    expect([run.belongsTo(7), run.belongsTo(8)]).toEqual([true, false]);
    expect([run.cancel(), run.cancel()]).toEqual([true, false]);
    run.end(pointer(1));
    expect(said).toEqual(["cancel"]);
  });
});

describe("a press", () => {
  test("that hardly moves is a click", () => {
    const { gesture, said } = noted();
    const press = clickOrDrag(
      pointer(0),
      ({ px }) => said.push(`click ${px.x}`),
      () => gesture,
    );
    press.move(pointer(2));
    press.end(pointer(2));
    expect(said).toEqual(["click 2"]);
  });

  test("that moves on is a drag from there, even when it comes back", () => {
    const { gesture, said } = noted();
    const press = clickOrDrag(
      pointer(0),
      () => said.push("click"),
      () => gesture,
    );
    press.move(pointer(5));
    press.move(pointer(1));
    press.end(pointer(0));
    expect(said).toEqual(["move 5", "move 1", "end 0"]);
  });

  test("that was only a press has nothing to put back", () => {
    const { gesture, said } = noted();
    clickOrDrag(
      pointer(0),
      () => said.push("click"),
      () => gesture,
    ).cancel();
    expect(said).toEqual([]);
  });
});
