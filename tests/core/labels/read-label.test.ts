import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readLabel } from "../../../src/core/labels/read-label.ts";
import { stakeLabels } from "../../../src/core/labels/stake-facts.ts";
import { readPlan } from "../../../src/core/model/read-plan.ts";
import type { Lot } from "../../../src/core/model/plan.ts";
import { book, checkedLayout } from "../../support/arrange-garden.ts";

const read = readPlan(
  readFileSync("sample-plots/two-acre-field.json", "utf8"),
  "two-acre-field.json",
  (kind) => book.kind(kind) !== undefined,
);
if (!read.ok) throw new Error("the sample");
const plan = read.value;
const layout = plan.layouts[0];
if (!layout) throw new Error("no layout");

describe("what a label points to", () => {
  test("every stake of the sample leads back to its planting and its lots", () => {
    const labels = stakeLabels(checkedLayout(plan));
    expect(labels.length).toBe(layout.plantings.length);
    for (const { head, machine } of labels) {
      const target = readLabel(machine, plan, layout);
      expect(target.planting?.code).toBe(head);
      expect(target.missing).toEqual([]);
      const named = machine.includes(" L:") ? (machine.split(" L:")[1] ?? "").split(", ") : [];
      expect(target.lots.map(({ code }) => code.toUpperCase())).toEqual(named);
    }
    expect(labels.some(({ machine }) => machine.includes(" L:"))).toBe(true);
  });

  test("a code typed alone is that of a lot, a planting or a bed, whatever the case", () => {
    const [lot] = plan.lots;
    expect(readLabel(` ${lot?.code.toLowerCase()} `, plan, layout).lots).toEqual([lot]);
    const [planting] = layout.plantings;
    expect(readLabel(planting?.code.toLowerCase() ?? "", plan, layout).planting).toBe(planting);
    const bed = layout.beds.find(
      ({ code }) => !layout.plantings.some((each) => each.code === code),
    );
    expect(readLabel(bed?.code ?? "", plan, layout).bed).toBe(bed);
  });

  test("what is not in the plan is named, what is there is still found", () => {
    const [planting] = layout.plantings;
    const target = readLabel(`P:${planting?.code} L:ZZ-99, ZZ-98`, plan, layout);
    expect(target.planting).toBe(planting);
    expect(target.missing).toEqual(["ZZ-99", "ZZ-98"]);
    expect(readLabel("nothing like it", plan, layout).missing).toEqual(["nothing like it"]);
  });

  test("a code of a lot that has a comma in it is taken whole", () => {
    const lot: Lot = { id: "l", code: "A, B", variety: "v", state: "in stock" };
    expect(readLabel("P:X L:A, B", { lots: [lot], layouts: [] }, layout).lots).toEqual([lot]);
  });

  test("a plot of another layout is found with its layout; the one on screen goes before", () => {
    const [first] = layout.plantings;
    if (!first) throw new Error("no planting");
    const only = { ...first, id: "only", code: "ZZ-1" };
    const other = { ...layout, id: "other", name: "Other", plantings: [...layout.plantings, only] };
    const both = { ...plan, layouts: [layout, other] };
    expect(readLabel("P:ZZ-1", both, layout)).toMatchObject({ planting: only, layout: other });
    expect(readLabel("zz-1", both, layout)).toMatchObject({ planting: only, missing: [] });
    expect(readLabel(first.code, both, layout).layout).toBe(layout);
    // The code of a lot opens the lot, whatever a layout not on screen holds.
    const lots = plan.lots.slice(0, 1).map((lot) => ({ ...lot, code: "ZZ-1" }));
    const target = readLabel("ZZ-1", { lots, layouts: both.layouts }, layout);
    expect(target.lots).toEqual(lots);
    expect(target.planting).toBeNull();
  });
});
