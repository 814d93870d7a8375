/** Stake labels and seed packet labels as a PDF. */
import { type FlowItem, flowInto, heading, paragraph } from "../page/flow.ts";
import { type LabelFacts, packetLabels, stakeLabels } from "./label-facts.ts";
import { type LabelChoice, labelPages } from "./label-pages.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { mapTitle } from "../map/map-text.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { type PdfFonts, pdfWriter } from "../page/pdf-writer.ts";
import type { Page, TextRuler } from "../page/scene.ts";

export type LabelUse = "stakes" | "packets";

/** Throws a RangeError when there is nothing to label. */
export async function labelsPdf(
  input: CheckedLayout,
  use: LabelUse,
  choice: LabelChoice,
  printedAt: string,
  fonts: PdfFonts,
): Promise<Uint8Array> {
  const labels = use === "stakes" ? stakeLabels(input) : packetLabels(input, choice.treatment);
  if (labels.length === 0) {
    throw new RangeError(use === "stakes" ? "nothing is planted" : "nothing is kept for seed");
  }
  const writer = pdfWriter(`${mapTitle(input.plan)}: labels`, printedAt, fonts);
  const { pages, lost } = labelPages(labels, choice, writer.ruler);
  for (const page of pages) writer.addPage(page);
  if (use === "packets" || lost.length > 0) {
    for (const page of beforeUsePages(labels, use, lost, writer.ruler)) writer.addPage(page);
  }
  return writer.finish();
}

function stillEmpty(labels: readonly LabelFacts[]): readonly LabelFacts[] {
  return labels.filter(({ missing }) => missing.length > 0);
}

const PAGE = { widthMm: 210, heightMm: 279.4 };

/** Pages of their own, of a width and height both A4 and Letter have, to be read and not stuck on. */
function beforeUsePages(
  labels: readonly LabelFacts[],
  use: LabelUse,
  lost: readonly string[],
  ruler: TextRuler,
): readonly Page[] {
  const width = PAGE.widthMm - 30;
  const body = (words: string) => paragraph(words, width, TYPE_PT.code, ruler, { after: 2 });
  const head = (words: string) => heading(words, width, 13, ruler);
  let waiting: readonly FlowItem[] = [
    ...(lost.length > 0 ? [head("No room on the labels for these words"), ...lost.map(body)] : []),
    ...(use === "packets"
      ? [
          head("Before seed in these packets is given away or sold"),
          body(
            "These labels certify nothing. What a label must say differs by country and state: often kind and variety, lot, where it was grown, weight or count, germination with the month of the test, and any treatment. Ask the seed law of the place; it goes before anything printed here.",
          ),
          body(
            "The isolation on a label is the one planned, not the one achieved: strike it out where a cover tore, bloom shifted or another pollen source was found.",
          ),
          body(
            "Germination stands on a packet only where the lot of that very plot has been tested. United States, 7 CFR 201.29 to 201.31: packets up to a pound need germination, hard seed, month of the test and the words Below Standard, in 8 point or larger, when the test lies under the kind's standard; heavier ones always need germination, month of the test and lot. A test holds for 5 calendar months after its month, 24 in a hermetic pack. State law and that of other countries add to it or differ.",
          ),
          ...stillEmpty(labels)
            .map(({ head: name, missing }, index) =>
              index === 0
                ? [head("Still empty"), body(`${name}: ${missing.join(", ")}.`)]
                : [body(`${name}: ${missing.join(", ")}.`)],
            )
            .flat(),
        ]
      : []),
  ];
  const pages: Page[] = [];
  while (waiting.length > 0) {
    const { marks, rest } = flowInto(waiting, [
      { left: 15, top: 15, width, height: PAGE.heightMm - 30 },
    ]);
    pages.push({ ...PAGE, name: "Before use", marks });
    waiting = rest;
  }
  return pages;
}
