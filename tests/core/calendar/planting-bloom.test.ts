/** When a planting flowers: which of the figures at hand is used. */
import { describe, expect, test } from "vitest";
import { firstFlower } from "../../../src/core/calendar/first-flower.ts";
import { settingOfClimate } from "../../support/climate-rows.ts";
import { partsFromDates, plantingBloom } from "../../../src/core/calendar/planting-bloom.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import type { Climate, Planting, Variety } from "../../../src/core/model/plan.ts";

const own = <T>(value: T) => ({ value, source: "own" });

const kind: Kind = {
  id: "trial",
  name: "trial",
  otherNames: [],
  botanicalName: "Trial",
  family: "",
  species: "Trial",
  group: "trial",
  lifeCycle: "annual",
  carrier: "insects",
  breeding: "outcrossing",
  botanySource: "own",
  isolation: [],
  timing: {
    sownToFlower: own([50, 60] as const),
    transplantedToFlower: own([30, 40] as const),
    bloomDays: own([20, 30] as const),
    flowerToSeed: own([40, 50] as const),
  },
};
const variety: Variety = { id: "v", name: "Old Ferry", kind: "trial" };
const planting: Planting = {
  id: "p",
  code: "P",
  variety: "v",
  outline: { shape: "rectangle", x: 0, y: 0, widthM: 1, lengthM: 1, turnDeg: 0 },
  purpose: "seed",
  flowering: "yes",
  cover: "none",
};
const sown: Planting = { ...planting, start: { method: "sown", date: 830 } };
const setOut: Planting = { ...planting, start: { method: "transplanted", date: 830 } };
/** Ten degrees above a base of 10, every day. */
const warm: Climate = { normals: { minC: Array(12).fill(20), maxC: Array(12).fill(20) } };
const heat = { method: "simple average", baseC: 10, capC: null, cDays: [300, 500] } as const;

function outer(of: Planting, by: Partial<Variety> = {}, climate?: Climate, of_: Kind = kind) {
  const bloom = plantingBloom(of, { ...variety, ...by }, of_, settingOfClimate(climate))?.whole;
  return bloom && [bloom.outer.first, bloom.outer.last, bloom.counted];
}

describe("bloom is told by", () => {
  test("the kind's days from sowing, or from setting out", () => {
    expect(outer(sown)).toEqual([880, 890 + 29, "days"]);
    expect(outer(setOut)).toEqual([860, 870 + 29, "days"]);
  });

  test("the variety's own days before those", () => {
    expect(outer(sown, { sownToFlower: [70, 70] })).toEqual([900, 900 + 29, "days"]);
    expect(outer(sown, { bloomDays: [5, 5] })).toEqual([880, 894, "days"]);
    expect(outer(setOut, { sownToFlower: [70, 70] })).toEqual([860, 899, "days"]);
  });

  test("the planting's own dates before everything", () => {
    const dated = { ...sown, bloom: { first: 5, last: 9 } };
    expect(outer(dated, { sownToFlower: [70, 70] }, warm)).toEqual([5, 9, "own dates"]);
  });

  test("heat where there is a climate and something is known of heat", () => {
    // 10 C-days a day: 300 are reached on the 30th day.
    expect(outer(sown, { heatToFlower: heat })).toEqual([880, 919, "days"]);
    expect(outer(sown, { heatToFlower: heat }, warm)).toEqual([859, 879 + 29, "heat"]);
    expect(outer(sown, {}, warm)).toEqual([880, 919, "days"]);
    const ofKind = { ...kind, timing: { ...kind.timing, heatToFlower: own(heat) } };
    expect(outer(sown, {}, warm, ofKind)).toEqual([859, 908, "heat"]);
  });

  test("the variety's own days before the kind's heat; days for what was set out", () => {
    const ofKind = { ...kind, timing: { ...kind.timing, heatToFlower: own(heat) } };
    expect(outer(sown, { sownToFlower: [70, 70] }, warm, ofKind)).toEqual([900, 929, "days"]);
    expect(outer(setOut, {}, warm, ofKind)).toEqual([860, 899, "days"]);
  });

  test("days typed for a kind before a published heat of it", () => {
    const published = { value: heat, source: "corn-growing-degrees" };
    const typed = { ...kind, timing: { ...kind.timing, heatToFlower: published } };
    expect(outer(sown, {}, warm, typed)).toEqual([880, 919, "days"]);
    const recalled = { value: [50, 60] as const, source: "recalled" };
    const notTyped = { ...typed, timing: { ...typed.timing, sownToFlower: recalled } };
    expect(outer(sown, {}, warm, notTyped)).toEqual([859, 908, "heat"]);
  });

  test("neither heat nor days where the heat never suffices", () => {
    const cold: Climate = { normals: { minC: Array(12).fill(2), maxC: Array(12).fill(8) } };
    expect(outer(sown, { heatToFlower: heat }, cold)).toBeUndefined();
    const setting = settingOfClimate(cold);
    expect(firstFlower(sown, { ...variety, heatToFlower: heat }, kind, setting).why).toBe(
      "heat-not-met",
    );
  });
});

describe("nothing is told", () => {
  test("without a start", () => {
    expect(outer(planting)).toBeUndefined();
    expect(firstFlower(planting, variety, kind, settingOfClimate(undefined))).toEqual({
      flower: null,
      why: "no-start",
    });
  });

  test("without days to flower or length of bloom", () => {
    expect(outer(sown, {}, undefined, { ...kind, timing: {} })).toBeUndefined();
    const { bloomDays: _length, ...timing } = kind.timing;
    expect(outer(sown, {}, undefined, { ...kind, timing })).toBeUndefined();
    expect(outer(sown, { bloomDays: [10, 10] }, undefined, { ...kind, timing })).toEqual([
      880,
      899,
      "days",
    ]);
  });
});

test("pollen and stigmas have windows of their own where the kind says so", () => {
  const parted: Kind = {
    ...kind,
    timing: { ...kind.timing, receptive: own({ afterFirst: [2, 3], days: [10, 12] } as const) },
  };
  const parts = plantingBloom(sown, variety, parted, settingOfClimate(undefined));
  expect(parts?.sheds).toEqual(parts?.whole);
  expect(parts?.receives.outer).toEqual({ first: 882, last: 890 + 3 + 11 });
});

test("ripe seed is counted from first flower", () => {
  expect(plantingBloom(sown, variety, kind, settingOfClimate(undefined))?.ripe).toEqual({
    earliest: 920,
    likely: 930,
    latest: 940,
  });
  expect(partsFromDates({ first: 5, last: 9 }, kind).ripe).toEqual({
    earliest: 45,
    likely: 50,
    latest: 55,
  });
  expect(partsFromDates({ first: 5, last: 9 }).ripe).toBeNull();
});
