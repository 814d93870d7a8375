/** Items look as the stands they are handed say, whichever layout is open. */
import { afterEach, expect, test, vi } from "vitest";
import { drawItems, itemLabels } from "../../../src/canvas/draw/draw-items.ts";
import { sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import type { Stand } from "../../../src/core/checks/stand.ts";
import { check, day, layoutOf, source, squareAt, trialPlan } from "../../support/trial-plan.ts";
import { book } from "../../support/drawn-plan.ts";
import { recorder } from "../../support/told-canvas.ts";

// Hatches are painted on a tile of their own first.
const page = { createElement: () => ({ getContext: () => recorder().brush.context }) };

afterEach(() => void vi.unstubAllGlobals());

test("a stand in flower is drawn so by its own layout's stands, with another plan in the store", () => {
  vi.stubGlobal("document", page);
  const plan = trialPlan({}, [source("feral", "carrot", squareAt(3))]);
  const items = [...sheetItems(plan, layoutOf(plan), book).byId.values()];
  const drawn = (standById: ReadonlyMap<string, Stand>) => {
    const { told, brush } = recorder();
    const look = { standById, day: day("2027-07-10") };
    const labels = itemLabels(brush, items, look);
    drawItems(brush, items, { ...look, labels });
    return told;
  };
  const { standById } = check(plan);
  expect(standById.get("feral")?.bloom).not.toBeNull();
  expect(drawn(standById).length).toBeGreaterThan(5);
  expect(drawn(standById)).not.toEqual(drawn(new Map()));
});

test("a planting is drawn under the cover that stands, not the one planned", () => {
  vi.stubGlobal("document", page);
  const drawn = (planned: "cage" | "none", standing: "cage" | "none") => {
    const plan = trialPlan({ one: { kind: "carrot", at: 0 } });
    const layout = layoutOf(plan);
    const plantings = layout.plantings.map((each) => ({ ...each, cover: planned }));
    const items = [...sheetItems(plan, { ...layout, plantings }, book).byId.values()];
    const stands = [...check(plan).standById].map(
      ([id, stand]) => [id, { ...stand, cover: standing }] as const,
    );
    const look = { standById: new Map(stands), day: null };
    const { told, brush } = recorder();
    drawItems(brush, items, { ...look, labels: itemLabels(brush, items, look) });
    return told;
  };
  expect(drawn("cage", "cage")).not.toEqual(drawn("none", "none"));
  expect(drawn("cage", "none")).toEqual(drawn("none", "none"));
  expect(drawn("none", "cage")).toEqual(drawn("cage", "cage"));
});
