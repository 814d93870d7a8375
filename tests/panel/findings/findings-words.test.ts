import { describe, expect, test } from "vitest";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { restingWords } from "../../../src/panel/clearing/resting-words.ts";
import { countWords } from "../../../src/panel/findings/findings-words.ts";
import { book, day, plantingAt, smallPlan } from "../../support/small-plan.ts";

test("counts are words, worst first, and none is said", () => {
  expect(countWords({ conflict: 2, caution: 1, unknown: 1 })).toBe(
    "2 conflicts, 1 caution, 1 unknown",
  );
  expect(countWords({ conflict: 0, caution: 0, unknown: 3 })).toBe("3 unknowns");
  expect(countWords({ conflict: 0, caution: 0, unknown: 0 })).toBe("none");
});

describe("what the absence of conflicts rests on", () => {
  const june = { first: day("2027-06-01"), last: day("2027-06-20") };
  const august = { first: day("2027-08-01"), last: day("2027-08-20") };
  const wordsOf = (...plantings: Parameters<typeof smallPlan>[0] & object) => {
    const { plan, layout } = smallPlan(plantings);
    const { pairs, stands } = runChecks(plan, layout, book);
    return restingWords(
      pairs,
      stands.some((stand) => stand.isSeedParent),
    ).join(" ");
  };

  test("nothing placed is not called clear", () => {
    const nothing = "Nothing that flowers for seed is placed yet, so there is nothing to check.";
    expect(restingWords([], false)).toEqual([nothing]);
    expect(wordsOf(plantingAt(1, 0, { bloom: june, purpose: "food" }))).toBe(nothing);
  });
  test("time alone is named with its number, each pair once", () => {
    const words = wordsOf(plantingAt(1, 0, { bloom: june }), plantingAt(2, 1.5, { bloom: august }));
    expect(words).toContain("1 pair is kept apart by time alone");
  });
  test("cover alone is named with its number", () => {
    const words = wordsOf(
      plantingAt(1, 0, { bloom: june, cover: "bags" }),
      plantingAt(2, 1.5, { bloom: june, cover: "bags" }),
    );
    expect(words).toContain("1 pair is kept apart by cover alone");
  });
  test("distance alone is said plainly", () => {
    const words = wordsOf(plantingAt(1, 0, { bloom: june }), plantingAt(2, 5000, { bloom: june }));
    expect(words).toBe("Every pair that could cross is at least its required distance apart.");
  });
});
