/** Room for words on the sheet: what is taken so far, and the ground words keep off. Pixels. */
import {
  type LabelBox,
  type Ring,
  boxOf,
  isInBox,
  isInRings,
  labelBox,
  labelsMeet,
  lineMeetsLabel,
  meetsRings,
  ringsContain,
  segmentsCross,
} from "../../core/page/label-box.ts";
import { outlineContains, shapeCentre } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { SheetItem } from "../scene/sheet-items.ts";
import { type Size, type View, toPx } from "../scene/viewport.ts";
import type { Box } from "./draw-text.ts";
import { type LabelSpot, type Placed, sharedBox } from "./label-boxes.ts";
import { widestCut } from "./label-place.ts";

export type Leader = readonly [Point, Point];

/** Words keep off single plants, which are drawn this large whatever the zoom. */
const POINT_PX = 11;
/** Side of a square of the net in which taken boxes are looked up. */
const CELL_PX = 48;
/** From the edge of the drawing. */
const EDGE_PX = 2;

export interface LabelRoom {
  readonly window: Box;
  /** In the drawing, and on no other words nor the line that leads to any. */
  readonly isFree: (label: LabelBox) => boolean;
  /** On no ground of others that counts: plantings always, beds and points where asked. */
  readonly isOff: (
    label: LabelBox,
    self: SheetItem | null,
    keep: "plantings" | "all ground",
  ) => boolean;
  /** On neither scale bar nor buttons. */
  readonly isOffFurniture: (label: LabelBox) => boolean;
  readonly isInside: (label: LabelBox, item: SheetItem) => boolean;
  /** Through no words, and across no other such line; where it may, out from under words as well. */
  readonly isClearLine: (line: Leader, mayCross: boolean) => boolean;
  readonly take: (label: LabelBox, leader?: Leader | null) => void;
}

/**
 * @param grounds what is drawn in the window
 * @param furniture boxes at the edges of the drawing that are always there
 */
export function labelRoom(
  view: View,
  { widthPx, heightPx }: Size,
  grounds: readonly SheetItem[],
  furniture: readonly Box[],
): LabelRoom {
  const window = {
    left: EDGE_PX,
    top: EDGE_PX,
    width: widthPx - EDGE_PX * 2,
    height: heightPx - EDGE_PX * 2,
  };
  const taken = net<LabelBox>();
  const leaders: Leader[] = [];
  const ringsOf = pixelRings(view);
  let known: ReturnType<typeof net<SheetItem>> | null = null;
  const ground = () => (known ??= groundNet(grounds, ringsOf, window));
  return {
    window,
    isFree: (label) =>
      isInBox(label, window) &&
      !taken.some(label.bounds, (other) => labelsMeet(label, other)) &&
      !leaders.some(([from, to]) => lineMeetsLabel(from, to, label)),
    isOff: (label, self, keep) =>
      !ground().some(label.bounds, (item) => {
        if (item.id === self?.id || !counts(item, self, keep)) return false;
        const { rings, box } = ringsOf(item);
        return meetsRings(label, rings, box);
      }),
    isOffFurniture: ({ bounds }) => !furniture.some((box) => sharedBox(box, bounds) !== null),
    isInside: (label, item) => isInRings(label, ringsOf(item).rings),
    isClearLine: (line, mayCross) =>
      !taken.some(
        boxOf(line),
        (other) =>
          lineMeetsLabel(...line, other) && !(mayCross && ringsContain([other.corners], line[0])),
      ) &&
      (mayCross || !leaders.some((other) => segmentsCross(...line, ...other))),
    take: (label, leader = null) => {
      taken.add(label, label.bounds);
      if (leader) leaders.push(leader);
    },
  };
}

function counts(
  item: SheetItem,
  self: SheetItem | null,
  keep: "plantings" | "all ground",
): boolean {
  if (item.what === "planting") return true;
  if (keep === "plantings") return false;
  // The bed a planting stands on is its own ground.
  return item.what !== "bed" || self?.what !== "planting" || self.planting.bed !== item.id;
}

/** Beds, plantings and single plants in the window. */
function groundNet(
  grounds: readonly SheetItem[],
  ringsOf: (item: SheetItem) => PixelRings,
  window: Box,
) {
  const ground = net<SheetItem>();
  for (const item of grounds) {
    const isMet = item.what !== "surrounding" || item.shape.shape === "point";
    const shared = isMet ? sharedBox(ringsOf(item).box, window) : null;
    if (shared) ground.add(item, shared);
  }
  return ground;
}

/** Things by the squares of a net they touch. */
function net<Thing>() {
  const cells = new Map<number, Thing[]>();
  const eachKey = ({ left, top, width, height }: Box, visit: (key: number) => boolean): boolean => {
    const [lastX, lastY] = [
      Math.floor((left + width) / CELL_PX),
      Math.floor((top + height) / CELL_PX),
    ];
    for (let x = Math.floor(left / CELL_PX); x <= lastX; x += 1) {
      for (let y = Math.floor(top / CELL_PX); y <= lastY; y += 1) {
        if (visit(x * 65_536 + y)) return true;
      }
    }
    return false;
  };
  return {
    some: (box: Box, isIt: (thing: Thing) => boolean): boolean =>
      eachKey(box, (key) => cells.get(key)?.some(isIt) === true),
    add: (thing: Thing, box: Box): void => {
      eachKey(box, (key) => {
        const cell = cells.get(key);
        if (cell) cell.push(thing);
        else cells.set(key, [thing]);
        return false;
      });
    },
  };
}

export interface PixelRings {
  readonly rings: readonly Ring[];
  readonly box: Box;
}

/** Outlines in pixels, each worked out once. */
function pixelRings(view: View): (item: SheetItem) => PixelRings {
  const known = new Map<string, PixelRings>();
  return (item) => {
    const found = known.get(item.id) ?? ringsInPixels(view, item);
    known.set(item.id, found);
    return found;
  };
}

/** Corners on the screen; a square about a point. */
export function ringsInPixels(view: View, { shape, outline }: Placed): PixelRings {
  if (shape.shape === "point") {
    const { x, y } = toPx(view, shape);
    const corners = [
      { x: x - POINT_PX, y: y - POINT_PX },
      { x: x + POINT_PX, y: y - POINT_PX },
      { x: x + POINT_PX, y: y + POINT_PX },
      { x: x - POINT_PX, y: y + POINT_PX },
    ];
    return { rings: [corners], box: boxOf(corners) };
  }
  const rings = outline.rings.map((ring) =>
    Array.from({ length: ring.length / 2 }, (_, index) =>
      toPx(view, { x: ring[index * 2] as number, y: ring[index * 2 + 1] as number }),
    ),
  );
  return { rings, box: boxOf(rings.flat()) };
}

/** A place on the ground, in the window and under no words, that a line can lead to. */
export function anchorOf(
  { shape, outline }: SheetItem,
  { view, seen }: LabelSpot,
  room: LabelRoom,
): Point | null {
  const inWindow = ({ x, y }: Point) =>
    x >= seen.left && x <= seen.left + seen.width && y >= seen.top && y <= seen.top + seen.height;
  const middle = { x: seen.left + seen.width / 2, y: seen.top + seen.height / 2 };
  const places = [
    toPx(view, shapeCentre(shape)),
    middle,
    ...[0.5, 0.25, 0.75, 0.1, 0.9].flatMap((share) => {
      const { minY, maxY } = outline.bounds;
      const cut = widestCut(outline, minY + (maxY - minY) * share);
      return cut ? [toPx(view, cut.middle)] : [];
    }),
  ];
  const isOn = (at: Point) =>
    shape.shape === "point" ||
    outlineContains(outline, (at.x - view.x) / view.scale, (view.y - at.y) / view.scale);
  const isBare = (at: Point) => room.isFree(labelBox(at, 4, 4, 0));
  const fit = places.filter((at) => inWindow(at) && isOn(at));
  return fit.find(isBare) ?? fit[0] ?? null;
}
