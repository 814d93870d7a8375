import { expect, test } from "vitest";
import { counted, formOf, listOf } from "../../../src/core/words/plurals.ts";

const bed = { one: "bed", other: "beds" };

// Unicode CLDR, plural rules of English: one is 1 alone, everything else other.
test.each([
  [0, "0 beds"],
  [1, "1 bed"],
  [2, "2 beds"],
  [21, "21 beds"],
  [1.5, "1.5 beds"],
])("%d is counted as %s", (count, text) => {
  expect(counted(count, bed)).toBe(text);
  expect(text).toContain(formOf(count, bed));
});

test("lists are joined in British usage", () => {
  const lists = [
    [],
    ["A01"],
    ["A01", "A02"],
    ["A01", "A02", "B01"],
    ["a", "b", "c", "d"],
    ["", ""],
  ];
  expect(lists.slice(0, 4).map(listOf)).toEqual(["", "A01", "A01 and A02", "A01, A02 and B01"]);
  // Unicode CLDR, list patterns of British English, as the engine has them.
  const engine = new Intl.ListFormat("en-GB", { type: "conjunction" });
  for (const list of lists) expect(listOf(list)).toBe(engine.format(list));
});
