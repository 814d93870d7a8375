/** What a helper reads on the card when seed is taken, and the small words of what is lost. */
import { describe, expect, test } from "vitest";
import { percentText, plantsText } from "../../../src/core/generations/loss-words.ts";
import { seedTakingWords } from "../../../src/core/generations/seed-taking-words.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";

const kind = (id: string) => {
  const found = cropBook().kind(id);
  if (!found) throw new Error(`no kind ${id}`);
  return found;
};

describe("equal seed of each", () => {
  test.each([
    ["kale", 60, "Take equal seed from each of at least 20 plants"],
    ["kale", 20, "Take equal seed from all 20 plants"],
    ["kale", 1, "Take seed from the one plant"],
    ["kale", undefined, "Take equal seed from each of at least 20 plants"],
    ["tomato", 40, "Take equal seed from each of at least 10 plants"],
    ["spinach", 100, "Take equal seed from each of at least 13 females"],
    ["spinach", 20, "Take equal seed from every female plant"],
    ["flax", 300, "Take equal seed from all 300 plants"],
    ["flax", undefined, "Take equal seed from every plant"],
  ] as const)("%s, %s plants: %s", (id, plants, words) => {
    expect(seedTakingWords(kind(id), plants)).toBe(words);
  });
});

test.each([
  [0, "0 %"],
  [0.0004, "under 0.1 %"],
  [0.0625, "6.3 %"],
  [0.05, "5 %"],
  [0.126, "13 %"],
])("%f is %s", (share, words) => {
  expect(percentText(share)).toBe(words);
});

test.each([
  [3.96, "3.9"],
  [24, "24"],
  [24.99, "24"],
  [2.2, "2.2"],
  [133.33, "133"],
])("%f plants are never rounded up: %s", (effective, words) => {
  expect(plantsText(effective)).toBe(words);
});
