/** The ground as one map sheet shows it: outlines, hatches, measured lines and their words. */
import { gapBetween } from "../geometry/gap.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type { Hatch } from "../page/hatch.ts";
import { groundMarks } from "./ground-marks.ts";
import { type Ring, boxOf } from "../page/label-box.ts";
import type { Ground } from "../page/label-places.ts";
import { labelPlacer } from "../page/label-placer.ts";
import type { MapContent, MapItem } from "./map-items.ts";
import { type StyleName, TYPE_PT, styles } from "./map-style.ts";
import { pictureMark } from "./picture-mark.ts";
import type { MapSheet, SheetPlan } from "./page-plan.ts";
import { type Box, type Mark, type PagePoint, type TextRuler, area } from "../page/scene.ts";
import { rowMarks } from "./row-marks.ts";
import { stakeMarks } from "./stake-marks.ts";
import { type LabelRule, placeLabels } from "./sheet-labels.ts";
import { measuredMarks } from "./measured-marks.ts";
import { joinMarks } from "./sheet-index.ts";
import type { SheetView } from "../page/sheet-view.ts";

/** Radius of the sign for a point, mm. */
const SYMBOL_MM = 2.6;
const SYMBOL_CORNERS = 24;

export interface SheetDrawing {
  /** To be clipped to the drawing's box. */
  readonly marks: readonly Mark[];
  readonly styles: ReadonlySet<StyleName>;
  /** Hatch of each crossing group drawn. */
  readonly hatches: ReadonlyMap<string, Hatch>;
  /** Items on this sheet, wholly or in part. */
  readonly visible: ReadonlySet<MapItem>;
  /** Items whose words are on this sheet. */
  readonly labelled: ReadonlySet<MapItem>;
  /** Numbers of measured findings on this sheet. */
  readonly numbers: ReadonlySet<number>;
}

const { code, small, least } = TYPE_PT;

/** A code is rather turned than set small, and rather set small than put elsewhere. */
const LABEL_RULES = {
  planting: {
    isBoxed: true,
    tries: [
      { place: "inside", sizesPt: [code, 9, small] },
      { place: "turned", sizesPt: [code, 9, small] },
      { place: "inside", sizesPt: [least] },
      { place: "turned", sizesPt: [least] },
      { place: "over", sizesPt: [9, small, least] },
      { place: "apart", sizesPt: [small, least] },
    ],
  },
  bed: {
    isBoxed: false,
    tries: [
      { place: "beside", sizesPt: [small, least] },
      { place: "inside", sizesPt: [small, least] },
      { place: "apart", sizesPt: [small, least] },
    ],
  },
  surrounding: {
    isBoxed: false,
    tries: [
      { place: "inside", sizesPt: [small] },
      { place: "turned", sizesPt: [small] },
      { place: "beside", sizesPt: [small, least] },
      { place: "apart", sizesPt: [small, least] },
    ],
  },
} as const satisfies Readonly<Record<string, LabelRule>>;

export function sheetDrawing(
  content: MapContent,
  plan: SheetPlan,
  sheet: MapSheet,
  view: SheetView,
  ruler: TextRuler,
): SheetDrawing {
  const window = windowOutline(sheet);
  const shown = content.items
    .filter((item) => gapBetween(item.outline, window).distanceM === 0)
    .map((item) => ({ item, ground: groundOf(item, view) }));
  const drawAll = (isSymbol: boolean) =>
    shown
      .filter(({ ground }) => ground.isSymbol === isSymbol)
      .flatMap(({ item, ground }) => areaMarks(item, ground.rings));
  const placer = labelPlacer(
    view.box,
    shown.filter(({ item }) => item.what !== "site").map(({ ground }) => ground),
  );
  const label = (what: keyof typeof LABEL_RULES) =>
    placeLabels(
      shown.filter(({ item }) => item.what === what && item.label !== ""),
      placer,
      ruler,
      LABEL_RULES[what],
    );
  // What must not be missed is placed first and so has the best place.
  const joins = joinMarks(plan, sheet, view.box, placer, ruler);
  const codes = label("planting");
  const measured = measuredMarks(content.measured, plan.whole, view, placer, ruler);
  const beds = label("bed");
  const names = label("surrounding");
  const rows = shown.flatMap(({ item, ground }) =>
    item.rows && ground.rings[0] ? rowMarks(item.rows.shape, item.rows.count, ground.rings[0]) : [],
  );
  const stakes = stakesIn(content, view);
  return {
    marks: [
      ...(content.picture ? [pictureMark(content.picture, view)] : []),
      ...drawAll(false),
      ...rows,
      ...joins,
      ...measured.lines,
      ...drawAll(true),
      ...names.marks,
      ...beds.marks,
      ...codes.marks,
      ...measured.badges,
      ...stakes.flatMap(({ letter, centre }) => stakeMarks(letter, centre)),
    ],
    styles: new Set([
      ...shown.map(({ item }) => item.style),
      ...extraStyles(measured.numbers.size > 0, rows.length > 0, stakes.length > 0),
    ]),
    hatches: hatchesOf(shown.map(({ item }) => item)),
    visible: new Set(shown.map(({ item }) => item)),
    labelled: new Set([...codes.placed, ...beds.placed, ...names.placed]),
    numbers: measured.numbers,
  };
}

function hatchesOf(items: readonly MapItem[]): SheetDrawing["hatches"] {
  return new Map(
    items.flatMap(({ group, hatch }) => (group && hatch ? [[group, hatch] as const] : [])),
  );
}

/** A stake nearer to the edge would be cut. */
const STAKE_ROOM_MM = 2;

function extraStyles(hasMeasured: boolean, hasRows: boolean, hasStakes: boolean) {
  const extra: readonly (readonly [StyleName, boolean])[] = [
    ["measure", hasMeasured],
    ["rows", hasRows],
    ["stake", hasStakes],
  ];
  return extra.flatMap(([style, isDrawn]) => (isDrawn ? style : []));
}

function stakesIn({ stakes }: MapContent, { box, toPage }: SheetView) {
  return stakes
    .map(({ letter, place }) => ({ letter, centre: toPage(place) }))
    .filter(({ centre }) => isInside(centre, box));
}

function isInside({ x, y }: PagePoint, { left, top, width, height }: Box): boolean {
  return (
    x > left + STAKE_ROOM_MM &&
    x < left + width - 3 * STAKE_ROOM_MM &&
    y > top + STAKE_ROOM_MM &&
    y < top + height - STAKE_ROOM_MM
  );
}

function windowOutline({ window }: MapSheet): Outline {
  return outlineOf({
    shape: "rectangle",
    x: (window.minX + window.maxX) / 2,
    y: (window.minY + window.maxY) / 2,
    widthM: window.maxX - window.minX,
    lengthM: window.maxY - window.minY,
    turnDeg: 0,
  });
}

function groundOf(item: MapItem, view: SheetView): Ground {
  const rings = item.outline.hasInside ? view.ringsOf(item.outline) : [symbolRing(item, view)];
  return {
    id: item.id,
    rings,
    box: boxOf(rings[0] as Ring),
    isPlanted: item.what === "planting",
    isSymbol: !item.outline.hasInside,
  };
}

/** A point has no size: it is drawn as a sign, the same at every ratio. */
function symbolRing({ outline }: MapItem, view: SheetView): Ring {
  return signRing(view.toPage({ x: outline.bounds.minX, y: outline.bounds.minY }));
}

/** The sign for a point. */
export function signRing({ x, y }: PagePoint): Ring {
  return Array.from({ length: SYMBOL_CORNERS }, (_, index) => {
    const angle = (index * 2 * Math.PI) / SYMBOL_CORNERS;
    return { x: x + SYMBOL_MM * Math.cos(angle), y: y + SYMBOL_MM * Math.sin(angle) };
  });
}

/** Outline and hatch in the style of the item; also used by the key. */
export function areaMarks(
  { style, hatch }: Pick<MapItem, "style" | "hatch">,
  rings: readonly Ring[],
): readonly Mark[] {
  const { pen, isDouble } = styles[style];
  const filled = style === "site" || style === "path" || style === "was" ? null : 1;
  const outer: Mark = { kind: "area", rings, fill: filled, hatch, pen };
  const inner: readonly Mark[] = isDouble
    ? rings.map((ring) => area(ring, null, { widthMm: pen.widthMm * 0.36, grey: 1 }))
    : [];
  return [outer, ...inner, ...groundMarks(style, rings[0] ?? [])];
}
