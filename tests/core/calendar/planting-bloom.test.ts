/** When a planting flowers: which of the figures at hand is used. */
import { describe, expect, test } from "vitest";
import {
  firstFlower,
  partsFromDates,
  plantingBloom,
} from "../../../src/core/calendar/planting-bloom.ts";
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
const sown: Planting = { ...planting, start: { method: "sown", date: 1000 } };
const setOut: Planting = { ...planting, start: { method: "transplanted", date: 1000 } };
/** Ten degrees above a base of 10, every day. */
const warm: Climate = { normals: { minC: Array(12).fill(20), maxC: Array(12).fill(20) } };
const heat = { method: "simple average", baseC: 10, capC: null, cDays: [300, 500] } as const;

function outer(of: Planting, by: Partial<Variety> = {}, climate?: Climate, of_: Kind = kind) {
  const bloom = plantingBloom(of, { ...variety, ...by }, of_, climate)?.whole;
  return bloom && [bloom.outer.first, bloom.outer.last, bloom.basis];
}

describe("bloom is told by", () => {
  test("the kind's days from sowing, or from setting out", () => {
    expect(outer(sown)).toEqual([1050, 1060 + 29, "days"]);
    expect(outer(setOut)).toEqual([1030, 1040 + 29, "days"]);
  });

  test("the variety's own days before those", () => {
    expect(outer(sown, { sownToFlower: [70, 70] })).toEqual([1070, 1070 + 29, "days"]);
    expect(outer(sown, { bloomDays: [5, 5] })).toEqual([1050, 1064, "days"]);
    expect(outer(setOut, { sownToFlower: [70, 70] })).toEqual([1030, 1069, "days"]);
  });

  test("the planting's own dates before everything", () => {
    const dated = { ...sown, bloom: { first: 5, last: 9 } };
    expect(outer(dated, { sownToFlower: [70, 70] }, warm)).toEqual([5, 9, "own dates"]);
  });

  test("heat where there is a climate and something is known of heat", () => {
    // 10 C-days a day: 300 are reached on the 30th day.
    expect(outer(sown, { heatToFlower: heat })).toEqual([1050, 1089, "days"]);
    expect(outer(sown, { heatToFlower: heat }, warm)).toEqual([1029, 1049 + 29, "heat"]);
    expect(outer(sown, {}, warm)).toEqual([1050, 1089, "days"]);
    const ofKind = { ...kind, timing: { ...kind.timing, heatToFlower: own(heat) } };
    expect(outer(sown, {}, warm, ofKind)).toEqual([1029, 1078, "heat"]);
  });

  test("the variety's own days before the kind's heat; days for what was set out", () => {
    const ofKind = { ...kind, timing: { ...kind.timing, heatToFlower: own(heat) } };
    expect(outer(sown, { sownToFlower: [70, 70] }, warm, ofKind)).toEqual([1070, 1099, "days"]);
    expect(outer(setOut, {}, warm, ofKind)).toEqual([1030, 1069, "days"]);
  });

  test("days typed for a kind before a published heat of it", () => {
    const published = { value: heat, source: "corn-growing-degrees" };
    const typed = { ...kind, timing: { ...kind.timing, heatToFlower: published } };
    expect(outer(sown, {}, warm, typed)).toEqual([1050, 1089, "days"]);
    const recalled = { value: [50, 60] as const, source: "recalled" };
    const notTyped = { ...typed, timing: { ...typed.timing, sownToFlower: recalled } };
    expect(outer(sown, {}, warm, notTyped)).toEqual([1029, 1078, "heat"]);
  });

  test("days where the heat never suffices", () => {
    const cold: Climate = { normals: { minC: Array(12).fill(2), maxC: Array(12).fill(8) } };
    expect(outer(sown, { heatToFlower: heat }, cold)).toEqual([1050, 1089, "days"]);
  });
});

describe("nothing is told", () => {
  test("without a start", () => {
    expect(outer(planting)).toBeUndefined();
    expect(firstFlower(planting, variety, kind, undefined)).toBeNull();
  });

  test("without days to flower or length of bloom", () => {
    expect(outer(sown, {}, undefined, { ...kind, timing: {} })).toBeUndefined();
    const { bloomDays: _length, ...timing } = kind.timing;
    expect(outer(sown, {}, undefined, { ...kind, timing })).toBeUndefined();
    expect(outer(sown, { bloomDays: [10, 10] }, undefined, { ...kind, timing })).toEqual([
      1050,
      1069,
      "days",
    ]);
  });
});

test("pollen and stigmas have windows of their own where the kind says so", () => {
  const parted: Kind = {
    ...kind,
    timing: { ...kind.timing, receptive: own({ afterFirst: [2, 3], days: [10, 12] } as const) },
  };
  const parts = plantingBloom(sown, variety, parted, undefined);
  expect(parts?.sheds).toEqual(parts?.whole);
  expect(parts?.receives.outer).toEqual({ first: 1052, last: 1060 + 3 + 11 });
});

test("ripe seed is counted from first flower", () => {
  expect(plantingBloom(sown, variety, kind, undefined)?.ripe).toEqual({
    earliest: 1090,
    likely: 1100,
    latest: 1110,
  });
  expect(partsFromDates({ first: 5, last: 9 }, kind).ripe).toEqual({
    earliest: 45,
    likely: 50,
    latest: 55,
  });
  expect(partsFromDates({ first: 5, last: 9 }).ripe).toBeNull();
});
