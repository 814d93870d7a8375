/** A bed on its card: to scale, near end at the left, with its plantings, rows and a ruler. */
import type { MapItem } from "../map/map-items.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { rowMarks, rowOneArrow } from "../map/row-marks.ts";
import { areaMarks } from "../map/sheet-drawing.ts";
import { northArrow } from "../map/sheet-edges.ts";
import type { LengthUnit } from "../model/length.ts";
import { longestRound, paperMm, ratioText, standardRatios } from "../page/drawing-ratio.ts";
import {
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
import type { BedAxes } from "./bed-axes.ts";

export interface BedDrawing {
  readonly height: number;
  readonly ratioWords: string;
  /** Too small to find anything on it. */
  readonly isTiny: boolean;
  readonly draw: (left: number, top: number) => readonly Mark[];
}

/** Room at the right for the needle of north. */
const NORTH_MM = 13;
/** A needle is at least so high. */
const NEEDLE_MM = 15;
const RULER_MM = 6;
const TINY_MM = 20;
/** Figures of the ruler are at least so far apart. */
const FIGURE_MM = 11;
const PEN: Pen = { widthMm: 0.25 };
const LABEL_PAD_MM = 0.7;

export interface DrawnBed {
  readonly axes: BedAxes;
  /** The bed first, then its plantings. */
  readonly items: readonly MapItem[];
  /** Codes of the plantings, by id. */
  readonly codes: ReadonlyMap<string, string>;
  readonly upBearingDeg: number;
  readonly unit: LengthUnit;
}

/** The finest standard ratio at which the bed goes into the room. */
export function bedDrawing(
  bed: DrawnBed,
  widthMm: number,
  mostHighMm: number,
  ruler: TextRuler,
): BedDrawing {
  const { axes, unit } = bed;
  const room = { width: widthMm - NORTH_MM, height: mostHighMm - RULER_MM };
  const ratios = standardRatios(unit);
  const ratio =
    ratios.find(
      (each) =>
        paperMm(axes.lengthM, each) <= room.width && paperMm(axes.widthM, each) <= room.height,
    ) ?? Math.max(axes.lengthM / room.width, axes.widthM / room.height) * 1000;
  const size = { width: paperMm(axes.lengthM, ratio), height: paperMm(axes.widthM, ratio) };
  return {
    height: Math.max(size.height + RULER_MM, NEEDLE_MM),
    isTiny: Math.max(size.width, size.height) < TINY_MM,
    ratioWords: ratioText(Number(ratio.toFixed(0)), unit),
    draw: (left, top) => [
      ...itemMarks(
        bed,
        (along, across) => ({
          x: left + paperMm(along, ratio),
          y: top + paperMm(across, ratio),
        }),
        ruler,
      ),
      ...bedRuler({ x: left, y: top + size.height }, axes.lengthM, ratio, unit),
      ...northArrow({ x: left + widthMm - 5, y: top + 8.4 }, axes.alongDeg + bed.upBearingDeg - 90),
    ],
  };
}

type Place = (along: number, across: number) => PagePoint;

function itemMarks(bed: DrawnBed, place: Place, ruler: TextRuler): readonly Mark[] {
  const drawn = bed.items.map((item) => ({ item, rings: ringsOn(item, bed.axes, place) }));
  return [
    ...drawn.flatMap(({ item, rings }) => areaMarks(item, rings)),
    ...drawn.flatMap(({ item, rings: [ring] }) =>
      item.rows && ring
        ? [
            ...rowMarks(item.rows.shape, item.rows.count, ring),
            ...rowOneArrow(item.rows.shape, item.rows.count, ring),
          ]
        : [],
    ),
    ...drawn.flatMap(({ item, rings: [ring = []] }) => {
      const code = bed.codes.get(item.id);
      return code === undefined ? [] : codeMarks(code, ring, ruler);
    }),
  ];
}

function ringsOn({ outline }: MapItem, axes: BedAxes, place: Place) {
  return outline.rings.map((ring) =>
    Array.from({ length: ring.length / 2 }, (_, index) => {
      const { x, y } = axes.of({ x: ring[index * 2] as number, y: ring[index * 2 + 1] as number });
      return place(x, y);
    }),
  );
}

/** In a white box in the middle; read from the right where it fits only so. */
function codeMarks(code: string, ring: readonly PagePoint[], ruler: TextRuler): readonly Mark[] {
  const xs = ring.map(({ x }) => x);
  const ys = ring.map(({ y }) => y);
  const [wide, high] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
  const centre = { x: Math.min(...xs) + wide / 2, y: Math.min(...ys) + high / 2 };
  for (const sizePt of [12, TYPE_PT.code, TYPE_PT.small, TYPE_PT.least]) {
    const width = ruler.width(code, sizePt, true) + 2 * LABEL_PAD_MM;
    const height = capHeight(sizePt) + 2 * LABEL_PAD_MM;
    for (const isTurned of [false, true]) {
      const [w, h] = isTurned ? [height, width] : [width, height];
      if (w > wide - 0.8 || h > high - 0.8) continue;
      const box = { left: centre.x - w / 2, top: centre.y - h / 2, width: w, height: h };
      const drop = capHeight(sizePt) / 2;
      const at = isTurned
        ? { x: centre.x + drop, y: centre.y }
        : { x: centre.x, y: centre.y + drop };
      return [
        area(boxRing(box), 1, { widthMm: 0.2 }),
        text(at, code, sizePt, { isBold: true, align: "middle", turnDeg: isTurned ? -90 : 0 }),
      ];
    }
  }
  return [];
}

/** Metres or feet from the near end. */
function bedRuler(
  at: PagePoint,
  lengthM: number,
  ratio: number,
  unit: LengthUnit,
): readonly Mark[] {
  const step = rulerStep(ratio, unit);
  const count = Math.floor(lengthM / step.metres + 1e-6);
  const y = at.y + 1.6;
  const figures = Array.from({ length: count + 1 }, (_, index) => {
    const x = at.x + paperMm(index * step.metres, ratio);
    const words = String(Number((index * step.count).toFixed(2)));
    const isLast = index === count;
    return [
      line(
        [
          { x, y },
          { x, y: y + 1.4 },
        ],
        PEN,
      ),
      text(
        { x, y: y + 1.8 + capHeight(TYPE_PT.least) },
        isLast && count > 0 ? `${words} ${unit}` : words,
        TYPE_PT.least,
        { align: index === 0 ? "left" : "middle" },
      ),
    ];
  }).flat();
  const end = at.x + paperMm(lengthM, ratio);
  return [
    line(
      [
        { x: at.x, y },
        { x: end, y },
      ],
      PEN,
    ),
    ...figures,
  ];
}

function rulerStep(ratio: number, unit: LengthUnit) {
  const least = longestRound(FIGURE_MM, ratio, unit);
  if (paperMm(least.metres, ratio) >= FIGURE_MM - 1e-6) return least;
  const first = String(least.count).replace(/[0.]/g, "");
  const factor = first === "2" ? 2.5 : 2;
  return { count: least.count * factor, metres: least.metres * factor };
}
