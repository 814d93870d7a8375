import { afterEach, expect, test, vi } from "vitest";
import type { Plan } from "../../../src/core/model/plan.ts";
import { layoutToOpen, rememberLayout } from "../../../src/store/plan/last-layout.ts";
import { trialPlan } from "../../support/trial-plan.ts";

afterEach(() => vi.unstubAllGlobals());

function keepsTexts(): void {
  const held = new Map<string, string>();
  vi.stubGlobal("localStorage", {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, text: string) => held.set(key, text),
  });
}

const first = trialPlan({ p: { at: 0, kind: "tomato" } });
const plan: Plan = {
  ...first,
  id: "garden",
  layouts: ["one", "two", "three"].map((id) => ({ ...first.layouts[0], id }) as Plan["layouts"][0]),
};

test("a plan opens on the layout looked at last, each plan on its own", () => {
  keepsTexts();
  expect(layoutToOpen(plan)).toBe("one");
  rememberLayout("garden", "three");
  rememberLayout("field", "two");
  expect(layoutToOpen(plan)).toBe("three");
  expect(layoutToOpen({ ...plan, id: "orchard" })).toBe("one");
});

test("a chosen layout goes before it, and one that is gone is not opened", () => {
  keepsTexts();
  rememberLayout("garden", "three");
  expect(layoutToOpen({ ...plan, chosenLayout: "two" })).toBe("two");
  expect(layoutToOpen({ ...plan, layouts: plan.layouts.slice(0, 2) })).toBe("one");
});

test("of many plans the latest are remembered; without storage the first layout opens", () => {
  keepsTexts();
  rememberLayout("garden", "two");
  for (let at = 0; at < 60; at += 1) rememberLayout(`plan-${at}`, "two");
  expect(layoutToOpen(plan)).toBe("one");
  expect(layoutToOpen({ ...plan, id: "plan-59" })).toBe("two");
  vi.unstubAllGlobals();
  expect(layoutToOpen(plan)).toBe("one");
});
