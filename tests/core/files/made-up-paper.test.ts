/**
 * Every sheet that is printed, made by a core whose words files are all in the made-up language, as
 * the browser test has it for screens. Whatever is plain English on paper stands outside the words
 * files; whatever lies on something else, or beyond the paper, has no room for another language.
 */
import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import { repository } from "../../../.config/repository.mjs";
import type * as Checked from "../../../src/core/checks/checked-layout.ts";
import type { CheckedLayout } from "../../../src/core/checks/checked-layout.ts";
import type * as Compare from "../../../src/core/compare/compare-pdf.ts";
import type * as OpenPlan from "../../../src/core/exchange/open-plan.ts";
import type { PrintId } from "../../../src/core/files/print-list.ts";
import type * as PrintSet from "../../../src/core/files/print-set.ts";
import { usualLabelSize } from "../../../src/core/labels/label-sizes.ts";
import type * as LotIsolation from "../../../src/core/paper-set/lot-isolation-pages.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { closeMadeUp, madeUpModule } from "../../support/made-up-core.ts";
import { madeUp } from "../../support/made-up-words.ts";
import { nobodysWords, plainWords } from "../../support/plain-words.ts";
import { nearEdge, overlaps, printedPages } from "../../support/printed-words.ts";
import { a4, fonts, textOf } from "../../support/printed.ts";

const PRINTED_AT = "2027-03-02 09:40";

let printSet: typeof PrintSet;
let plans: ReadonlyMap<string, { readonly input: CheckedLayout; readonly text: string }>;

closeMadeUp();

beforeAll(async () => {
  printSet = await madeUpModule<typeof PrintSet>("src/core/files/print-set.ts");
  const { openPlanText } = await madeUpModule<typeof OpenPlan>("src/core/exchange/open-plan.ts");
  const { checkLayout } = await madeUpModule<typeof Checked>("src/core/checks/checked-layout.ts");
  plans = new Map(
    ["garden-to-solve", "seed-collection", "garden-solved"].map((name) => {
      const text = readFileSync(`${repository}sample-plots/${name}.json`, "utf8");
      const opened = openPlanText(text, name, cropBook());
      const first = opened.ok ? opened.value.plan.layouts[0] : undefined;
      if (!opened.ok || !first) throw new Error(`${name} cannot be read`);
      return [name, { input: checkLayout(opened.value.plan, first.id), text }];
    }),
  );
}, 120_000);

function planOf(name: string) {
  const plan = plans.get(name);
  if (!plan) throw new Error(name);
  return plan;
}

const labels = (isPacket: boolean) => ({
  size: usualLabelSize("m", isPacket),
  startAt: 1,
  hasQr: true,
  treatment: "",
});

async function printed(id: PrintId, name: string): Promise<Uint8Array> {
  const { input } = planOf(name);
  const settings = { ...a4, printedAt: PRINTED_AT, stakes: labels(false), packets: labels(true) };
  const { pdfWriter } = await import("../../../src/core/page/pdf-writer.ts");
  const { ruler } = pdfWriter("", "", fonts);
  const { pages } = await printSet.printedPart(id, input, settings, ruler);
  expect(pages.length).toBeGreaterThan(0);
  return printSet.printedPdf(input, { title: "", pages }, PRINTED_AT, fonts);
}

/** What is plain English on the pages, what lies on other words, and what comes too near its edge. */
function faultsOf(bytes: Uint8Array, plan: string, marginMm = 6) {
  const names = nobodysWords(planOf(plan).text);
  const pages = printedPages(bytes);
  return {
    plain: plainWords(textOf(bytes), names),
    onOthers: pages.flatMap(({ words }) => overlaps(words)),
    beyond: pages.flatMap((page) => nearEdge(page, marginMm)),
  };
}

const LABELS: ReadonlySet<PrintId> = new Set(["stakes", "packets", "shelf"]);

const NONE = { plain: [], onOthers: [], beyond: [] };

describe("in the made-up language, on paper", () => {
  test.each([
    ["map", "garden-to-solve"],
    ["bed-cards", "garden-to-solve"],
    ["calendar", "garden-to-solve"],
    ["harvest", "garden-to-solve"],
    ["isolation", "garden-to-solve"],
    ["set-out", "garden-to-solve"],
    ["sowing-list", "garden-to-solve"],
    ["neighbours", "garden-to-solve"],
    ["stakes", "garden-to-solve"],
    ["packets", "garden-to-solve"],
    ["shelf", "garden-to-solve"],
    ["years", "seed-collection"],
  ] as const)(
    "%s of %s",
    async (id, plan) => {
      const bytes = await printed(id, plan);
      expect(textOf(bytes)).toMatch(/[ÀàǫøšṁŤť]/);
      // Sheets of labels have the margins that are printed on their packing.
      const margin = LABELS.has(id) ? 0 : undefined;
      expect(faultsOf(bytes, plan, margin)).toEqual(NONE);
    },
    60_000,
  );

  test("layouts compared", async () => {
    const { comparePdf } = await madeUpModule<typeof Compare>("src/core/compare/compare-pdf.ts");
    const { checkLayouts } = await madeUpModule<typeof Checked>(
      "src/core/checks/checked-layout.ts",
    );
    const { plan } = planOf("garden-solved").input;
    const compared = checkLayouts(plan, plan.layouts);
    const settings = { paper: "A4", isOverlaid: false, printedAt: PRINTED_AT } as const;
    const { bytes } = await comparePdf(compared, settings, fonts);
    expect(faultsOf(bytes, "garden-solved")).toEqual(NONE);
  }, 60_000);

  test("isolation of harvested lots", async () => {
    const { lotIsolationPdf } = await madeUpModule<typeof LotIsolation>(
      "src/core/paper-set/lot-isolation-pages.ts",
    );
    const bytes = await lotIsolationPdf(planOf("garden-to-solve").input, null, PRINTED_AT, fonts);
    expect(faultsOf(bytes, "garden-to-solve")).toEqual(NONE);
  }, 60_000);
});

test("a word left in plain English is found, a name of the plan is not", () => {
  const names = nobodysWords('{"name":"Amber Lantern"}');
  expect(plainWords(`${madeUp("Plot list")}\nAmber\nLantern`, names)).toEqual([]);
  expect(plainWords(`Amber Lantern ${madeUp("in bed")} too close`, names)).toEqual([
    "too",
    "close",
  ]);
});
