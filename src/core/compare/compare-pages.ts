/** Layouts compared on paper: drawings at one ratio, the table of measures, differences in words. */
import { compareLayouts } from "./compare-layouts.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { countBySeverity } from "../checks/finding.ts";
import type { Layout } from "../model/plan.ts";
import { type ComparedContent, comparedContent, numberedDifferences } from "./compare-content.ts";
import { CAPTION_MM, type ComparePanes, MOST_ON_A_PAGE, comparePanes } from "./compare-panes.ts";
import { measureItems } from "./compare-table.ts";
import { comparedWords as words, differenceText } from "./compare-words.ts";
import { ratioText } from "../page/drawing-ratio.ts";
import { planRevision } from "../page/file-name.ts";
import { type FlowItem, cutToWidth, flowInto, heading, paragraph, space } from "../page/flow.ts";
import { keyItems } from "../map/key-items.ts";
import { flowPages, noteWidth, roomBelowHeader } from "../map/list-pages.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { mapTitle } from "../map/map-text.ts";
import { moveMarks } from "./move-marks.ts";
import type { PaperName } from "../page/paper.ts";
import {
  type Box,
  type Mark,
  type Page,
  type TextRuler,
  area,
  boxRing,
  text,
} from "../page/scene.ts";
import { type SheetDrawing, sheetDrawing } from "../map/sheet-drawing.ts";
import { barMarks, headerMarks } from "../map/sheet-edges.ts";
import { sheetView } from "../page/sheet-view.ts";
import { countWord } from "../words/deed-words.ts";
import { headerWords } from "../map/map-words.ts";

export interface ComparePrint {
  readonly paper: PaperName;
  /** The first layout is drawn under each of the others, and not by itself. */
  readonly isOverlaid: boolean;
  /** Printed as it is; core has no clock. */
  readonly printedAt: string;
}

/** The pages in parts that are made one after the other. */
export interface CompareScenes {
  readonly ratio: number;
  readonly parts: readonly (() => readonly Page[])[];
}

interface Pane {
  readonly checked: CheckedLayout;
  readonly against: Layout | null;
}

interface Drawn {
  readonly marks: readonly Mark[];
  readonly drawing: SheetDrawing;
  readonly pane: Pane;
}

interface Setting extends Pick<CheckedLayout, "plan" | "book"> {
  readonly compared: readonly CheckedLayout[];
  readonly print: ComparePrint;
  readonly panes: ComparePanes;
  readonly ruler: TextRuler;
}

/** @param compared two or more layouts of one plan; the others are held against the first */
export function comparePages(
  compared: readonly CheckedLayout[],
  print: ComparePrint,
  ruler: TextRuler,
): CompareScenes {
  const [first, ...others] = compared;
  if (!first || others.length === 0)
    throw new RangeError("There is one layout, nothing to compare");
  const drawnPanes: readonly Pane[] = [
    ...(print.isOverlaid ? [] : [{ checked: first, against: null }]),
    ...others.map((checked) => ({ checked, against: first.layout })),
  ];
  const { plan, book } = first;
  const layouts = compared.map(({ layout }) => layout);
  const panes = comparePanes(plan, layouts, drawnPanes.length, print.paper);
  const setting: Setting = { compared, plan, book, print, panes, ruler };
  const pageCount = Math.ceil(drawnPanes.length / MOST_ON_A_PAGE);
  const drawn: Drawn[] = [];
  const left: FlowItem[] = [];
  return {
    ratio: panes.ratio,
    parts: [
      ...Array.from({ length: pageCount }, (_, page) => () => {
        const from = page * MOST_ON_A_PAGE;
        const here = drawnPanes
          .slice(from, from + MOST_ON_A_PAGE)
          .map((pane, index) => drawnPane(setting, pane, panes.boxes[index] as Box));
        drawn.push(...here);
        const name = pageCount > 1 ? words.drawingsPage(page + 1, pageCount) : words.drawings;
        const { marks, rest } = panelMarks(setting, here);
        left.push(...rest.filter((item) => !left.some((other) => other.name === item.name)));
        return [drawingPage(setting, name, [...here.flatMap((each) => each.marks), ...marks])];
      }),
      () => wordPages(setting, drawn, left),
    ],
  };
}

function drawnPane(setting: Setting, pane: Pane, box: Box): Drawn {
  const { panes, print, ruler } = setting;
  const { checked, against } = pane;
  const shown = comparedContent(checked, against, print.isOverlaid);
  const sheet = { number: 1, row: 0, column: 0, window: panes.window };
  const sheets = { ...panes, rows: 1, columns: 1, whole: panes.window, sheets: [sheet] };
  const view = sheetView(panes.window, box, panes.ratio);
  const drawing = sheetDrawing(shown.content, sheets, sheet, view, ruler);
  const marks = [...drawing.marks, ...moveMarksOf(shown, view)];
  const { conflict } = countBySeverity(checked.result.findings);
  return {
    pane,
    drawing,
    marks: [
      { kind: "group", clip: box, marks },
      area(boxRing(box), null, { widthMm: 0.4 }),
      ...captionMarks(setting, pane, conflict, box),
    ],
  };
}

function moveMarksOf({ moves }: ComparedContent, view: ReturnType<typeof sheetView>) {
  return moves.flatMap(([from, to]) => moveMarks(view.toPage(from), view.toPage(to)));
}

function captionMarks(
  { plan, ruler, print }: Setting,
  { checked: { layout }, against }: Pane,
  conflicts: number,
  box: Box,
): readonly Mark[] {
  const name =
    against && print.isOverlaid ? words.overlaid(against.name, layout.name) : layout.name;
  const count = against ? numberedDifferences(against, layout).length : 0;
  const said = [
    conflicts === 0 ? words.noConflict : countWord(conflicts, "conflict"),
    ...(against ? [words.differsIn(against.name, count)] : []),
    headerWords.revision(planRevision(plan, layout)),
  ];
  const at = (fromBox: number) => ({ x: box.left, y: box.top - fromBox });
  const line = said.join("  ·  ");
  return [
    text(
      at(CAPTION_MM - 4.2),
      cutToWidth(name, box.width, TYPE_PT.code, ruler, true),
      TYPE_PT.code,
      {
        isBold: true,
      },
    ),
    text(at(1.6), cutToWidth(line, box.width, TYPE_PT.small, ruler), TYPE_PT.small),
  ];
}

/** Key of what the drawings of a page show; what finds no room goes before the words. */
function panelMarks({ plan, book, panes, ruler }: Setting, drawn: readonly Drawn[]) {
  const { panel } = panes.frame;
  const width = Math.min(...panel.map((column) => column.width));
  const styles = new Set(drawn.flatMap(({ drawing }) => [...drawing.styles]));
  const hatches = new Map(drawn.flatMap(({ drawing }) => [...drawing.hatches]));
  return flowInto(keyItems(plan, book, { styles, hatches }, width, ruler), panel);
}

function stampOf({ plan, print, panes }: Setting): string {
  const title = plan.title === plan.site.name ? [] : [plan.title];
  const ratio = headerWords.onPaper(ratioText(panes.ratio, plan.units), print.paper);
  return [...title, words.compared, ratio, headerWords.printed(print.printedAt)].join("  ·  ");
}

function drawingPage(setting: Setting, name: string, marks: readonly Mark[]): Page {
  const { plan, panes, ruler } = setting;
  const { frame, ratio } = panes;
  const lines = [stampOf(setting), panes.boxes.length > 1 ? words.oneRatio(name) : name];
  return {
    ...frame.size,
    name,
    marks: [
      ...headerMarks(frame.header, mapTitle(plan), lines, plan.site.upBearingDeg, ruler),
      ...marks,
      ...barMarks(frame, ratio, plan.units),
    ],
  };
}

function wordPages(
  setting: Setting,
  drawn: readonly Drawn[],
  restOfKey: readonly FlowItem[],
): readonly Page[] {
  const { plan, compared, panes, ruler } = setting;
  const comparison = compareLayouts(compared);
  const layouts = compared.map(({ layout }) => layout);
  const isWide = layouts.length > 3;
  const width = isWide ? roomBelowHeader(panes.frame).width : noteWidth(panes.frame);
  const body = (said: string) => paragraph(said, width, TYPE_PT.body, ruler);
  const title = (said: string) => heading(said, width, TYPE_PT.code, ruler);
  const [first, ...others] = layouts as [Layout, ...Layout[]];
  const hidden = drawn.flatMap(({ pane, drawing }) => unlabelled(pane, drawing));
  return flowPages(
    words.measuresAndDifferences,
    [
      ...(restOfKey.length > 0 ? [...restOfKey, space(3)] : []),
      title(words.measures),
      ...measureItems(comparison, plan.units, width, ruler),
      space(2),
      body(words.bold),
      space(3),
      ...others.flatMap((layout) => {
        const listed = numberedDifferences(first, layout);
        return [
          title(words.differs(layout.name, first.name)),
          ...(listed.length === 0 ? [body(words.inNothing)] : []),
          ...listed.map(({ number, difference }) =>
            body(`(${number}) ${differenceText(difference, plan)}`),
          ),
          space(2),
        ];
      }),
      ...(hidden.length > 0 ? [body(words.noRoom(hidden.join(", ")))] : []),
    ],
    { plan, frame: panes.frame, stamp: stampOf(setting), ruler },
    isWide ? 1 : 2,
  );
}

function unlabelled(
  { checked: { layout } }: Pane,
  { visible, labelled }: SheetDrawing,
): readonly string[] {
  return [...visible]
    .filter((item) => item.label !== "" && !labelled.has(item))
    .map((item) => words.labelOf(item.label, layout.name));
}
