/** On a map of several sheets: a small map of all of them, and where each meets its neighbours. */
import { type FlowItem, heading } from "./flow.ts";
import type { LabelPlacer } from "./label-placer.ts";
import { labelBox } from "./label-box.ts";
import type { MapContent } from "./map-items.ts";
import { TYPE_PT } from "./map-style.ts";
import type { MapSheet, SheetPlan } from "./page-plan.ts";
import {
  type Box,
  type Mark,
  type TextRuler,
  area,
  boxRing,
  capHeight,
  line,
  text,
} from "./scene.ts";
import { sheetView } from "./sheet-view.ts";

const MOST_HIGH_MM = 34;

/** The small map; the sheet it stands on is shaded. Empty sheets have no number. */
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
  return [
    heading("Sheets", widthMm, TYPE_PT.body, ruler),
    {
      height: size.height + 4,
      draw: (left, top) =>
        indexMarks(plan, content, here, { left, top, ...size }, 1000 / mmPerMetre),
    },
  ];
}

function indexMarks(
  plan: SheetPlan,
  content: MapContent,
  here: MapSheet,
  box: Box,
  ratio: number,
): readonly Mark[] {
  const view = sheetView(plan.whole, box, ratio);
  const cell = (sheet: Pick<MapSheet, "row" | "column">): Box => ({
    left: box.left + (sheet.column * box.width) / plan.columns,
    top: box.top + (sheet.row * box.height) / plan.rows,
    width: box.width / plan.columns,
    height: box.height / plan.rows,
  });
  const beds = content.items.filter((item) => item.what === "bed" || item.what === "planting");
  return [
    area(boxRing(cell(here)), 0.82, null),
    ...beds.map((item): Mark => ({
      kind: "area",
      rings: view.ringsOf(item.outline),
      fill: null,
      hatch: null,
      pen: { widthMm: 0.1 },
    })),
    area(boxRing(box), null, { widthMm: 0.3 }),
    ...plan.sheets.flatMap((sheet) => {
      const { left, top, width, height } = cell(sheet);
      const middle = { x: left + width / 2, y: top + height / 2 + capHeight(TYPE_PT.small) / 2 };
      return [
        area(boxRing({ left, top, width, height }), null, { widthMm: 0.2 }),
        area(
          boxRing({ left: middle.x - 2, top: middle.y - 3.2, width: 4, height: 4.4 }),
          sheet === here ? 0.82 : 1,
          null,
        ),
        text(middle, String(sheet.number), TYPE_PT.small, { isBold: true, align: "middle" }),
      ];
    }),
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
  overlapMm: number,
  placer: LabelPlacer,
  ruler: TextRuler,
): readonly Mark[] {
  const half = overlapMm / 2;
  const right = box.left + box.width;
  const bottom = box.top + box.height;
  const sides = [
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
  return sides.flatMap(({ column, row, from, to }) => {
    const neighbour = plan.sheets.find(
      (other) => other.column === sheet.column + column && other.row === sheet.row + row,
    );
    if (!neighbour) return [];
    const words = `sheet ${neighbour.number}`;
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
  });
}
