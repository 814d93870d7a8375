/** Paper and files of 200 plantings, as ratios to one full check in the same run. */
import { expect, test } from "vitest";
import { runChecks } from "../../src/core/checks/run-checks.ts";
import { copyLayout } from "../../src/core/edits/layout-edits.ts";
import { moveObjects } from "../../src/core/edits/move-objects.ts";
import { checkLayouts } from "../../src/core/checks/checked-layout.ts";
import { comparePdf } from "../../src/core/compare/compare-pdf.ts";
import { openPlanText } from "../../src/core/exchange/open-plan.ts";
import { planGeojson } from "../../src/core/exchange/plan-geojson.ts";
import { readVarietiesCsv } from "../../src/core/exchange/read-varieties-csv.ts";
import { suggestedMap } from "../../src/core/paper-set/suggested-map.ts";
import { varietiesCsv } from "../../src/core/exchange/varieties-csv.ts";
import type { Layout, Plan } from "../../src/core/model/plan.ts";
import { writePlan } from "../../src/core/model/read-plan.ts";
import { fonts } from "../support/printed.ts";
import { beddedPlan } from "./bedded-field.ts";
import { book } from "./field.ts";
import { reportRow } from "./report.ts";
import { medianMs } from "./timing.ts";

const section = "Paper and files";
const size = "200 plantings in 50 beds, 200 varieties";
const OBJECTS = 250;
const PRINTED_AT = "2027-03-02 09:40";
const RUNS = 5;
/** The plot map of so many plantings is to be made in less, milliseconds. */
const MAP_BUDGET_MS = 2000;

function placed(plan: Plan): Plan {
  const position = { longitude: 9.4, latitude: 47.2 };
  return { ...plan, site: { ...plan.site, position } };
}

/** Median milliseconds of work that is waited for, after one run to warm up. */
async function medianMsOf(work: () => Promise<unknown>): Promise<number> {
  await work();
  const times: number[] = [];
  for (let run = 0; run < RUNS; run += 1) {
    const from = performance.now();
    await work();
    times.push(performance.now() - from);
  }
  return times.toSorted((a, b) => a - b)[Math.floor(RUNS / 2)] ?? 0;
}

test("paper and files against one full check", async () => {
  const plan = placed(beddedPlan(50, 4));
  const layout = plan.layouts[0] as Layout;
  const result = runChecks(plan, layout, book);
  const input = { plan, layout, result, book };
  const checkMs = medianMs(15, () => runChecks(plan, layout, book));
  const row = (what: string, ms: number, of = size) =>
    reportRow({
      section,
      what: `${what}, against one full check`,
      size: of,
      value: ms / checkMs,
      unit: "x",
    });
  const perObject = (what: string, ms: number) =>
    reportRow({
      section,
      what: `${what}, for each object`,
      size,
      value: (ms * 1000) / OBJECTS,
      unit: "µs",
    });

  const mapMs = await medianMsOf(() => suggestedMap(input, PRINTED_AT, fonts));
  row("plot map as PDF", mapMs);
  reportRow({
    section,
    what: "plot map as PDF",
    size,
    value: mapMs,
    unit: "ms",
    budget: `under ${MAP_BUDGET_MS / 1000} s`,
    isMet: mapMs < MAP_BUDGET_MS,
  });
  const two = moveObjects("layout-2", ["p0", "p9"], 1, 0).apply(
    copyLayout("layout-1", "layout-2", "Layout 2").apply(plan),
  );
  const print = { paper: "A4", isOverlaid: false, printedAt: PRINTED_AT } as const;
  const compared = checkLayouts(two, two.layouts);
  row(
    "two layouts compared as PDF",
    await medianMsOf(() => comparePdf(compared, print, fonts)),
    "2 layouts of 200 plantings",
  );

  const planFile = writePlan(plan);
  const geojson = planGeojson(input);
  const csv = varietiesCsv(plan, book);
  const opened = (text: string, name: string) => {
    const read = openPlanText(text, name, book);
    if (!read.ok) throw new Error(`${name} was refused`);
    return read.value.plan;
  };
  const readers: readonly (readonly [string, () => unknown])[] = [
    ["plan file read", () => opened(planFile, "plan.json")],
    ["GeoJSON read", () => opened(geojson, "plan.geojson")],
    ["seed list read from CSV", () => readVarietiesCsv(csv, "list.csv", plan, book)],
    ["plan file written", () => writePlan(plan)],
    ["GeoJSON written", () => planGeojson(input)],
  ];
  for (const [what, work] of readers) {
    const ms = medianMs(RUNS, () => void work());
    row(what, ms);
    if (!what.includes("CSV")) perObject(what, ms);
  }
  expect(opened(planFile, "plan.json").layouts[0]?.plantings).toHaveLength(200);
  expect(opened(geojson, "plan.geojson").layouts[0]?.plantings).toHaveLength(200);
}, 240_000);
