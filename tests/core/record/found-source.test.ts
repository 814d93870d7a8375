/** A plant found in flower: its place, what it endangers, and one step of undo. */
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { outlineOf } from "../../../src/core/geometry/outline.ts";
import { localFrame } from "../../../src/core/geometry/local-frame.ts";
import {
  type FoundSource,
  endangeredBy,
  foundSurrounding,
  placeFoundSource,
  placeTowards,
} from "../../../src/core/record/found-source.ts";
import { bloom, day, trialPlan } from "../../support/trial-plan.ts";

/** A bean of 6 m at home, with its near edge at x = 0, and a lettuce that no bean reaches. */
const plan = trialPlan({
  p: { at: 0, kind: "common-bean", bloom: bloom("06-10", "06-30") },
  q: { at: 3, kind: "lettuce" },
});
const checked = checkLayout(plan, "layout-1");
const found = (more: Partial<FoundSource> = {}): FoundSource => ({
  id: "source-a1",
  label: "Common bean found 6 Jul",
  kind: "common-bean",
  at: { x: -5, y: 0 },
  unsureM: 0,
  on: day("2027-07-06"),
  ...more,
});
const required = checkLayout(
  { ...plan, surroundings: [foundSurrounding(plan, found())] },
  "layout-1",
).result.pairs[0]?.requiredM;

describe("what a plant found endangers", () => {
  test("is told by the rule that judges plans, for its own group only", () => {
    const { pairs } = endangeredBy(checked, found());
    expect(pairs.map(({ seedParent }) => seedParent)).toEqual(["p"]);
    expect(pairs[0]?.distanceM).toBeCloseTo(5, 6);
    expect(checked.plan.surroundings).toEqual([]);
  });

  test("it was open before anybody came by: a bloom that was over by then is not clear of it", () => {
    expect(bloom("06-10", "06-30").last).toBeLessThan(found().on);
    expect(endangeredBy(checked, found()).pairs[0]?.standing).toBe("conflict");
  });

  test("a place known to some metres is judged by the nearest it may be", () => {
    if (required === null || required === undefined) throw new Error("no figure");
    const beyond = { x: -(required + 1), y: 0 };
    expect(endangeredBy(checked, found({ at: beyond })).pairs).toEqual([]);
    const [pair] = endangeredBy(checked, found({ at: beyond, unsureM: 4 })).pairs;
    expect(pair?.standing).toBe("conflict");
    // A ring of 64 corners lies inside its circle by 0.12 % of the radius at most.
    expect(pair?.distanceM).toBeGreaterThanOrEqual(required + 1 - 4 - 1e-9);
    expect(pair?.distanceM).toBeLessThan(required + 1 - 4 + 0.01);
  });
});

describe("placing it", () => {
  test("is one step: the source and the entry that it was found", () => {
    const edit = placeFoundSource(found(), { id: "e1", who: "Mara" });
    const next = edit.apply(plan);
    expect(next.surroundings.map(({ id }) => id)).toEqual(["source-a1"]);
    expect(next.surroundings[0]?.outline).toEqual({ shape: "point", x: -5, y: 0 });
    expect(next.entries).toMatchObject([{ of: "source-a1", what: "note", who: "Mara" }]);
    expect(edit.apply(next)).toBe(next);
  });

  test("by phone it is as large as the place is unsure", () => {
    const { bounds } = outlineOf(foundSurrounding(plan, found({ unsureM: 6 })).outline);
    expect(bounds.maxX - bounds.minX).toBeCloseTo(12, 2);
    expect(foundSurrounding(plan, found({ unsureM: 6 })).note).toContain("to 6 m");
  });

  test("by distance and true direction it comes where longitude and latitude say, however the sheet is turned", () => {
    for (const up of [0, 35, 336]) {
      const frame = localFrame({ longitude: -2.931, latitude: 52.221 }, up);
      const east = frame.toLonLat(placeTowards({ x: 0, y: 0 }, 100, 90, up));
      expect(east.latitude).toBeCloseTo(52.221, 5);
      expect(east.longitude).toBeGreaterThan(-2.931);
      const north = frame.toLonLat(placeTowards({ x: 0, y: 0 }, 100, 0, up));
      expect(north.longitude).toBeCloseTo(-2.931, 6);
      // A degree of latitude is 111.27 km at 52 degrees (WGS 84).
      expect((north.latitude - 52.221) * 111_270).toBeCloseTo(100, 0);
    }
  });
});
