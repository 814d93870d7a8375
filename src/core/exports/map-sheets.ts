/** Map sheets as pages: the drawing, what stands around it, and the panel beside or below. */
import type { FarSource } from "./far-sources.ts";
import { farSourceText } from "./far-sources.ts";
import { type NumberedWords, findingTitles } from "./finding-items.ts";
import { type FlowItem, flowInto, heading, paragraph } from "./flow.ts";
import { GRID_WORDS, keyItems } from "./key-items.ts";
import type { MapGrid } from "./map-grid.ts";
import type { MapContent, PlotMapInput } from "./map-items.ts";
import { TYPE_PT } from "./map-style.ts";
import { type PlotMapSettings, mapTitle, sheetText, stampText } from "./map-text.ts";
import { SEED_LAW } from "./note-items.ts";
import type { MapSheet, SheetPlan } from "./page-plan.ts";
import type { Page, TextRuler } from "./scene.ts";
import { barMarks, gridCrosses, gridEdgeMarks, headerMarks } from "./sheet-edges.ts";
import { type SheetDrawing, sheetDrawing } from "./sheet-drawing.ts";
import { sheetIndex } from "./sheet-index.ts";
import { sheetView } from "./sheet-view.ts";

/** What all sheets of one map share. */
export interface MapSet {
  readonly input: PlotMapInput;
  readonly settings: PlotMapSettings;
  readonly plan: SheetPlan;
  readonly content: MapContent;
  readonly grid: MapGrid;
  readonly numbered: readonly NumberedWords[];
  readonly far: readonly FarSource[];
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
  const key = panelKey(set, sheet, drawing);
  const panel = flowInto([...key, ...panelWords(set, drawing)], frame.panel);
  return {
    drawing,
    rest: panel.rest.filter((item) => item.name !== undefined && key.includes(item)),
    page: {
      ...frame.size,
      name: plan.rows * plan.columns > 1 ? `Map sheet ${sheet.number}` : "Map",
      marks: [
        {
          kind: "group",
          clip: frame.drawing,
          marks: [...gridCrosses(grid, view), ...drawing.marks],
        },
        ...gridEdgeMarks(grid, view),
        ...headerMarks(
          frame.header,
          mapTitle(input.plan),
          [stampText(input.plan, input.layout, set.settings), sheetText(input.plan, plan, sheet)],
          input.plan.site.upBearingDeg,
          ruler,
        ),
        ...barMarks(frame, plan.ratio, input.plan.units),
        ...panel.marks,
      ],
    },
  };
}

function panelWidth({ plan }: MapSet): number {
  return Math.min(...plan.frame.panel.map((column) => column.width));
}

/** Which sheet this is, and what is drawn on it. */
function panelKey(set: MapSet, sheet: MapSheet, drawing: SheetDrawing): readonly FlowItem[] {
  const { input, plan, ruler } = set;
  const width = panelWidth(set);
  return [
    ...(plan.rows * plan.columns === 1 ? [] : sheetIndex(plan, set.content, sheet, width, ruler)),
    ...keyItems(input.plan, input.book, drawing, width, ruler),
  ];
}

function panelWords(set: MapSet, drawing: SheetDrawing): readonly FlowItem[] {
  const { input, plan, ruler } = set;
  const width = panelWidth(set);
  const isOne = plan.rows * plan.columns === 1;
  const here = set.numbered.filter(
    ({ number, finding }) =>
      isOne || drawing.numbers.has(number) || isAbout(finding.subjects, drawing),
  );
  const safety = set.numbered.filter(({ finding }) => finding.check === "safety");
  return [
    paragraph(GRID_WORDS, width, TYPE_PT.small, ruler),
    ...safety.map(({ number, words }) =>
      paragraph(
        `Caution: ${words.title}. Read number ${number} in the notes.`,
        width,
        TYPE_PT.body,
        ruler,
        { isBold: true },
      ),
    ),
    ...(isPassedOn(input) ? [paragraph(SEED_LAW, width, TYPE_PT.small, ruler)] : []),
    ...findingTitles(input, here, width, ruler),
    ...(set.far.length > 0
      ? [
          heading("Pollen sources beyond the map", width, TYPE_PT.body, ruler),
          ...set.far.map((source) =>
            paragraph(farSourceText(source, input.plan.units), width, TYPE_PT.small, ruler),
          ),
        ]
      : []),
  ];
}

function isAbout(subjects: readonly string[], drawing: SheetDrawing): boolean {
  return [...drawing.visible].some((item) => subjects.includes(item.id));
}

/** Whether any seed is grown to be passed on or sold. */
function isPassedOn({ plan, layout }: PlotMapInput): boolean {
  return layout.plantings.some(
    (planting) => planting.purpose === "seed" && (planting.level ?? plan.level) !== "home",
  );
}
