import { describe, expect, test } from "vitest";
import { amountText, readAmount } from "../../../src/core/lots/amount-text.ts";

describe("amounts of seed as they are typed", () => {
  test.each([
    ["12.5 g", "g", 12.5],
    ["12,5g", "g", 12.5],
    ["340 seeds", "seeds", 340],
    ["1 seed", "seeds", 1],
    ["1.2 kg", "g", 1200],
    // The international ounce and pound, NIST Handbook 44 Appendix C.
    ["1 oz", "g", 28.349523125],
    ["2 lb", "g", 907.18474],
  ] as const)("%s", (text, unit, value) => {
    expect(readAmount(text)).toEqual({ ok: true, amount: { unit, value } });
  });

  test.each([
    ["12", /12 g or 12 seeds/],
    ["-3 g", /not negative/],
    ["2.5 seeds", /whole number/],
    ["a few", /grams or seeds/],
    ["5 bags", /grams or seeds/],
  ])("%s is refused with why", (text, reason) => {
    const read = readAmount(text);
    expect(read.ok ? "" : read.reason).toMatch(reason);
  });

  test("nothing typed is no amount, and what is shown reads back the same", () => {
    expect(readAmount("  ")).toEqual({ ok: true, amount: undefined });
    const amount = { unit: "g", value: 0.1234567 } as const;
    expect(readAmount(amountText(amount))).toEqual({ ok: true, amount });
  });
});
