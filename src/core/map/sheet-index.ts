/** On a map of several sheets: a small map of all of them, and where each meets its neighbours. */
import { type FlowItem, heading, paragraph } from "../page/flow.ts";
import type { LabelPlacer } from "../page/label-placer.ts";
import { labelBox } from "../page/label-box.ts";
import { cutNames, cutWords } from "./beyond-map.ts";
import type { MapContent, MapItem } from "./map-items.ts";
import { TYPE_PT } from "./map-style.ts";
import { type MapSheet, OVERLAP_MM, type SheetPlan, meets } from "./page-plan.ts";
import {
  type Box,
  type Mark,
  type PagePoint,
  type Pen,
  type TextRuler,
  area,
  boxRing,
  capHeight,
  line,
  text,
} from "../page/scene.ts";
import { type SheetView, sheetView } from "../page/sheet-view.ts";
import { keyWords } from "./map-words.ts";

const MOST_HIGH_MM = 34;

/** Room round a number in the small map, mm. */
const NUMBER_ROOM_MM = 0.8;

/**
 * The small map. Its lines are the joins of the sheets, so that each cell is the ground nearest to
 * its sheet's middle; the cell of the sheet it stands on is shaded, and that of a sheet that is not
 * printed crossed out. What stands around is dotted, on those as well. A number that its cell has no room for is left out: the line below says which sheet this is.
 */
export function sheetIndex(
  plan: SheetPlan,
  content: MapContent,
  here: MapSheet,
  widthMm: number,
  ruler: TextRuler,
): readonly FlowItem[] {
  const groundWidth = plan.whole.maxX - plan.whole.minX;
  const groundHeight = plan.whole.maxY - plan.whole.minY;
  const mmPerMetre = Math.min(widthMm / groundWidth, MOST_HIGH_MM / groundHeight);
  const size = { width: groundWidth * mmPerMetre, height: groundHeight * mmPerMetre };
  const cut = cutNames(content.items, plan);
  const words = [
    keyWords.shaded(here.number),
    ...(plan.sheets.length < plan.rows * plan.columns ? [keyWords.crossed] : []),
    ...(content.items.some((item) => isAround(item, plan)) ? [keyWords.around] : []),
    ...(cut.length > 0 ? [cutWords(cut)] : []),
  ];
  return [
    heading(keyWords.sheets, widthMm, TYPE_PT.body, ruler),
    {
      height: size.height + 1.5,
      draw: (left, top) =>
        indexMarks(
          plan,
          content,
          here,
          sheetView(plan.whole, { left, top, ...size }, 1000 / mmPerMetre),
          ruler,
        ),
    },
    paragraph(words.join(" "), widthMm, TYPE_PT.small, ruler, { after: 2 }),
  ];
}

function indexMarks(
  plan: SheetPlan,
  content: MapContent,
  here: MapSheet,
  view: SheetView,
  ruler: TextRuler,
): readonly Mark[] {
  const { box } = view;
  const beds = content.items.filter((item) => item.what === "bed" || item.what === "planting");
  const around = content.items.filter((item) => isAround(item, plan));
  const cells = Array.from({ length: plan.rows * plan.columns }, (_, index) => {
    const row = Math.floor(index / plan.columns);
    const column = index % plan.columns;
    const sheet = plan.sheets.find((each) => each.row === row && each.column === column);
    return { sheet, cell: indexCell(plan, row, column, box) };
  });
  return [
    ...cells.flatMap(({ sheet, cell }) =>
      sheet === here ? [area(boxRing(cell), SHADE, null)] : [],
    ),
    {
      kind: "group",
      clip: box,
      marks: around.map((item) => outlineMark(item, view, AROUND)),
    },
    ...beds.map((item) => outlineMark(item, view, { widthMm: 0.1 })),
    area(boxRing(box), null, { widthMm: 0.3 }),
    ...cells.flatMap(({ sheet, cell }) => [
      area(boxRing(cell), null, { widthMm: 0.2 }),
      ...(sheet ? [] : crossMarks(cell)),
    ]),
    ...cells.flatMap(({ sheet, cell }) =>
      sheet ? numberMarks(sheet, sheet === here, cell, ruler) : [],
    ),
  ];
}

const SHADE = 0.82;
const AROUND: Pen = { widthMm: 0.25, dashMm: [0.3, 0.6] };

/** A pollen source with ground of its own, in part on some sheet of the grid, printed or not. */
function isAround({ what, style, outline }: MapItem, { whole }: SheetPlan): boolean {
  return what === "surrounding" && style === "pollen" && meets(outline.bounds, whole);
}

function outlineMark(item: MapItem, view: SheetView, pen: Pen): Mark {
  return { kind: "area", rings: view.ringsOf(item.outline), fill: null, hatch: null, pen };
}

/**
 * Where a sheet is in the small map: its window up to the middle of each overlap, where the joins
 * are drawn on the sheets.
 * @param box of the small map
 */
export function indexCell(plan: SheetPlan, row: number, column: number, box: Box): Box {
  const { frame, rows, columns } = plan;
  const across = cellSpan(column, columns, frame.drawing.width);
  const down = cellSpan(row, rows, frame.drawing.height);
  return {
    left: box.left + across.from * box.width,
    top: box.top + down.from * box.height,
    width: (across.to - across.from) * box.width,
    height: (down.to - down.from) * box.height,
  };
}

/** Shares of all the sheets' length at which a cell begins and ends. */
function cellSpan(place: number, count: number, shownMm: number) {
  const step = shownMm - OVERLAP_MM;
  const whole = count * step + OVERLAP_MM;
  const edge = (at: number) => (at * step + OVERLAP_MM / 2) / whole;
  return { from: place === 0 ? 0 : edge(place), to: place === count - 1 ? 1 : edge(place + 1) };
}

function crossMarks({ left, top, width, height }: Box): readonly Mark[] {
  const pen = { widthMm: 0.1 };
  return [
    line(
      [
        { x: left, y: top },
        { x: left + width, y: top + height },
      ],
      pen,
    ),
    line(
      [
        { x: left + width, y: top },
        { x: left, y: top + height },
      ],
      pen,
    ),
  ];
}

/** A sheet's number in the middle of its cell, if it has room there. */
function numberMarks(
  sheet: MapSheet,
  isHere: boolean,
  cell: Box,
  ruler: TextRuler,
): readonly Mark[] {
  const words = String(sheet.number);
  const sizePt = TYPE_PT.least;
  const width = ruler.width(words, sizePt, true) + NUMBER_ROOM_MM;
  const height = capHeight(sizePt) + NUMBER_ROOM_MM;
  if (width > cell.width || height > cell.height) return [];
  const middle = { x: cell.left + cell.width / 2, y: cell.top + cell.height / 2 };
  const ground = { left: middle.x - width / 2, top: middle.y - height / 2, width, height };
  return [
    area(boxRing(ground), isHere ? SHADE : 1, null),
    text({ x: middle.x, y: middle.y + capHeight(sizePt) / 2 }, words, sizePt, {
      isBold: true,
      align: "middle",
    }),
  ];
}

interface SheetSide {
  /** Where the sheet beyond it lies from here. */
  readonly column: number;
  readonly row: number;
  /** Its join, in the middle of the overlap. */
  readonly from: PagePoint;
  readonly to: PagePoint;
}

function sheetSides(box: Box): readonly SheetSide[] {
  const half = OVERLAP_MM / 2;
  const right = box.left + box.width;
  const bottom = box.top + box.height;
  return [
    {
      column: -1,
      row: 0,
      from: { x: box.left + half, y: box.top },
      to: { x: box.left + half, y: bottom },
    },
    {
      column: 1,
      row: 0,
      from: { x: right - half, y: box.top },
      to: { x: right - half, y: bottom },
    },
    {
      column: 0,
      row: -1,
      from: { x: box.left, y: box.top + half },
      to: { x: right, y: box.top + half },
    },
    {
      column: 0,
      row: 1,
      from: { x: box.left, y: bottom - half },
      to: { x: right, y: bottom - half },
    },
  ];
}

/**
 * Dashed lines in the middle of each overlap, which lie on the same ground on both sheets, with
 * the neighbour's number.
 */
export function joinMarks(
  plan: SheetPlan,
  sheet: MapSheet,
  box: Box,
  placer: LabelPlacer,
  ruler: TextRuler,
): readonly Mark[] {
  return sheetSides(box).flatMap((side) => {
    const neighbour = plan.sheets.find(
      (other) => other.column === sheet.column + side.column && other.row === sheet.row + side.row,
    );
    return neighbour ? joinMark(side, keyWords.joins(neighbour.number), placer, ruler) : [];
  });
}

function joinMark(
  { row, from, to }: SheetSide,
  words: string,
  placer: LabelPlacer,
  ruler: TextRuler,
): readonly Mark[] {
  const turnDeg = row === 0 ? -90 : 0;
  const width = ruler.width(words, TYPE_PT.small) + 2;
  const height = capHeight(TYPE_PT.small) + 1.6;
  const label = placer.firstFree(
    [0.5, 0.25, 0.75, 0.1, 0.9].map((share) =>
      labelBox(
        { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share },
        width,
        height,
        turnDeg,
      ),
    ),
  );
  const drop = capHeight(TYPE_PT.small) / 2;
  return [
    line([from, to], { widthMm: 0.15, dashMm: [3, 1.5] }),
    ...(label
      ? [
          area(label.corners, 1, null),
          text(
            turnDeg === 0
              ? { x: label.centre.x, y: label.centre.y + drop }
              : { x: label.centre.x + drop, y: label.centre.y },
            words,
            TYPE_PT.small,
            { align: "middle", turnDeg },
          ),
        ]
      : []),
  ];
}
