import { expect, test } from "vitest";
import { countWord, deedOf, findingCountWords } from "../../../src/core/words/deed-words.ts";

test.each([
  ["Move bed A02", "Moved bed A02"],
  ["Draw the site", "Drew the site"],
  ["Choose Layout 3", "Chose Layout 3"],
  ["Place Amber Lantern in bed B01", "Placed Amber Lantern in bed B01"],
  ["Cut B02-1", "Cut B02-1"],
  ["Keep no seed of A01-1", "Kept no seed of A01-1"],
  // Nothing was sown by a click: the plan says that it will be.
  ["Sow A01-1 3 days later, on 4 May", "Planned: sow A01-1 3 days later, on 4 May"],
  ["Set out A01-1 9 days later, on 4 May", "Planned: set out A01-1 9 days later, on 4 May"],
  ["Set start of A01-1", "Set start of A01-1"],
  ["B01-1 is in stock again", "B01-1 is in stock again"],
])("%s is told as %s", (title, deed) => {
  expect(deedOf(title)).toBe(deed);
});

test("findings of all severities are counted, conflicts even where there are none", () => {
  expect(findingCountWords({ conflict: 0, caution: 0, unknown: 0 })).toBe("0 conflicts");
  expect(findingCountWords({ conflict: 0, caution: 7, unknown: 1 })).toBe(
    "0 conflicts, 7 cautions, 1 unknown",
  );
  expect(findingCountWords({ conflict: 1, caution: 0, unknown: 2 })).toBe("1 conflict, 2 unknowns");
  expect(countWord(0, "unknown")).toBe("0 unknowns");
});
