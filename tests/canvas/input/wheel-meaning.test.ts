import { describe, expect, test } from "vitest";
import {
  type WheelTurn,
  wheelFactor,
  wheelMeaning,
  wheelPixels,
} from "../../../src/canvas/input/wheel-meaning.ts";

function turn(more: Partial<WheelTurn>): WheelTurn {
  return { deltaX: 0, deltaY: 0, deltaMode: 0, isCtrl: false, time: 1000, ...more };
}

describe("a turn of the wheel means", () => {
  test.each([
    ["a notch of a mouse wheel: zoom", turn({ deltaY: 120 }), "zoom"],
    ["a wheel that counts lines: zoom", turn({ deltaY: 3, deltaMode: 1 }), "zoom"],
    ["two fingers, slowly: pan", turn({ deltaY: 4 }), "pan"],
    ["two fingers, sideways: pan", turn({ deltaX: 80, deltaY: 90 }), "pan"],
    ["a pinch: zoom", turn({ deltaY: 3, isCtrl: true }), "zoom"],
  ] as const)("%s", (_, given, meaning) => {
    expect(wheelMeaning(given, null)).toBe(meaning);
  });

  test("the same as just before, until there is a pause", () => {
    const panned = { meaning: "pan", time: 900 } as const;
    expect(wheelMeaning(turn({ deltaY: 120 }), panned)).toBe("pan");
    expect(wheelMeaning(turn({ deltaY: 120, time: 2000 }), panned)).toBe("zoom");
  });

  test("a pinch whatever came before", () => {
    expect(wheelMeaning(turn({ deltaY: 2, isCtrl: true }), { meaning: "pan", time: 990 })).toBe(
      "zoom",
    );
  });
});

test("turning back undoes the zoom, and no turn is wild", () => {
  expect(wheelFactor(120, false) * wheelFactor(-120, false)).toBeCloseTo(1);
  expect(wheelFactor(-120, false)).toBeGreaterThan(1);
  expect(wheelFactor(-1e6, false)).toBeLessThan(2);
});

test("lines and pages become pixels", () => {
  expect(wheelPixels(3, 0)).toBe(3);
  expect(wheelPixels(3, 1)).toBeGreaterThan(50);
  expect(wheelPixels(1, 2)).toBeGreaterThan(300);
});
