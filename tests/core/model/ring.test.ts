import { expect, test } from "vitest";
import { type Corner, ringProblem, signedArea } from "../../../src/core/model/ring.ts";

const square: readonly Corner[] = [
  [0, 0],
  [4, 0],
  [4, 4],
  [0, 4],
];

test.each<[string, readonly Corner[]]>([
  ["a square", square],
  ["a square the other way round", [...square].reverse()],
  [
    "a square with a corner on an edge",
    [
      [0, 0],
      [2, 0],
      [4, 0],
      [4, 4],
      [0, 4],
    ],
  ],
  [
    "an L",
    [
      [0, 0],
      [4, 0],
      [4, 1],
      [1, 1],
      [1, 4],
      [0, 4],
    ],
  ],
])("%s is an outline", (_, ring) => {
  expect(ringProblem(ring)).toBeNull();
});

test.each<[string, readonly Corner[], RegExp]>([
  [
    "two corners",
    [
      [0, 0],
      [4, 0],
    ],
    /2 corners/,
  ],
  [
    "a bow tie",
    [
      [0, 0],
      [4, 4],
      [4, 0],
      [0, 4],
    ],
    /crosses or touches itself \(edges 1 and 3\)/,
  ],
  [
    "an outline that touches itself",
    [
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 0],
      [0, 4],
    ],
    /crosses or touches/,
  ],
  [
    "a corner twice running",
    [
      [0, 0],
      [4, 0],
      [4, 0],
      [0, 4],
    ],
    /corner 2 twice/,
  ],
  ["the first corner repeated at the end", [...square, [0, 0]], /corner 5 twice/],
  [
    "a line",
    [
      [0, 0],
      [2, 0],
      [4, 0],
    ],
    /enclose no ground/,
  ],
  [
    "a spike",
    [
      [0, 0],
      [4, 0],
      [8, 0],
      [4, 0],
      [4, 4],
    ],
    /crosses or touches itself/,
  ],
  [
    "a spike that folds back",
    [
      [0, 0],
      [8, 0],
      [4, 0],
      [4, 4],
    ],
    /crosses or touches itself/,
  ],
])("%s is refused", (_, ring, reason) => {
  expect(ringProblem(ring)).toMatch(reason);
});

test("areas are signed by direction", () => {
  expect(signedArea(square)).toBe(16);
  expect(signedArea([...square].reverse())).toBe(-16);
});
