/** What one variety is, against Unicode's full case folding and canonical equivalence (UAX 15). */
import { describe, expect, test } from "vitest";
import { isSameVariety, varietyKey } from "../../../src/core/model/variety-key.ts";

const key = (name: string) => varietyKey({ kind: "tomato", name });

describe("two names are one variety", () => {
  test.each([
    ["Red Gate", "RED GATE", "case"],
    ["Red Gate", "  Red \u00A0 Gate ", "runs of spaces"],
    ["Caf\u00E9", "Cafe\u0301", "an accent composed or not"],
    ["Gro\u00DFe Linde", "GROSSE LINDE", "sharp s (CaseFolding.txt: 00DF; F; 0073 0073)"],
    [
      "\u03A3\u03BF\u03C6\u03CC\u03C2",
      "\u03A3\u039F\u03A6\u038C\u03A3",
      "final sigma (03C2; C; 03C3)",
    ],
  ])("%s and %s: %s", (one, other) => {
    expect(key(one)).toBe(key(other));
  });
});

test("other kinds, other names, a hybrid of the name and names left empty are not", () => {
  const plain = { kind: "tomato", name: "Red Gate" };
  expect(isSameVariety(plain, { kind: "pepper", name: "Red Gate" })).toBe(false);
  expect(isSameVariety(plain, { kind: "tomato", name: "Red Gate 2" })).toBe(false);
  expect(isSameVariety(plain, { ...plain, hybrid: true })).toBe(false);
  expect(isSameVariety({ ...plain, name: " " }, { ...plain, name: " " })).toBe(false);
  expect(key("I\u015F\u0131k")).not.toBe(key("I\u015Fik"));
});
