import { bandWords } from "../../../src/core/lots/band-words.ts";
import { describe, expect, test } from "vitest";
import {
  amountWords,
  gramsText,
  monthYear,
  standardWords,
  treatmentWords,
} from "../../../src/core/lots/lot-words.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import type { Lot } from "../../../src/core/model/plan.ts";
import { book, day } from "../../support/trial-plan.ts";

function kindOf(id: string): Kind {
  const kind = book.kind(id);
  if (!kind) throw new Error(`no kind "${id}"`);
  return kind;
}

test("amounts are said in their own unit, and not made up", () => {
  expect(amountWords(undefined)).toBe("not counted");
  expect(amountWords({ unit: "g", value: 12.5 })).toBe("12.5 g");
  expect(amountWords({ unit: "seeds", value: 1 })).toBe("1 seed");
  expect([0.5679, 1.5, 12.34, 345.6].map(gramsText)).toEqual(["0.568", "1.5", "12.3", "346"]);
});

test("a band is rounded outwards", () => {
  expect(bandWords([0.7101, 0.8999])).toBe("71 to 90 %");
  expect(bandWords([0.8, 0.8])).toBe("about 80 %");
});

test("the month of a test is what labels ask for", () => {
  expect(monthYear(day("2027-02-20"))).toBe("Feb 2027");
});

test("treatment is said as far as it is known", () => {
  const lot: Lot = { id: "l", code: "L", variety: "v", state: "in stock" };
  expect(treatmentWords(lot)).toBe("");
  expect(treatmentWords({ ...lot, treated: false })).toBe("untreated");
  expect(treatmentWords({ ...lot, treated: true })).toBe("treated");
  expect(treatmentWords({ ...lot, treated: true, treatedWith: "thiram" })).toBe(
    "treated with thiram",
  );
});

describe("a test held against the federal standard", () => {
  const tested = (sprouted: number, sown = 400, hard?: number) =>
    standardWords(
      { id: "t", date: 0, sown, sprouted, ...(hard === undefined ? {} : { hard }) },
      kindOf("tomato"),
    );

  test.each([
    [300, 400, undefined, "Reaches the standard of 75 % (7 CFR 201.31)."],
    [296, 400, 4, "Reaches the standard of 75 % (7 CFR 201.31)."],
    [
      276,
      400,
      undefined,
      "Under the standard of 75 % (7 CFR 201.31), yet within the 8 points that chance explains (7 CFR 201.63): a packet still says Below Standard.",
    ],
    [
      264,
      400,
      undefined,
      "Under the standard of 75 % (7 CFR 201.31) by more than the 8 points that chance explains (7 CFR 201.63).",
    ],
  ])("%i of %i", (sprouted, sown, hard, words) => {
    expect(tested(sprouted, sown, hard)).toBe(words);
  });

  test("nothing of a test in the kitchen, or where no standard is published", () => {
    expect(tested(40, 50)).toBeNull();
    const official = { id: "t", date: 0, sown: 400, sprouted: 300 };
    const { germinationPercent: _, ...none } = kindOf("tomato");
    expect(standardWords(official, none)).toBeNull();
  });
});
