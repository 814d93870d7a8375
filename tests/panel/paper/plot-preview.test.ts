/** The pages on screen before printing: they count up, can be stopped, and name what is cut. */
import { beforeAll, describe, expect, test, vi } from "vitest";
import type { PlotMapChoice } from "../../../src/panel/paper/make-plot-map.ts";
import { makePlotPreview } from "../../../src/panel/paper/make-plot-preview.ts";
import { usePlanStore } from "../../../src/store/plan/plan-store.ts";
import { gardenPlan } from "../../support/paper-garden.ts";
import { fonts } from "../../support/printed.ts";

const choice: PlotMapChoice = { paper: "A5", orientation: "landscape", ratio: 50, companions: [] };

describe("the preview of a large set", () => {
  beforeAll(() => {
    vi.stubGlobal("fetch", (url: string) =>
      Promise.resolve(
        new Response(new Uint8Array(url.includes("700") ? fonts.bold : fonts.regular)),
      ),
    );
    usePlanStore.getState().openPlan(gardenPlan());
    return () => vi.unstubAllGlobals();
  });

  test("counts its parts, and has every page", async () => {
    const steps: (readonly [number, number])[] = [];
    const preview = await makePlotPreview(
      choice,
      (done, total) => void steps.push([done, total]),
      new AbortController().signal,
    );
    const sheets = steps.length - 1;
    expect(sheets).toBeGreaterThan(6);
    expect(steps).toEqual(steps.map((_, index) => [index, steps.length]));
    expect(preview?.pages.length).toBeGreaterThan(sheets + 1);
    expect(preview?.problems.join(" ")).toContain("Cut by the edge of the map: ");
  });

  test("ends without pages once it is stopped", async () => {
    const controller = new AbortController();
    let last = 0;
    const preview = await makePlotPreview(
      choice,
      (done) => {
        last = done;
        if (done === 2) controller.abort();
      },
      controller.signal,
    );
    expect(preview).toBeNull();
    expect(last).toBe(2);
  });
});
