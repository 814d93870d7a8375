import { describe, expect, test } from "vitest";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { addSurrounding } from "../../../src/core/edits/object-edits.ts";
import { outlineOf } from "../../../src/core/geometry/outline.ts";
import { readBearing } from "../../../src/panel/kinds/bearing-text.ts";
import { startOfSource, typedSource, unsaidSource } from "../../../src/panel/kinds/source-form.ts";
import { book, smallPlan } from "../../support/small-plan.ts";

describe("a direction", () => {
  test("is degrees clockwise from north, letters or words of the compass", () => {
    expect(
      ["45", "12,5°", "360", "NE", "north-east", "South West", "nnw"].map(readBearing),
    ).toEqual([45, 12.5, 0, 45, 45, 225, 337.5]);
    expect(["", "361", "-5", "up", "nee"].map(readBearing)).toEqual([null, null, null, null, null]);
  });
});

describe("a pollen source", () => {
  const { plan, layout } = smallPlan();
  const bed = layout.beds[0];
  const at = bed?.outline.shape === "rectangle" ? bed.outline : { x: NaN, y: NaN };
  const start = { ...startOfSource(layout, null), kind: "tomato", kindName: "tomato" };

  test("is nothing until somebody says what flowers there", () => {
    expect(typedSource(plan, layout.id, { ...start, kind: null }, null)).toBeNull();
    expect(unsaidSource(plan, layout.id, "Pollen source", null), "nothing was drawn").toBeNull();
  });

  test("what was drawn stays on the sheet while it is asked, as ground that sheds no pollen", () => {
    const drawn = { shape: "point", x: 4, y: -2 } as const;
    const shown = unsaidSource(plan, layout.id, "Pollen source", drawn);
    expect(shown).toMatchObject({ what: "other", outline: drawn, label: "Pollen source" });
    const asked = shown ? addSurrounding(shown).apply(plan) : plan;
    const { stands, findings } = runChecks(asked, layout, book);
    expect([stands, findings]).toEqual([
      runChecks(plan, layout, book).stands,
      runChecks(plan, layout, book).findings,
    ]);
  });

  test("lies so far and that way from a bed, by true north", () => {
    const east = { ...start, distanceM: 300, bearingDeg: 90, from: bed?.id ?? "" };
    // The sheet's top points to the north: east is to the right.
    const level = { ...plan, site: { ...plan.site, upBearingDeg: 0 } };
    expect(typedSource(level, layout.id, east, null)?.outline).toEqual({
      shape: "point",
      x: at.x + 300,
      y: at.y,
    });
    // The sheet's top points to the east: east is up.
    const turned = { ...plan, site: { ...plan.site, upBearingDeg: 90 } };
    expect(typedSource(turned, layout.id, east, null)?.outline).toMatchObject({
      x: at.x,
      y: at.y + 300,
    });
  });

  test("is as wide as was said, so that it is measured to from its edge", () => {
    const spot = { shape: "point", x: 60, y: 50 } as const;
    const typed = { ...startOfSource(layout, spot), kind: "tomato", kindName: "tomato" };
    const field = typedSource(plan, layout.id, { ...typed, acrossM: 40 }, spot);
    const { minX, maxX } = outlineOf(field?.outline ?? spot).bounds;
    // Round by 64 corners: to a tenth of a metre as wide.
    expect(minX).toBeCloseTo(40, 1);
    expect(maxX).toBeCloseTo(80, 1);
    const drawn = { shape: "rectangle", x: 0, y: 0, widthM: 9, lengthM: 9, turnDeg: 0 } as const;
    expect(typedSource(plan, layout.id, { ...typed, acrossM: 40 }, drawn)?.outline).toBe(drawn);
  });

  test("keeps the outline it was given, and is named for its kind", () => {
    const given = { shape: "point", x: 7, y: -3 } as const;
    const typed = { ...startOfSource(layout, given), kind: "tomato", kindName: "tomato" };
    expect(typedSource(plan, layout.id, typed, given)).toMatchObject({
      label: "Tomato",
      kind: "tomato",
      what: "pollen",
      outline: given,
    });
  });
});
