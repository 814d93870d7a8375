/** A stake leads to its plot; a packet, which names last season's plot, does not. */
import { describe, expect, test } from "vitest";
import { labelPlots } from "../../../src/core/labels/label-plots.ts";
import { readLabel } from "../../../src/core/labels/read-label.ts";
import type { Lot } from "../../../src/core/model/plan.ts";
import { trialPlan } from "../../support/trial-plan.ts";

const lot = (id: string, variety: string): Lot => ({ id, code: id, variety, state: "in stock" });
const plan = trialPlan(
  {
    p: { at: 0, kind: "common-bean", code: "A01-1", lots: ["KD-25"] },
    q: { at: 6, kind: "common-bean", code: "A02-1", variety: { lots: ["KD-26"] } },
    r: { at: 12, kind: "tomato", code: "A03-1" },
  },
  [],
  { lots: [lot("KD-25", "v-p"), lot("KD-26", "v-q")] },
);
const layout = plan.layouts[0];
if (!layout) throw new Error("no layout");
const plots = (text: string) => {
  const { sown, isOfPlot } = labelPlots(readLabel(text, plan, layout), plan, layout);
  return { sown: sown.map(({ code }) => code), isOfPlot };
};

describe("a label's plots", () => {
  test("a stake names the lot that is sown there, its planting's own or its variety's", () => {
    expect(plots("P:A01-1 L:KD-25")).toEqual({ sown: ["A01-1"], isOfPlot: true });
    expect(plots("P:A02-1 L:KD-26")).toEqual({ sown: ["A02-1"], isOfPlot: true });
    expect(plots("P:A03-1")).toEqual({ sown: [], isOfPlot: true });
  });

  test("a packet harvested on a plot of the same code last year is not of this plot; where it is sown is", () => {
    expect(plots("P:A01-1 L:KD-26")).toEqual({ sown: ["A02-1"], isOfPlot: false });
    expect(plots("P:A03-1 L:KD-25")).toEqual({ sown: ["A01-1"], isOfPlot: false });
  });

  test("a lot's code alone names no plot, only where it is sown", () => {
    expect(plots("KD-25")).toEqual({ sown: ["A01-1"], isOfPlot: false });
  });
});
