/** A page to be read and not stuck on: what found no room, and what the law may ask for. */
import { type FlowItem, flowInto, heading, paragraph } from "../page/flow.ts";
import type { Page, TextRuler } from "../page/scene.ts";
import type { LabelFacts } from "./label-facts.ts";
import type { LabelUse } from "./label-use.ts";

/** Of a width and height that both A4 and Letter have. */
const PAGE = { widthMm: 210, heightMm: 279.4 };
const MARGIN_MM = 15;
const BODY_PT = 10;
const HEAD_PT = 13;

const LAW = [
  "These labels certify nothing. What a label must say differs by country and state: often kind and variety, lot, where it was grown, weight or count, germination with the month of the test, and any treatment. Ask the seed law of the place; it goes before anything printed here.",
  "Germination stands on a packet only where that very lot has been tested. United States, 7 CFR 201.29 to 201.31: packets up to a pound need germination, hard seed, month of the test and the words Below Standard, in 8 point or larger, when the test lies under the kind's standard; heavier ones always need germination, month of the test and lot. A test holds for 5 calendar months after its month, 24 in a hermetic pack. State law and that of other countries add to it or differ.",
];
const PLANNED =
  "The isolation on a label is the one planned, not the one achieved: strike it out where a cover tore, bloom shifted or another pollen source was found. The distances stand in the isolation report.";

export interface Remarks {
  /** For each label with words that found no room: its head and those words. */
  readonly lost: readonly string[];
  /** Heads of labels on which the code for a machine found no room. */
  readonly withoutCode: readonly string[];
}

/** Remarks as they are said on the screen and on the command line too. */
export function remarkWords({ lost, withoutCode }: Remarks): readonly string[] {
  return [
    ...lost.map((words) => `No room on the label for ${words}`),
    ...(withoutCode.length > 0
      ? [`No room for the code for a machine on: ${withoutCode.join(", ")}`]
      : []),
  ];
}

/** No pages where there is nothing to say. */
export function beforeUsePages(
  labels: readonly LabelFacts[],
  use: LabelUse,
  remarks: Remarks,
  ruler: TextRuler,
): readonly Page[] {
  const width = PAGE.widthMm - 2 * MARGIN_MM;
  const body = (words: string) => paragraph(words, width, BODY_PT, ruler, { after: 2 });
  const head = (words: string) => heading(words, width, HEAD_PT, ruler);
  const said = remarkWords(remarks);
  const empty = labels.filter(({ missing }) => missing.length > 0);
  let waiting: readonly FlowItem[] = [
    ...(said.length > 0 ? [head("Before these labels are used"), ...said.map(body)] : []),
    ...(use === "stakes"
      ? []
      : [
          head("Before seed in these packets is given away or sold"),
          ...[...LAW, ...(use === "packets" ? [PLANNED] : [])].map(body),
          ...(empty.length > 0 ? [head("Still empty")] : []),
          ...empty.map(({ head: name, missing }) => body(`${name}: ${missing.join(", ")}.`)),
        ]),
  ];
  const pages: Page[] = [];
  while (waiting.length > 0) {
    const box = {
      left: MARGIN_MM,
      top: MARGIN_MM,
      width,
      height: PAGE.heightMm - 2 * MARGIN_MM,
    };
    const { marks, rest } = flowInto(waiting, [box]);
    pages.push({ ...PAGE, name: "Before use", marks });
    waiting = rest;
  }
  return pages;
}
