import { bandWords } from "../../../src/core/lots/band-words.ts";
import { expect, test } from "vitest";
import {
  amountWords,
  gramsText,
  monthYear,
  treatmentWords,
} from "../../../src/core/lots/lot-words.ts";
import type { Lot } from "../../../src/core/model/plan.ts";
import { day } from "../../support/trial-plan.ts";

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
