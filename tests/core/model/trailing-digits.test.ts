import * as fc from "fast-check";
import { expect, test } from "vitest";
import { trailingDigits } from "../../../src/core/model/trailing-digits.ts";

test.each([
  ["B07", "07"],
  ["A1-12", "12"],
  ["2027", "2027"],
  ["", ""],
  ["A-", ""],
  // Digits of other scripts are no numbers of ours.
  ["Beet ٣", ""],
  ["Beet ٣4", "4"],
])("%j ends with the digits %j", (text, digits) => {
  expect(trailingDigits(text)).toBe(digits);
});

test("property: as the pattern says it", () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom("a", "-", "0", "5", "9", "٣") }), (text) => {
      expect(trailingDigits(text)).toBe(/[0-9]*$/.exec(text)?.[0]);
    }),
  );
});
