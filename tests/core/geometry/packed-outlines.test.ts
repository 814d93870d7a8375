import { describe, expect, test } from "vitest";
import { outlineOf } from "../../../src/core/geometry/outline.ts";
import {
  buffersOf,
  packOutlines,
  unpackOutlines,
} from "../../../src/core/geometry/packed-outlines.ts";

const outlines = [
  outlineOf({ shape: "rectangle", x: 3, y: -2, widthM: 1, lengthM: 4, turnDeg: 20 }),
  outlineOf({ shape: "point", x: 7.25, y: 9 }),
  outlineOf({
    shape: "polygon",
    corners: [
      [0, 0],
      [10, 0],
      [10, 8],
      [4, 12],
      [0, 8],
    ],
    holes: [
      [
        [2, 2],
        [4, 2],
        [4, 4],
      ],
      [
        [6, 2],
        [7, 2],
        [7, 3],
        [6, 3],
      ],
    ],
  }),
];

describe("packed outlines", () => {
  test("come back as they were, whatever their shapes", () => {
    expect(unpackOutlines(packOutlines(outlines))).toEqual(outlines);
    expect(unpackOutlines(packOutlines([]))).toEqual([]);
  });

  test("go to another thread in three buffers", () => {
    const packed = packOutlines(outlines);
    expect(buffersOf(packed)).toHaveLength(3);
    const sent = structuredClone(packed, {
      transfer: buffersOf(packed).filter((buffer) => buffer instanceof ArrayBuffer),
    });
    expect(packed.coordinates).toHaveLength(0);
    expect(unpackOutlines(sent)).toEqual(outlines);
  });
});
