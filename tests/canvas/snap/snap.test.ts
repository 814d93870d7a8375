import { describe, expect, test } from "vitest";
import { sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import {
  type SnapSettings,
  boundsInFrame,
  intoFrame,
  onStep,
  outOfFrame,
  snapMove,
  snapStep,
} from "../../../src/canvas/snap/snap.ts";
import { snapTargets } from "../../../src/canvas/snap/snap-targets.ts";
import { shapeCorners } from "../../../src/core/geometry/outline.ts";
import { bedOf, book, drawnPlan, plantingOf, rectangle } from "../../support/drawn-plan.ts";

const bed = bedOf("b01", rectangle(10, 20, 1.2, 10, 80));
const frame = { origin: { x: 10, y: 20 }, turnDeg: 80 };

function place(across: number, along: number) {
  return outOfFrame(frame, { x: across, y: along });
}

function plantingAt(id: string, across: number, along: number, width = 1, length = 2) {
  const { x, y } = place(across, along);
  return plantingOf(id, rectangle(x, y, width, length, 80), { bed: "b01" });
}

function settings(
  items: Parameters<typeof drawnPlan>[0],
  moving: string,
  reachM = 0.3,
): SnapSettings {
  const { plan, layout } = drawnPlan(items);
  const planting = layout.plantings.find(({ id }) => id === moving);
  if (!planting) throw new Error(`no planting ${moving}`);
  const all = sheetItems(plan, layout, book);
  return {
    lines: snapTargets({ items: all, moving: new Set([moving]) }, frame, {
      what: "planting",
      shape: planting.outline,
      bed,
    }),
    reachM,
    stepM: 0.1,
    gridFrom: { x: -0.6, y: -5 },
  };
}

/** Where the box comes to rest, in the frame. */
function rest(planting: ReturnType<typeof plantingAt>, using: SnapSettings) {
  const box = boundsInFrame(frame, shapeCorners(planting.outline));
  const { shift, guides } = snapMove(frame, box, using);
  const origin = intoFrame(frame, frame.origin);
  const by = intoFrame(frame, { x: frame.origin.x + shift.x, y: frame.origin.y + shift.y });
  return {
    left: box.minX + by.x - origin.x,
    near: box.minY + by.y - origin.y,
    far: box.maxY + by.y - origin.y,
    middle: (box.minX + box.maxX) / 2 + by.x - origin.x,
    labels: guides.map(({ label }) => label),
  };
}

test("the frame goes there and back", () => {
  const back = intoFrame(frame, outOfFrame(frame, { x: 1.5, y: -3 }));
  expect(back.x).toBeCloseTo(1.5);
  expect(back.y).toBeCloseTo(-3);
});

test("steps are a tenth of a metre or three inches, counted from a place", () => {
  expect(snapStep("m")).toBe(0.1);
  expect(snapStep("ft") / 0.0254).toBeCloseTo(3);
  expect(onStep(1.23, 0.05, 0.1)).toBeCloseTo(1.25);
});

describe("a planting moved in a turned bed", () => {
  test("comes to the bed's middle line across, and says so", () => {
    const planting = plantingAt("p1", 0.1, 0.33);
    const found = rest(planting, settings({ beds: [bed], plantings: [planting] }, "p1"));
    expect(found.middle).toBeCloseTo(0);
    expect(found.labels).toEqual(["middle of bed B01"]);
  });

  test("comes to the bed's end", () => {
    const planting = plantingAt("p1", 0, -3.85);
    const found = rest(planting, settings({ beds: [bed], plantings: [planting] }, "p1"));
    expect(found.near).toBeCloseTo(-5);
    expect(found.labels).toContain("edge of bed B01");
  });

  test("comes against its neighbour", () => {
    const planting = plantingAt("p1", 0, 0.1);
    const neighbour = plantingAt("p2", 0, 2.3);
    const found = rest(planting, settings({ beds: [bed], plantings: [planting, neighbour] }, "p1"));
    expect(found.far).toBeCloseTo(1.3);
    expect(found.labels).toContain("edge of P2");
  });

  test("else goes in steps from the bed's near end", () => {
    const planting = plantingAt("p1", 0, 0.1234);
    const found = rest(planting, settings({ beds: [bed], plantings: [planting] }, "p1"));
    expect((found.near + 5) / 0.1).toBeCloseTo(Math.round((found.near + 5) / 0.1));
    expect(Math.abs(found.near - (0.1234 - 1))).toBeLessThanOrEqual(0.05 + 1e-9);
  });

  test("takes no notice of neighbours that lie another way", () => {
    const planting = plantingAt("p1", 0, 0.1);
    const crooked = plantingOf(
      "p2",
      { ...rectangle(0, 0, 1, 2, 61), ...place(0, 2.3) },
      { bed: "b01" },
    );
    const found = rest(planting, settings({ beds: [bed], plantings: [planting, crooked] }, "p1"));
    expect(found.labels).toEqual(["middle of bed B01"]);
  });

  test("keeps a locked direction as it is", () => {
    const planting = plantingAt("p1", 0.17, -3.85);
    const box = boundsInFrame(frame, shapeCorners(planting.outline));
    const using = settings({ beds: [bed], plantings: [planting] }, "p1");
    const { shift } = snapMove(frame, box, using, { x: true, y: false });
    const by = intoFrame(frame, { x: frame.origin.x + shift.x, y: frame.origin.y + shift.y });
    expect(by.x).toBeCloseTo(0);
    expect(by.y).toBeCloseTo(-0.15);
  });
});

test("guides reach along the line and what has come to it", () => {
  const planting = plantingAt("p1", 0.1, 4.8);
  const box = boundsInFrame(frame, shapeCorners(planting.outline));
  const [guide] = snapMove(
    frame,
    box,
    settings({ beds: [bed], plantings: [planting] }, "p1"),
  ).guides;
  const ends = [guide?.from, guide?.to].map((end) => end && intoFrame(frame, end).y);
  expect(ends[0]).toBeCloseTo(-5);
  expect(ends[1]).toBeGreaterThanOrEqual(5 - 1e-9);
});
