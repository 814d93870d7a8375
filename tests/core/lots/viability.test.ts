/**
 * Against published values: the worked examples of the reference pages of the R package
 * viabilitymetrics (CRAN) for the equations of Ellis and Roberts 1980 and Cromarty and others 1982,
 * and further values computed with the same constants.
 */
import { describe, expect, test } from "vitest";
import { hundredRule, moistureDry, wetFromDry } from "../../../src/core/lots/seed-moisture.ts";
import { insideRate, sigmaDays } from "../../../src/core/lots/viability.ts";
import { probit } from "../../../src/core/lots/normal.ts";
import { daysBetween, rateAfter } from "../../support/viability-after.ts";
import { constantsOf } from "../../../src/core/lots/viability-sets.ts";

const setsOf = (species: string) => constantsOf({ species })?.sets ?? [];

const rice = { ke: 8.242, cw: 4.345, ch: 0.0307, cq: 0.000501 };
const one = (species: string) => {
  const [set] = setsOf(species);
  if (!set) throw new Error(`no constants of ${species}`);
  return set;
};

describe("rice at 10 %, 5 C, with the constants printed", () => {
  const sigma = sigmaDays(rice, 10, 5);

  test("loses a probit in 5382.388 days, 14.74627 years of 365", () => {
    expect(sigma).toBeCloseTo(5382.388, 3);
    expect(sigma / 365).toBeCloseTo(14.74627, 5);
  });

  test("98 % is 97.64797 % after a year, and 95 % after 2200.833 days", () => {
    expect(100 * rateAfter(0.98, 365, sigma)).toBeCloseTo(97.64797, 5);
    expect(daysBetween(0.98, 0.95, sigma)).toBeCloseTo(2200.833, 3);
    expect(daysBetween(0.98, 0.95, sigma) / 365).toBeCloseTo(6.02968, 5);
  });

  test("ten years from 98 to 95 % need 8.900918 % at 5 C, or 10.252 C at 8 %", () => {
    const needed = 3650 / (probit(0.98) - probit(0.95));
    expect(sigmaDays(rice, 8.900918, 5) / needed).toBeCloseTo(1, 6);
    expect(sigmaDays(rice, 8, 10.252) / needed).toBeCloseTo(1, 4);
  });

  test("50 of 50 counts as 99.5 %, with 5010.872 days to 95 %", () => {
    const rate = insideRate(1, 50);
    expect(rate).toBeCloseTo(0.995, 12);
    expect(daysBetween(rate, 0.95, sigma)).toBeCloseTo(5010.872, 3);
    expect(100 * rateAfter(rate, 365, sigma)).toBeCloseTo(99.39294, 5);
  });
});

describe("the chosen sets", () => {
  test("soybean at 8 %, -18 C: 18719.85 days a probit", () => {
    expect(sigmaDays(one("Glycine max"), 8, -18)).toBeCloseTo(18719.85, 2);
  });

  test("chickpea at 5 %, -20 C: half of it dead after 1,960,829 days, or 2,459,288", () => {
    const sigma = sigmaDays(one("Cicer arietinum"), 5, -20);
    expect(Math.round(probit(0.98) * sigma)).toBe(1_960_829);
    expect(Math.round(probit(0.995) * sigma)).toBe(2_459_288);
  });

  test("onion at 50 % humidity, 18 C: both sets, of which the shorter is followed", () => {
    const moisture = wetFromDry(moistureDry(0.2, 50, 18));
    expect(moisture).toBeCloseTo(9.704, 3);
    const [first, second] = setsOf("Allium cepa").map((set) => sigmaDays(set, moisture, 18));
    expect(first).toBeCloseTo(491.6, 1);
    expect(second).toBeCloseTo(399.7, 1);
    const after = (sigma = 1, days = 0) => 100 * rateAfter(0.9, days, sigma);
    expect(after(first, 365)).toBeCloseTo(70.51, 2);
    expect(after(first, 730)).toBeCloseTo(41.94, 2);
    expect(daysBetween(0.9, 0.7, first ?? 1)).toBeCloseTo(372.2, 1);
    expect(after(second, 365)).toBeCloseTo(64.37, 2);
    expect(after(second, 730)).toBeCloseTo(29.29, 2);
    expect(daysBetween(0.9, 0.7, second ?? 1)).toBeCloseTo(302.6, 1);
  });

  test("lettuce in two places: losses add up, 95 % falls to 89.471 %", () => {
    const set = one("Lactuca sativa");
    const lost = 120 / sigmaDays(set, 7, 22) + 245 / sigmaDays(set, 6, 5);
    expect(100 * rateAfter(0.95, lost, 1)).toBeCloseTo(89.471, 3);
  });

  test("lettuce a percent drier, or 5 C cooler; any seed 10 C cooler", () => {
    const set = one("Lactuca sativa");
    expect(sigmaDays(set, 7, 20) / sigmaDays(set, 8, 20)).toBeCloseTo(2.016, 3);
    expect(sigmaDays(set, 7, 15) / sigmaDays(set, 7, 20)).toBeCloseTo(1.771, 3);
    const universal = { ke: 8, cw: 5, ch: 0.0329, cq: 0.000478 };
    const cooler = [30, 20, 10].map(
      (t) => sigmaDays(universal, 8, t - 10) / sigmaDays(universal, 8, t),
    );
    expect(cooler.map((factor) => factor.toFixed(3))).toEqual(["3.698", "2.968", "2.381"]);
  });
});

describe("moisture level with the air", () => {
  test("oil 29 %, 13 % humidity, 25 C: 4.03387 % of dry, 3.877459 % of fresh weight", () => {
    expect(moistureDry(0.29, 13, 25)).toBeCloseTo(4.03387, 5);
    expect(wetFromDry(moistureDry(0.29, 13, 25))).toBeCloseTo(3.877459, 6);
  });

  test("and back: 5 % fresh is 21.10662 %, 5 % dry 19.26179 % humidity", () => {
    expect(wetFromDry(moistureDry(0.29, 21.10662, 25))).toBeCloseTo(5, 5);
    expect(moistureDry(0.29, 19.26179, 25)).toBeCloseTo(5, 5);
  });

  test.each([
    [0.02, 60, 25, 12.497],
    [0.2, 45, 20, 8.936],
    [0.35, 30, 20, 5.801],
    [0.35, 45, 25, 7.108],
    [0.02, 15, 15, 6.141],
  ])("oil %d, %d %%, %d C: %d %% of fresh weight", (oil, humidity, celsius, wet) => {
    expect(wetFromDry(moistureDry(oil, humidity, celsius))).toBeCloseTo(wet, 3);
  });
});

test.each([
  [10, 50, 100, true],
  [20, 40, 108, false],
  [25, 60, 137, false],
  [5, 30, 71, true],
])("the hundred rule at %d C and %d %%: %d", (celsius, humidity, sum, keeps) => {
  expect(hundredRule(celsius, humidity).sum).toBeCloseTo(sum, 9);
  expect(hundredRule(celsius, humidity).keeps).toBe(keeps);
});
