/** Map sheets as pages: the drawing, what stands around it, and the panel beside or below. */
import { describeFinding } from "../checks/all-checks.ts";
import { canHurt } from "../checks/safety.ts";
import { cutWords } from "./beyond-map.ts";
import type { FarSource } from "./far-sources.ts";
import { farSourceText } from "./far-sources.ts";
import { type NumberedWords, countText, findingTitles } from "./finding-items.ts";
import { type FlowItem, flowInto, heading, paragraph } from "../page/flow.ts";
import { keyItems } from "./key-items.ts";
import type { MapGrid } from "./map-grid.ts";
import type { MapContent } from "./map-items.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import { TYPE_PT } from "./map-style.ts";
import { type PlotMapSettings, mapTitle, sheetText, stampText } from "./map-text.ts";
import { plotKeyItems } from "./plot-key.ts";
import type { PlotRow } from "./plot-rows.ts";
import type { MapSheet, SheetPlan } from "./page-plan.ts";
import { fillPanel } from "../page/panel-fill.ts";
import { scaledMarks } from "../page/scaled-marks.ts";
import { type Box, type Page, type TextRuler, figure } from "../page/scene.ts";
import { ratioText } from "../page/drawing-ratio.ts";
import { barMarks, gridCrosses, gridEdgeMarks, headerMarks } from "./sheet-edges.ts";
import { type SheetDrawing, sheetDrawing } from "./sheet-drawing.ts";
import { sheetIndex } from "./sheet-index.ts";
import { sheetView } from "../page/sheet-view.ts";
import { keyWords, noteWords, sheetWords } from "./map-words.ts";

/** What all sheets of one map share. */
export interface MapSet {
  readonly input: CheckedLayout;
  readonly settings: PlotMapSettings;
  readonly plan: SheetPlan;
  readonly content: MapContent;
  readonly grid: MapGrid;
  readonly numbered: readonly NumberedWords[];
  /** In the order of the walk. */
  readonly rows: readonly PlotRow[];
  readonly far: readonly FarSource[];
  /** Names of what goes on beyond the map. */
  readonly cut: readonly string[];
  readonly ruler: TextRuler;
}

export interface MapSheetPage {
  readonly page: Page;
  readonly drawing: SheetDrawing;
  /** What of the key the panel had no room for; its words stand in the notes in any case. */
  readonly rest: readonly FlowItem[];
}

export function mapSheetPage(set: MapSet, sheet: MapSheet): MapSheetPage {
  const { input, plan, grid, ruler } = set;
  const { frame } = plan;
  const view = sheetView(sheet.window, frame.drawing, plan.ratio);
  const drawing = sheetDrawing(set.content, plan, sheet, view, ruler);
  const { panel, key } = panelOf(set, sheet, drawing);
  return {
    drawing,
    rest: panel.rest.filter((item) => item.name !== undefined && key.includes(item)),
    page: {
      ...frame.size,
      name: plan.rows * plan.columns > 1 ? sheetWords.mapSheet(sheet.number) : sheetWords.map,
      marks: [
        ...headerMarks(
          frame.header,
          mapTitle(input.plan),
          [stampText(input, set.settings), sheetText(input.plan, plan, sheet)],
          input.plan.site.upBearingDeg,
          ruler,
        ),
        ...figure(drawingWords(set, drawing), frame.drawing, [
          {
            kind: "group",
            clip: frame.drawing,
            marks: [...gridCrosses(grid, view), ...drawing.marks],
          },
        ]),
        ...gridEdgeMarks(grid, view),
        ...barMarks(frame, plan.ratio, input.plan.units),
        ...panel.marks,
      ],
    },
  };
}

/** The map in words: all that is on it stands in the plot list and the notes. */
function drawingWords({ plan, input }: MapSet, { visible }: SheetDrawing): string {
  const names = [...visible].map(({ label }) => label).filter((label) => label !== "");
  return [
    sheetWords.drawing(ratioText(plan.ratio, input.plan.units)),
    names.length === 0 ? sheetWords.empty : sheetWords.onIt(names.join(", ")),
    sheetWords.seeList,
  ].join(" ");
}

/** Rather than leave out the plots, all beside the map is set a little smaller. */
const PANEL_SHARES = [1, 0.96, 0.92, 0.88] as const;

/** With the plots beside the map where all of them, the key and the count of findings go in. */
function panelOf(set: MapSet, sheet: MapSheet, drawing: SheetDrawing) {
  const setAt = (share: number) => {
    const columns = enlarged(set.plan.frame.panel, share);
    const width = Math.min(...columns.map((column) => column.width));
    return { share, columns, words: panelWords(set, sheet, drawing, width) };
  };
  const isWhole = ({ words, columns }: ReturnType<typeof setAt>) => {
    const { safety, plots, key, before } = words;
    const must = [...safety, ...plots, ...key, ...before];
    return plots.length > 0 && flowInto(must, columns).rest.length === 0;
  };
  const whole = (isOneSheet(set) ? PANEL_SHARES : [1]).map(setAt).find(isWhole);
  const { share, columns, words } = whole ?? setAt(1);
  const { safety, plots, key, before, findings, between, sources } = words;
  const panel = fillPanel(
    [...safety, ...(whole ? plots : []), ...key, ...before, ...findings, ...between, ...sources],
    columns,
    (rest) => leftOut(set, words, rest, Math.min(...columns.map(({ width }) => width))),
  );
  const [{ left, top }] = columns as readonly [Box];
  return { panel: { ...panel, marks: scaledMarks(panel.marks, { x: left, y: top }, share) }, key };
}

/** Columns so much larger that marks set in them and made smaller fill the ones given. */
function enlarged(columns: readonly Box[], share: number): readonly Box[] {
  const from = columns[0]?.left ?? 0;
  return columns.map(({ left, top, width, height }) => ({
    left: from + (left - from) / share,
    top,
    width: width / share,
    height: height / share,
  }));
}

/** What the panel says, in this order. */
interface PanelWords {
  /** Which sheet this is, and what can hurt somebody: before all else, on every sheet. */
  readonly safety: readonly FlowItem[];
  readonly plots: readonly FlowItem[];
  /** What is drawn on the sheet. */
  readonly key: readonly FlowItem[];
  readonly before: readonly FlowItem[];
  readonly findings: readonly FlowItem[];
  readonly between: readonly FlowItem[];
  readonly sources: readonly FlowItem[];
}

function panelWords(
  set: MapSet,
  sheet: MapSheet,
  drawing: SheetDrawing,
  width: number,
): PanelWords {
  const { input, plan, ruler } = set;
  const isOne = isOneSheet(set);
  const here = set.numbered.filter(
    ({ number, finding }) =>
      isOne || drawing.numbers.has(number) || isAbout(finding.subjects, drawing),
  );
  const hurts = set.numbered.filter(({ finding }) => canHurt(finding));
  // The grower has accepted these; who holds the map may not know them.
  const known = input.result.accepted.filter(canHurt);
  const bold = (words: string) => paragraph(words, width, TYPE_PT.body, ruler, { isBold: true });
  const codes = new Set([...drawing.visible].map(({ id }) => id));
  const rows = set.rows.filter(({ id }) => codes.has(id));
  const checksItem = (isHead: boolean, words: string) =>
    isHead ? heading(words, width, TYPE_PT.body, ruler) : bold(words);
  const small = (words: string) => paragraph(words, width, TYPE_PT.small, ruler);
  return {
    safety: [
      ...hurts.map(({ number, words }) => bold(sheetWords.caution(words.title, number))),
      ...known.map((finding) =>
        bold(sheetWords.known(describeFinding(finding, wordingOf(input)).title)),
      ),
      ...(isOne ? [] : sheetIndex(plan, set.content, sheet, width, ruler)),
    ],
    plots: plotKeyItems(rows, width, ruler),
    key: [
      ...keyItems(input.plan, input.book, drawing, width, ruler),
      { ...small(keyWords.grid), name: keyWords.grid },
    ],
    before: [
      ...(isOne && set.cut.length > 0 ? [small(cutWords(set.cut))] : []),
      ...(isPassedOn(input) ? [small(noteWords.seedLaw)] : []),
      checksItem(here.length > 0, sheetWords.checks(countText(input.result.findings))),
    ],
    findings: findingTitles(here, width, ruler),
    between: [
      ...(set.numbered.length > 0 ? [small(sheetWords.allInNotes)] : []),
      ...(set.far.length > 0 ? [heading(sheetWords.beyond, width, TYPE_PT.body, ruler)] : []),
    ],
    sources: set.far.map((source) => small(farSourceText(source, input.plan.units))),
  };
}

/** What is said at the foot of a panel that had no room for the rest. */
function leftOut(
  set: MapSet,
  { key, before, findings, between, sources }: PanelWords,
  rest: readonly FlowItem[],
  width: number,
): readonly FlowItem[] {
  const count = (items: readonly FlowItem[]) => items.filter((item) => rest.includes(item)).length;
  const [lostFindings, lostSources] = [count(findings), count(sources)];
  const isSome = lostSources < sources.length;
  const isHeadingLost = before.some((item) => item.isHeading === true && rest.includes(item));
  const said = [
    ...(count(key) > 0 ? [sheetWords.keyInNotes] : []),
    ...(isHeadingLost ? [sheetWords.checksInNotes(countText(set.input.result.findings))] : []),
    ...(lostFindings > 0 && !isHeadingLost
      ? [(isOneSheet(set) ? sheetWords.moreInNotes : sheetWords.moreHereInNotes)(lostFindings)]
      : []),
    ...(lostFindings === 0 &&
    !isHeadingLost &&
    findings.length > 0 &&
    count(between.slice(0, 1)) > 0
      ? [sheetWords.allInNotes]
      : []),
    ...(lostSources > 0
      ? [(isSome ? sheetWords.moreBeyondInNotes : sheetWords.beyondInNotes)(lostSources)]
      : []),
  ];
  if (said.length === 0) return [];
  return [paragraph(said.join(" "), width, TYPE_PT.small, set.ruler, { isBold: true })];
}

function isOneSheet({ plan }: MapSet): boolean {
  return plan.rows * plan.columns === 1;
}

function isAbout(subjects: readonly string[], drawing: SheetDrawing): boolean {
  return [...drawing.visible].some((item) => subjects.includes(item.id));
}

/** Whether any seed is grown to be passed on or sold. */
function isPassedOn({ plan, layout }: CheckedLayout): boolean {
  return layout.plantings.some(
    (planting) => planting.purpose === "seed" && (planting.level ?? plan.level) !== "home",
  );
}
