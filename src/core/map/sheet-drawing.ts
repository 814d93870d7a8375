/** The ground as one map sheet shows it: outlines, hatches, measured lines and their words. */
import { gapBetween } from "../geometry/gap.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Hatch } from "../page/hatch.ts";
import { groundMarks } from "./ground-marks.ts";
import { type Ring, boxOf } from "../page/label-box.ts";
import type { Ground } from "../page/label-places.ts";
import { labelPlacer } from "../page/label-placer.ts";
import type { MapContent, MapItem } from "./map-items.ts";
import { type StyleName, styles } from "./map-style.ts";
import { pictureMark } from "./picture-mark.ts";
import { type MapSheet, type SheetPlan, isPrintedAt } from "./page-plan.ts";
import { type Box, type Mark, type PagePoint, type TextRuler, area } from "../page/scene.ts";
import { rowMarks } from "./row-marks.ts";
import { stakeMarks, stakePlace } from "./stake-marks.ts";
import { LABEL_RULES, isHatchReadable, plantingLabels } from "./label-rules.ts";
import { placeLabels } from "./sheet-labels.ts";
import { measuredMarks } from "./measured-marks.ts";
import { joinMarks } from "./sheet-index.ts";
import type { SheetView } from "../page/sheet-view.ts";
import { styleWords } from "./map-words.ts";

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
  /** Of those, plantings whose variety stands with the code. */
  readonly named: ReadonlySet<MapItem>;
  /** Numbers of measured findings on this sheet. */
  readonly numbers: ReadonlySet<number>;
}

export function sheetDrawing(
  content: MapContent,
  plan: SheetPlan,
  sheet: MapSheet,
  view: SheetView,
  ruler: TextRuler,
): SheetDrawing {
  const shown = shownItems(content, sheet, view);
  const grounds = groundsToKeepOff(shown);
  const slivers = shown.filter(({ ground }) => isSliver(ground, view.box));
  const labelled = (what: MapItem["what"]) =>
    shown.filter(
      (each) => each.item.what === what && each.item.label !== "" && !slivers.includes(each),
    );
  // What must not be missed is placed first and so has the best place.
  const { placer, codes, joins } = plantingLabels(
    labelled("planting"),
    () => labelPlacer(view.box, grounds),
    (fresh) => joinMarks(plan, sheet, view.box, fresh, ruler),
    ruler,
  );
  const stakes = stakesIn(content, view);
  for (const { centre } of stakes) placer.firstFree([stakePlace(centre)]);
  const label = (what: "bed" | "surrounding" | "mark") =>
    placeLabels(labelled(what), placer, ruler, LABEL_RULES[what]);
  const isShown = (place: Point) => isPrintedAt(plan, place);
  const measured = measuredMarks(content.measured, isShown, view, placer, ruler);
  const [ills, beds, names] = [label("mark"), label("bed"), label("surrounding")];
  const rows = shown.flatMap(rowsOf);
  const whole = new Map(shown.map(({ item, original }) => [item, original]));
  const originals = (some: readonly MapItem[]) =>
    new Set(some.map((item) => whole.get(item) ?? item));
  return {
    marks: [
      ...(content.picture ? [pictureMark(content.picture, view)] : []),
      ...drawn(shown, false),
      ...rows,
      ...joins,
      ...measured.lines,
      ...drawn(shown, true),
      ...[names, beds, ills, codes].flatMap(({ marks }) => marks),
      ...measured.badges,
      ...stakes.flatMap(({ letter, centre }) => stakeMarks(letter, centre)),
    ],
    styles: new Set([
      ...shown.flatMap(({ item }) => (namesItself(item, names.placed) ? [] : [item.style])),
      ...extraStyles(measured.numbers.size > 0, rows.length > 0, stakes.length > 0),
    ]),
    hatches: hatchesOf(shown.map(({ item }) => item)),
    visible: originals(shown.map(({ item }) => item)),
    labelled: originals([
      ...[codes, ills, beds, names].flatMap(({ placed }) => placed),
      ...slivers.flatMap(namedElsewhere),
    ]),
    named: originals(codes.named),
    numbers: measured.numbers,
  };
}

/** Words keep off the ground of all but the site, and what is marked: others stand on it. */
function groundsToKeepOff(shown: readonly Shown[]): readonly Ground[] {
  return shown
    .filter(({ item }) => item.what !== "site" && item.what !== "mark")
    .map(({ ground }) => ground);
}

/** A line under the map says what its edge cuts. */
function namedElsewhere({ item }: Shown): readonly MapItem[] {
  return item.what === "surrounding" || item.what === "mark" ? [item] : [];
}

interface Shown {
  /** As drawn here. */
  readonly item: MapItem;
  readonly original: MapItem;
  readonly ground: Ground;
}

/** Outlines and hatches: of areas, or of the signs for points, which lie above all lines. */
function drawn(shown: readonly Shown[], isSymbol: boolean): readonly Mark[] {
  return shown
    .filter(({ ground }) => ground.isSymbol === isSymbol)
    .flatMap(({ item, ground }) => areaMarks(item, ground.rings));
}

function rowsOf({ item: { rows }, ground: { rings } }: Shown): readonly Mark[] {
  return rows && rings[0] ? rowMarks(rows.shape, rows.count, rings[0]) : [];
}

/** What of the content is on the sheet. */
function shownItems({ items }: MapContent, sheet: MapSheet, view: SheetView): readonly Shown[] {
  const window = windowOutline(sheet);
  return items
    .filter((item) => gapBetween(item.outline, window).distanceM === 0)
    .map((original) => {
      const ground = groundOf(original, view);
      return { item: withoutLostHatch(original, ground), original, ground };
    });
}

/** `West hedge` written on it needs no hedge in the key. */
function namesItself(item: MapItem, named: readonly MapItem[]): boolean {
  const isGround = item.what === "surrounding" && item.style !== "pollen" && item.style !== "point";
  return (
    isGround && named.includes(item) && item.label.toLowerCase().includes(styleWords[item.style])
  );
}

/** A hatch that cannot be read is left off; the kind stands in words by the code. */
function withoutLostHatch(item: MapItem, ground: Ground): MapItem {
  if (item.what !== "planting" || item.hatch === null || isHatchReadable(ground)) return item;
  return { ...item, hatch: null };
}

/** Of what the frame cuts, less than this is no ground to put a name on; mm. */
const SLIVER_MM = 3;

function isSliver({ box, isSymbol, isPlanted }: Ground, frame: Box): boolean {
  const across = overlapOf(box.left, box.width, frame.left, frame.width);
  const down = overlapOf(box.top, box.height, frame.top, frame.height);
  const isCut = across < box.width - 0.01 || down < box.height - 0.01;
  return isCut && !isSymbol && !isPlanted && Math.min(across, down) < SLIVER_MM;
}

function overlapOf(start: number, length: number, from: number, shown: number): number {
  return Math.min(start + length, from + shown) - Math.max(start, from);
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

/** What lies beneath these is seen. */
const SEEN_THROUGH: ReadonlySet<StyleName> = new Set(["site", "was", "disease"]);

/** Outline and hatch in the style of the item; also used by the key. */
export function areaMarks(
  { style, hatch }: Pick<MapItem, "style" | "hatch">,
  rings: readonly Ring[],
): readonly Mark[] {
  const { pen, isDouble, fill = 1 } = styles[style];
  const filled = SEEN_THROUGH.has(style) ? null : fill;
  const outer: Mark = { kind: "area", rings, fill: filled, hatch, pen };
  const inner: readonly Mark[] = isDouble
    ? rings.map((ring) => area(ring, null, { widthMm: pen.widthMm * 0.36, grey: 1 }))
    : [];
  return [outer, ...inner, ...groundMarks(style, rings[0] ?? [])];
}
