/** Bringing together what five phones wrote in a season, and judging the plan by it. */
import { expect, test } from "vitest";
import { checkAsGrown } from "../../src/core/record/as-grown.ts";
import type { Entry, Plan } from "../../src/core/model/plan.ts";
import { checkLayout } from "../../src/core/checks/checked-layout.ts";
import { mergePlans } from "../../src/core/record/merge-plans.ts";
import { gardenPlan } from "../support/garden-plan.ts";
import { reportRow } from "./report.ts";
import { bestMs } from "./timing.ts";

const PHONES = 5;
const ENTRIES = 500;
const KINDS = ["first flower", "looked at", "rogued", "last flower", "note"] as const;

function phones(plan: Plan): readonly Plan[] {
  const plots = plan.layouts[0]?.plantings ?? [];
  return Array.from({ length: PHONES }, (_, phone) => ({
    ...plan,
    entries: Array.from({ length: ENTRIES }, (__, index): Entry => ({
      id: `phone${phone}-${index}`,
      on: plan.season.first + 120 + (index % 90),
      of: plots[(index * 7 + phone) % plots.length]?.id ?? "",
      what: KINDS[index % KINDS.length] ?? "note",
      who: `Phone ${phone}`,
    })),
  }));
}

test("five phones of 500 entries each within a second", () => {
  const plan = gardenPlan(100);
  const copies = phones(plan);
  const { ms, made } = bestMs(5, () =>
    copies.reduce((all, copy) => {
      const merged = mergePlans(all, copy, new Set());
      return merged.ok ? merged.plan : all;
    }, plan),
  );
  expect(made.entries).toHaveLength(PHONES * ENTRIES);
  const section = "Field record";
  const size = `${PHONES} phones of ${ENTRIES} entries, ${plan.layouts[0]?.plantings.length ?? 0} plantings`;
  reportRow({
    section,
    size,
    what: "brought together, as a part of a second",
    value: ms / 1000,
    unit: "x",
    budget: "at most 1 x",
    isMet: ms <= 1000,
  });
  const layoutId = plan.layouts[0]?.id ?? "";
  const { ms: plannedMs } = bestMs(5, () => checkLayout(made, layoutId));
  const { ms: grownMs } = bestMs(5, () => checkAsGrown(made, layoutId, plan.season.first + 200));
  reportRow({
    section,
    size,
    what: "judged as grown, against the check as planned",
    value: grownMs / plannedMs,
    unit: "x",
  });
});
