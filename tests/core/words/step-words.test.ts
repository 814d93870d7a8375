/** What steps leave as it is and why they are refused: whole sentences in every count. */
import { expect, test } from "vitest";
import * as steps from "../../../src/core/words/step-words.ts";
import * as later from "../../../src/core/words/shelf-step-words.ts";

test.each([
  [1, "B02-1 is locked and stays as it is"],
  [2, "B02-1 are locked and stay as they are"],
])("%i locked", (count, words) => {
  expect(steps.keptLocked(count, "B02-1")).toBe(words);
});

test.each([
  [["Tarn Coral"], "Sea beet stays while Tarn Coral is of that kind."],
  [["Tarn Coral", "roadside"], "Sea beet stays while Tarn Coral and roadside are of that kind."],
  [["a", "b", "c"], "Sea beet stays while a and 2 others are of that kind."],
])("a kind that %j are of stays", (users, words) => {
  expect(later.stays("Sea beet", users)).toBe(
    `${words} Give them another kind or delete them first.`,
  );
});

test("lots whose place goes are counted, one and several", () => {
  expect(later.lotsLeft(1)).toMatch(/^one lot was stored/);
  expect(later.lotsLeft(3)).toMatch(/^3 lots were stored/);
  expect(later.tooFew(3)).toBe("Needs at least 3 objects");
});

test("a start says which it is", () => {
  expect(steps.start("A01-1", true, "3 May")).toBe("Sow A01-1 on 3 May");
  expect(steps.start("A01-1", false, "3 May")).toBe("Set out A01-1 on 3 May");
});
