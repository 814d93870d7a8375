import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  barMarks,
  percentRange,
  placeOnBar,
  rarity,
  rarityRange,
} from "../../../src/core/crossing-share/share-words.ts";
import {
  lineWords,
  offTypeWords,
  seeOneWords,
} from "../../../src/core/crossing-share/off-type-words.ts";

test.each([
  [[1 / 300, 1 / 60], "about 1 in 300 to 1 in 60"],
  [[0.00406, 0.01105], "about 1 in 250 to 1 in 90"],
  [[0.12, 0.453], "about 1 in 8.3 to 45 in 100"],
  [[0.0100001, 0.01], "about 1 in 100"],
  [[0, 1 / 60], "up to about 1 in 60"],
  [[0, 0], "fewer than 1 in 1,000,000"],
  [[1e-9, 3e-7], "fewer than 1 in 1,000,000"],
  [[1 / 12_345, 1], "about 1 in 12,000 to 100 in 100"],
] as const)("%j reads %s", (shares, words) => {
  expect(rarityRange(shares)).toBe(words);
});

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe("of any share", () => {
  test("at most two figures are said, never nought and never less than nothing", () => {
    fc.assert(
      fc.property(share, (value) => {
        const words = rarity(value);
        expect(words).toMatch(/^(fewer than )?(1 in [\d,.]+|\d+(\.\d)? in 100)$/);
        const [said = ""] = words.match(/[\d,.]+(?= in 100$)|[\d,.]+$/) ?? [];
        expect(said.replace(/[,.]/g, "").replace(/^0+|0+$/g, "").length).toBeLessThanOrEqual(2);
        expect(Number(said.replaceAll(",", ""))).toBeGreaterThan(0);
      }),
      { seed: 20 },
    );
  });

  test("words about it hold no NaN, no infinity and no lonely nought", () => {
    fc.assert(
      fc.property(
        share,
        share,
        fc.integer({ min: 0, max: 5000 }),
        fc.integer({ min: 1, max: 50 }),
        (a, b, plants, seasons) => {
          const range = [Math.min(a, b), Math.max(a, b)] as const;
          const words = [
            rarityRange(range),
            percentRange(range),
            offTypeWords(plants, range),
            seeOneWords(range),
            lineWords(range, seasons, 0.5),
          ].join(" ");
          expect(words).not.toMatch(/NaN|Infinity|undefined|null|about 0 |\b0 percent/);
        },
      ),
      { seed: 20 },
    );
  });

  test("stands farther along the bar the larger it is", () => {
    expect(barMarks().map(({ share: at }) => Math.round(600 * placeOnBar(at)) / 100)).toEqual([
      1, 2, 3, 4, 5,
    ]);
    expect([placeOnBar(0), placeOnBar(1)]).toEqual([0, 1]);
  });
});

test("what a share means, in words", () => {
  expect(offTypeWords(200, [0.003, 0.02])).toBe(
    "Among 200 plants grown from this seed: about 0.6 to 4 crossed; in 95 seasons of 100 between 0 and 8.",
  );
  expect(offTypeWords(560, [0, 1e-9])).toContain("far fewer than one crossed");
  expect(seeOneWords([0.001, 0.01])).toContain("grow 300 to 3,000 plants");
  expect(lineWords([0.01, 0.05], 10, 1)).toContain("holds 4.9 to 22 percent");
  expect(lineWords([0.01, 0.05], 10, 1)).toContain("flower, none.");
});
