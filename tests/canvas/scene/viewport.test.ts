import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  SCALE_LIMITS,
  type View,
  fittedView,
  isFarLarger,
  pannedBy,
  resizedView,
  stayingView,
  toPx,
  toSheet,
  visibleBounds,
  zoomedAbout,
} from "../../../src/canvas/scene/viewport.ts";

const view: View = { scale: 20, x: 100, y: 300 };
const size = { widthPx: 800, heightPx: 600 };
const inset = { left: 40, top: 30, right: 40, bottom: 60 };

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const views = fc.record({
  scale: number(SCALE_LIMITS.least, SCALE_LIMITS.most),
  x: number(-5000, 5000),
  y: number(-5000, 5000),
});
const places = fc.record({ x: number(-1000, 1000), y: number(-1000, 1000) });

test("y goes up on the sheet and down on the screen", () => {
  expect(toPx(view, { x: 0, y: 0 })).toEqual({ x: 100, y: 300 });
  expect(toPx(view, { x: 1, y: 2 })).toEqual({ x: 120, y: 260 });
  expect(toSheet(view, { x: 120, y: 260 })).toEqual({ x: 1, y: 2 });
});

test("there and back is the same place", () => {
  fc.assert(
    fc.property(views, places, (some, place) => {
      const back = toSheet(some, toPx(some, place));
      expect(back.x).toBeCloseTo(place.x, 6);
      expect(back.y).toBeCloseTo(place.y, 6);
    }),
  );
});

test("zooming keeps the place under the pointer, also at the limits", () => {
  fc.assert(
    fc.property(views, places, number(0.01, 100), (some, px, factor) => {
      const zoomed = zoomedAbout(some, px, factor);
      const [before, after] = [toSheet(some, px), toSheet(zoomed, px)];
      expect(Math.abs(after.x - before.x) * some.scale).toBeLessThan(1e-6 * (1 + Math.abs(px.x)));
      expect(Math.abs(after.y - before.y) * some.scale).toBeLessThan(1e-6 * (1 + Math.abs(px.y)));
      expect(zoomed.scale).toBeGreaterThanOrEqual(SCALE_LIMITS.least);
      expect(zoomed.scale).toBeLessThanOrEqual(SCALE_LIMITS.most);
    }),
  );
});

test("panning moves by pixels", () => {
  expect(pannedBy(view, 5, -7)).toEqual({ scale: 20, x: 105, y: 293 });
});

describe("fitting", () => {
  test("shows the whole box inside the inset, in its middle", () => {
    const bounds = { minX: -10, minY: 0, maxX: 30, maxY: 10 };
    const fitted = fittedView(bounds, size, inset);
    const upper = toPx(fitted, { x: -10, y: 10 });
    const lower = toPx(fitted, { x: 30, y: 0 });
    expect(upper.x).toBeCloseTo(40);
    expect(lower.x).toBeCloseTo(760);
    expect((upper.y + lower.y) / 2).toBeCloseTo((30 + 540) / 2);
  });

  test("does not enlarge a single point without end", () => {
    const fitted = fittedView({ minX: 3, minY: 4, maxX: 3, maxY: 4 }, size, inset);
    expect(fitted.scale).toBe(120);
    expect(toPx(fitted, { x: 3, y: 4 })).toEqual({ x: 400, y: 285 });
  });

  test("takes less for its inset on a small drawing", () => {
    const fitted = fittedView(
      { minX: 0, minY: 0, maxX: 1, maxY: 1 },
      { widthPx: 100, heightPx: 100 },
      inset,
    );
    expect(fitted.scale).toBeCloseTo(70);
  });
});

test("the middle stays in the middle when the drawing changes its size", () => {
  const after = { widthPx: 1000, heightPx: 400 };
  const middle = toSheet(view, { x: 400, y: 300 });
  expect(toPx(resizedView(view, size, after), middle)).toEqual({ x: 500, y: 200 });
});

test("the visible ground reaches as far as the drawing and its margin", () => {
  expect(visibleBounds(view, size, 20)).toEqual({ minX: -6, minY: -16, maxX: 36, maxY: 16 });
});

describe("when something beside the drawing takes room", () => {
  const drawn: View = { scale: 10, x: 100, y: 300 };

  test("what is drawn stays where it is on the screen", () => {
    expect(stayingView(drawn, { x: 0, y: 40 }, null, { widthPx: 800, heightPx: 400 })).toEqual({
      scale: 10,
      x: 100,
      y: 260,
    });
  });

  test("and moves only as far as keeps in sight what was fitted", () => {
    const fitted = { minX: 0, minY: 0, maxX: 20, maxY: 28 };
    expect(stayingView(drawn, { x: 0, y: 40 }, fitted, { widthPx: 800, heightPx: 400 })?.y).toBe(
      280,
    );
    expect(stayingView(drawn, { x: 0, y: 0 }, fitted, { widthPx: 800, heightPx: 290 })?.y).toBe(
      290,
    );
  });

  test("unless that no longer goes in", () => {
    const fitted = { minX: 0, minY: 0, maxX: 20, maxY: 28 };
    expect(stayingView(drawn, { x: 0, y: 0 }, fitted, { widthPx: 800, heightPx: 270 })).toBeNull();
  });

  test("a drawer that goes leaves far more room, a bar or a strip does not", () => {
    const phone = { widthPx: 390, heightPx: 227 };
    expect(isFarLarger(phone, { ...phone, heightPx: 601 })).toBe(true);
    expect(isFarLarger({ widthPx: 460, heightPx: 270 }, { widthPx: 844, heightPx: 270 })).toBe(
      true,
    );
    const desktop = { widthPx: 840, heightPx: 525 };
    expect(isFarLarger(desktop, { ...desktop, heightPx: 760 })).toBe(false);
    expect(isFarLarger({ ...phone, heightPx: 601 }, phone)).toBe(false);
  });
});
