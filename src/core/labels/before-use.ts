/** A page to be read and not stuck on: what found no room, and what the law may ask for. */
import { type FlowItem, flowInto, heading, paragraph } from "../page/flow.ts";
import type { Page, TextRuler } from "../page/scene.ts";
import type { LabelFacts } from "./label-facts.ts";
import type { LabelUse } from "./label-facts.ts";
import { beforeUseWords as words } from "./packet-words.ts";

/** Of a width and height that both A4 and Letter have. */
const PAGE = { widthMm: 210, heightMm: 279.4 };
const MARGIN_MM = 15;
const BODY_PT = 10;
const HEAD_PT = 13;

export interface Remarks {
  /** For each label with words that found no room: its head and those words. */
  readonly lost: readonly string[];
  /** Heads of labels on which the code for a machine found no room. */
  readonly withoutCode: readonly string[];
}

/** Remarks as they are said on the screen and on the command line too. */
export function remarkWords({ lost, withoutCode }: Remarks): readonly string[] {
  return [
    ...lost.map((each) => words.noRoom(each)),
    ...(withoutCode.length > 0 ? [words.noCode(withoutCode.join(", "))] : []),
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
  const body = (text: string) => paragraph(text, width, BODY_PT, ruler, { after: 2 });
  const head = (text: string) => heading(text, width, HEAD_PT, ruler);
  const said = remarkWords(remarks);
  const empty = labels.filter(({ missing }) => missing.length > 0);
  let waiting: readonly FlowItem[] = [
    ...(said.length > 0 ? [head(words.remarks), ...said.map(body)] : []),
    ...(use === "stakes"
      ? []
      : [
          head(words.selling),
          ...[...words.law, ...(use === "packets" ? [words.planned] : [])].map(body),
          ...(empty.length > 0 ? [head(words.stillEmpty)] : []),
          ...empty.map(({ head: name, missing }) => body(words.missing(name, missing.join(", ")))),
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
    pages.push({ ...PAGE, name: words.page, marks });
    waiting = rest;
  }
  return pages;
}
