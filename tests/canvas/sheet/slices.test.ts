/** How much of a large drawing is made at a time: counted in steps, on canvases that only listen. */
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Brush } from "../../../src/canvas/draw/brush.ts";
import { groundPicture } from "../../../src/canvas/draw/ground-picture.ts";
import type { Colours } from "../../../src/canvas/draw/sheet-colours.ts";
import { crispPicture } from "../../../src/canvas/sheet/crisp-picture.ts";

/** What each step takes, milliseconds. */
const STEP_MS = 2;
const STEPS = 200;

let now = 0;
let done = 0;
/** Steps since the canvas they draw on was last looked at: their dots are made in one. */
let unmade = 0;
let mostUnmade = 0;

function listeningCanvas(): object {
  const canvas: object = {
    width: 0,
    height: 0,
    getContext: () => context,
  };
  const context = {
    canvas,
    scale: () => undefined,
    save: () => undefined,
    restore: () => undefined,
    setTransform: () => undefined,
    drawImage: () => {
      unmade = 0;
    },
  };
  return canvas;
}

function* steps(): Generator<undefined, void> {
  for (let step = 0; step < STEPS; step += 1) {
    now += STEP_MS;
    done += 1;
    unmade += 1;
    mostUnmade = Math.max(mostUnmade, unmade);
    yield;
  }
}

function brushOn(canvas: object, x = 0, widthPx = 800): Brush {
  const context = (canvas as HTMLCanvasElement).getContext("2d") as CanvasRenderingContext2D;
  return { context, view: { x, y: 0, scale: 10 }, colours, ratio: 1, widthPx, heightPx: 500 };
}

const colours = {} as Colours;

beforeEach(() => {
  [now, done, unmade, mostUnmade] = [0, 0, 0, 0];
  vi.stubGlobal("document", { createElement: listeningCanvas });
  vi.spyOn(performance, "now").mockImplementation(() => now);
});

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

test("a picture of the ground is made a frame's part at a time, also with nothing to show meanwhile", () => {
  const picture = groundPicture();
  const layer = listeningCanvas();
  let most = 0;
  for (let frame = 0; frame < STEPS; frame += 1) {
    const before = done;
    picture.paint(brushOn(layer, frame), colours, steps, now);
    most = Math.max(most, done - before);
    if (done >= STEPS) break;
  }
  expect(done).toBe(STEPS);
  expect(most * STEP_MS).toBeLessThanOrEqual(30);
  // Made in slices and turned into dots in one, it would hold up the frame that shows it.
  expect(mostUnmade).toBe(1);
});

test("at another size what was drawn stands in", () => {
  const picture = groundPicture();
  picture.keep(brushOn(listeningCanvas()), colours);
  expect(picture.shows(brushOn(listeningCanvas(), 0, 760), colours)).toBe(true);
  picture.paint(brushOn(listeningCanvas(), 0, 760), colours, steps, now);
  expect(done * STEP_MS).toBeLessThanOrEqual(8);
});

test("the drawing at rest is made between frames, a few steps at a time and each turned into dots", () => {
  const waiting: IdleRequestCallback[] = [];
  vi.stubGlobal("requestIdleCallback", (work: IdleRequestCallback) => waiting.push(work));
  vi.stubGlobal("cancelIdleCallback", () => undefined);
  let turns = 0;
  const picture = crispPicture<object>(() => (turns += 1));
  const of = { ground: colours, labels: null };
  picture.begin(brushOn(listeningCanvas()), of, steps, false);
  expect(done).toBe(0);
  let most = 0;
  for (let work = waiting.shift(); work; work = waiting.shift()) {
    const before = done;
    work({ didTimeout: false, timeRemaining: () => 50 });
    most = Math.max(most, done - before);
  }
  expect(done).toBe(STEPS);
  expect(most * STEP_MS).toBeLessThanOrEqual(16);
  expect(mostUnmade).toBe(1);
  expect(turns).toBe(1);
});
