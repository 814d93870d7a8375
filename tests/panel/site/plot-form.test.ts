import { describe, expect, test } from "vitest";
import { emptyPlan } from "../../../src/core/model/empty-plan.ts";
import {
  plotOf,
  plotProblem,
  positionOf,
  rectanglePlot,
  plotChange,
  siteWith,
} from "../../../src/panel/site/plot-form.ts";

const { site } = emptyPlan("plan-1", 2027);

describe("the first facts of a plot", () => {
  test("a typed size is a rectangle from the sheet's origin, and is read back", () => {
    const typed = { ...plotOf(site), acrossM: 24, upM: 13.5, lastSpringFrost: 21000, name: "Fen" };
    const after = siteWith(site, typed);
    expect([site.name, after.name]).toEqual(["My garden", "Fen"]);
    expect(after.outline).toEqual(rectanglePlot(24, 13.5));
    expect(after.lastSpringFrost).toBe(21000);
    expect(plotOf(after)).toMatchObject({ acrossM: 24, upM: 13.5, lastSpringFrost: 21000 });
  });

  test("a plan nobody has named is called as its garden; a name given stays", () => {
    const plan = emptyPlan("plan-1", 2027);
    const typed = { ...plotOf(site), name: "Fen End" };
    expect(plotChange(plan, typed).title).toBe("Fen End");
    expect(plotChange({ ...plan, title: "My trials" }, typed).title).toBeUndefined();
    expect(plotChange(plan, plotOf(site)).title, "the garden has no name yet").toBeUndefined();
  });

  test("one size alone is told, and none leaves the outline as it is", () => {
    expect(plotProblem({ ...plotOf(site), acrossM: 24 })).toContain("Both sizes");
    const drawn = {
      ...site,
      outline: {
        shape: "polygon",
        corners: [
          [0, 0],
          [9, 1],
          [4, 7],
        ],
      },
    } as const;
    expect(plotOf(drawn)).toMatchObject({ acrossM: undefined, upM: undefined });
    expect(siteWith(drawn, plotOf(drawn)).outline).toBe(drawn.outline);
  });

  test("a position is both coordinates in one text, in any way people write them", () => {
    const place = { ok: true, position: { latitude: 51.42, longitude: -0.35 } };
    expect(positionOf("51.42, -0.35")).toEqual(place);
    expect(positionOf("51.42 N 0.35 W")).toEqual(place);
    expect(positionOf("")).toEqual({ ok: true, position: undefined });
    expect(positionOf("51.42 N")).toMatchObject({ ok: false });
    expect(positionOf("by the river")).toMatchObject({ ok: false });
  });
});
