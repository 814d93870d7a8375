import { expect, test } from "vitest";
import { ageWords } from "../../../src/core/lots/age-words.ts";
import type { Lot } from "../../../src/core/model/plan.ts";
import { day } from "../../support/trial-plan.ts";

const lot: Lot = { id: "lot-1", code: "AL-25", variety: "v1", state: "in stock" };

test.each<[Partial<Lot>, string]>([
  [{ harvestYear: 2027 }, "harvest 2027"],
  // A clock that is wrong makes no seed younger than nothing.
  [{ harvestYear: 2028 }, "harvest 2028"],
  [{ harvestYear: 2026 }, "harvest 2026, 1 year old"],
  [{ harvestYear: 2019 }, "harvest 2019, 8 years old"],
  [{ from: { what: "received", on: day("2024-11-02") } }, "came 2024, age not known"],
  [
    { harvestYear: 2023, from: { what: "received", on: day("2024-11-02") } },
    "harvest 2023, 4 years old",
  ],
  [{}, "age not known"],
])("a lot of %j is %s", (more, words) => {
  expect(ageWords({ ...lot, ...more }, day("2027-03-01"))).toBe(words);
});
