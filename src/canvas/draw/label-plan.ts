/**
 * Where the words of a drawing stand: each code and name once, in the window, none on another. A
 * code stands on its ground; where it does not fit it is turned, set smaller, laid over a narrow
 * ground, or put beside it with a line. Codes of plantings come before those of beds, both before
 * names. Pure: the same items, view and widths give the same places.
 */
import type { Point } from "../../core/geometry/point.ts";
import { type LabelBox, labelBox, labelEdge } from "../../core/page/label-box.ts";
import type { BedItem, PlantingItem, SheetItem, SurroundingItem } from "../scene/sheet-items.ts";
import { type Size, type View, toPx } from "../scene/viewport.ts";
import type { Box } from "./draw-text.ts";
import {
  type LabelSpot,
  aroundBoxes,
  besideBoxes,
  endBoxes,
  insideBoxes,
  overBoxes,
  sharedBox,
} from "./label-boxes.ts";
import { type LabelRoom, type Leader, anchorOf, labelRoom } from "./label-room.ts";

/** How large words are set: height of their box and paper left and right of them at full size. */
export interface LabelSet {
  /** 1: the usual size of type. */
  readonly scale: number;
  readonly heightPx: number;
  readonly sidePx: number;
}

export interface SheetLabel {
  readonly id: string;
  readonly label: LabelBox;
  readonly set: LabelSet;
  /** From what is named to its words, where they stand apart. */
  readonly leader: Leader | null;
}

export interface LabelsWanted {
  /** What gets words and is kept clear of those of others, in drawing order. */
  readonly items: readonly SheetItem[];
  /** Width of an item's words and signs at full size; 0 for none. */
  readonly wordsPx: (item: SheetItem) => number;
  /** Where on ground it shares with another in turn a planting's code belongs; null: no matter. */
  readonly towardOf?: (item: PlantingItem) => Point | null;
  readonly furniture?: readonly Box[];
}

/** A roomy box with hatch around it, then close ones, ever smaller. */
const CODE_SETS: readonly (LabelSet & { readonly rimPx: number })[] = [
  { scale: 1, heightPx: 19, sidePx: 6, rimPx: 4 },
  { scale: 1, heightPx: 14, sidePx: 2.5, rimPx: 0 },
  { scale: 10 / 12, heightPx: 14, sidePx: 2.5, rimPx: 0 },
  { scale: 8.5 / 12, heightPx: 13, sidePx: 2, rimPx: 0 },
];
const BED_SETS: readonly LabelSet[] = [
  { scale: 1, heightPx: 13, sidePx: 1 },
  { scale: 10 / 12, heightPx: 13, sidePx: 1 },
];
const NAME_SETS: readonly LabelSet[] = [
  { scale: 1, heightPx: 16, sidePx: 1 },
  { scale: 10.5 / 13, heightPx: 15, sidePx: 1 },
];
/** A planting shorter than this on the screen, or seen less of, has no code. */
const CODED_FROM_PX = 5;
/** More codes than these are led to by lines only where nothing else serves: lines hide the plan. */
const LED_MOST = 16;
/**
 * With more codes than these waiting for a place, the view is too far off for codes: on ground
 * that is shorter than letters are high there are none, and no lines lead to a few of hundreds.
 */
const WAITING_MOST = 250;
const LEGIBLE_PX = 12;
/** After so many places tried for codes with lines, no more are: a frame must not wait for them. */
const TRIED_MOST = 8000;
const LED_REACH = { leastPx: 15, mostPx: 240 } as const;
/** A name stands along an edge that is at least this share of it. */
const NAMED_EDGE = 0.6;

interface Planner {
  readonly view: View;
  readonly room: LabelRoom;
  readonly wanted: LabelsWanted;
  readonly placed: Map<string, SheetLabel>;
  /** Places tried so far for codes with lines. */
  tried: number;
}

/** Places by the items' ids; an item that is hardly in view, or smaller than words help, has none. */
export function planLabels(
  view: View,
  size: Size,
  wanted: LabelsWanted,
): ReadonlyMap<string, SheetLabel> {
  const steps = labelSteps(view, size, wanted);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

/** The same, an item a step, for thousands between frames: to measure new words takes longest. */
export function* labelSteps(
  view: View,
  size: Size,
  wanted: LabelsWanted,
): Generator<void, ReadonlyMap<string, SheetLabel>> {
  const { items, furniture = [] } = wanted;
  const room = labelRoom(view, size, items, furniture);
  const planner = { view, room, wanted, placed: new Map<string, SheetLabel>(), tried: 0 };
  const shown: SheetItem[] = [];
  for (const item of items) {
    if (wanted.wordsPx(item) > 0 && seenPart(planner, item)) shown.push(item);
    yield;
  }
  const plantings = shown.filter((item) => item.what === "planting");
  for (const item of plantings) {
    placeInside(planner, item);
    yield;
  }
  for (const item of shown) if (item.what === "bed") placeBedCode(planner, item);
  yield;
  const waiting = plantings.filter(({ id }) => !planner.placed.has(id));
  for (const item of waiting) {
    if (waiting.length <= WAITING_MOST) placeNear(planner, item, waiting.length <= LED_MOST);
    else if (longestPx(item, view) >= LEGIBLE_PX) placeOver(planner, item, 0);
    yield;
  }
  for (const item of shown) if (item.what === "surrounding") placeName(planner, item);
  return planner.placed;
}

/** The part of the drawing an item's bounds take up; null when too little to write about. */
function seenPart({ view, room }: Planner, { shape, outline }: SheetItem): Box | null {
  const { minX, minY, maxX, maxY } = outline.bounds;
  const upper = toPx(view, { x: minX, y: maxY });
  const box = {
    left: upper.x,
    top: upper.y,
    width: (maxX - minX) * view.scale,
    height: (maxY - minY) * view.scale,
  };
  if (shape.shape === "point") return sharedBox({ ...box, width: 1, height: 1 }, room.window);
  const seen = sharedBox(box, room.window);
  return seen && Math.max(seen.width, seen.height) >= CODED_FROM_PX ? seen : null;
}

function spotOf(planner: Planner, item: SheetItem, set: LabelSet): LabelSpot | null {
  const seen = seenPart(planner, item);
  if (!seen) return null;
  const width = (Math.ceil(planner.wanted.wordsPx(item)) + set.sidePx * 2) * set.scale;
  return { view: planner.view, seen, size: { width, height: set.heightPx * set.scale } };
}

function take(
  { room, placed }: Planner,
  { id }: SheetItem,
  set: LabelSet,
  label: LabelBox,
  leader: Leader | null = null,
): true {
  room.take(label, leader);
  placed.set(id, { id, label, set, leader });
  return true;
}

function first(boxes: Iterable<LabelBox>, isFit: (box: LabelBox) => boolean): LabelBox | null {
  for (const box of boxes) if (isFit(box)) return box;
  return null;
}

function placeInside(planner: Planner, item: PlantingItem): void {
  const { room, wanted } = planner;
  const toward = wanted.towardOf?.(item) ?? null;
  for (const set of CODE_SETS) {
    const spot = spotOf(planner, item, set);
    if (!spot) return;
    const tall = { ...spot.size, height: spot.size.height + set.rimPx };
    const boxes = insideBoxes(item, { ...spot, size: tall }, (box) => room.isInside(box, item));
    const ordered = toward ? nearestFirst(boxes, toward) : boxes;
    const found = first(ordered, room.isFree);
    if (found) {
      const { centre, width, turnDeg } = found;
      take(planner, item, set, labelBox(centre, width, spot.size.height, turnDeg));
      return;
    }
  }
}

function nearestFirst(boxes: Iterable<LabelBox>, { x, y }: Point): readonly LabelBox[] {
  const away = ({ centre }: LabelBox) => Math.hypot(centre.x - x, centre.y - y);
  return [...boxes].sort((a, b) => away(a) - away(b));
}

/** Beside an end, off all other ground where that can be; else on the bed, off what is planted. */
function placeBedCode(planner: Planner, item: BedItem): void {
  const { room, wanted, view } = planner;
  const { minX, minY, maxX, maxY } = item.outline.bounds;
  const longPx = Math.max(maxX - minX, maxY - minY) * view.scale;
  for (const set of BED_SETS) {
    const spot = spotOf(planner, item, set);
    if (!spot || longPx < wanted.wordsPx(item) * set.scale) continue;
    for (const keep of ["all ground", "plantings"] as const) {
      const isFit = (box: LabelBox) =>
        room.isFree(box) && room.isOffFurniture(box) && room.isOff(box, item, keep);
      const found =
        first(endBoxes(item, spot), isFit) ??
        first(
          insideBoxes(item, spot, (box) => room.isInside(box, item)),
          isFit,
        );
      if (found) {
        take(planner, item, set, found);
        return;
      }
    }
  }
}

/** Over ground too narrow for it, of which enough stays in sight; else beside it with a line. */
function placeNear(planner: Planner, item: PlantingItem, isLed: boolean): void {
  if (placeOver(planner, item, 1.25)) return;
  const sets = CODE_SETS.slice(1);
  if (isLed && sets.some((set) => placeLed(planner, item, set))) return;
  // Rather a code that hides its ground than none, then one whose line crosses others.
  if (placeOver(planner, item, 0)) return;
  const [smallest] = sets.slice(-1);
  if (!smallest || placeLed(planner, item, smallest, "lines")) return;
  placeLed(planner, item, smallest, "lines and plantings");
}

function longestPx({ shape, outline: { bounds } }: SheetItem, { scale }: View): number {
  if (shape.shape === "rectangle") return Math.max(shape.widthM, shape.lengthM) * scale;
  return Math.max(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY) * scale;
}

/** @param share of the words' length the ground must have to be seen past them */
function placeOver(planner: Planner, item: PlantingItem, share: number): boolean {
  const { room, view } = planner;
  const longPx = longestPx(item, view);
  for (const set of CODE_SETS.slice(1)) {
    const spot = spotOf(planner, item, set);
    if (!spot || longPx < spot.size.width * share) continue;
    const isFit = (box: LabelBox) => room.isFree(box) && room.isOff(box, item, "plantings");
    const found = first(overBoxes(item, spot), isFit);
    if (found) return take(planner, item, set, found);
  }
  return false;
}

/** @param mayCross what words and line may lie on where there is no room else */
function placeLed(
  planner: Planner,
  item: SheetItem,
  set: LabelSet,
  mayCross: "nothing" | "lines" | "lines and plantings" = "nothing",
): boolean {
  const { room } = planner;
  const spot = spotOf(planner, item, set);
  const from = spot && anchorOf(item, spot, room);
  if (!spot || !from) return false;
  let onBed: { readonly box: LabelBox; readonly leader: Leader } | null = null;
  for (const box of aroundBoxes(from, spot.size, LED_REACH)) {
    planner.tried += 1;
    if (planner.tried > TRIED_MOST) return false;
    if (!room.isFree(box) || !room.isOffFurniture(box)) continue;
    if (mayCross !== "lines and plantings" && !room.isOff(box, item, "plantings")) continue;
    const leader = [from, labelEdge(box, from)] as const;
    if (!room.isClearLine(leader, mayCross !== "nothing")) continue;
    if (room.isOff(box, item, "all ground")) return take(planner, item, set, box, leader);
    onBed ??= { box, leader };
  }
  return onBed !== null && take(planner, item, set, onBed.box, onBed.leader);
}

/** In its area or along an edge, off beds and plantings; a pollen source's name is not left out. */
function placeName(planner: Planner, item: SurroundingItem): void {
  const { room } = planner;
  const { what } = item.surrounding;
  // Inside, the words would stand on the trunk, the posts or the arrow.
  const isOpen = what !== "hedge" && what !== "tree" && what !== "fence" && what !== "slope";
  const isAlways = what === "pollen" || what === "tree";
  for (const set of NAME_SETS) {
    const spot = spotOf(planner, item, set);
    if (!spot) return;
    const isFit = (box: LabelBox) =>
      room.isFree(box) && room.isOffFurniture(box) && room.isOff(box, item, "all ground");
    const inside = isOpen ? [...insideBoxes(item, spot, (box) => room.isInside(box, item))] : [];
    const isFlat = ({ turnDeg }: LabelBox) => Math.abs(turnDeg) <= 45;
    const leastPx = isAlways ? 0 : spot.size.width * NAMED_EDGE;
    const found =
      first(inside.filter(isFlat), isFit) ??
      first(besideBoxes(item, spot, leastPx), isFit) ??
      first(inside, isFit);
    if (found) {
      take(planner, item, set, found);
      return;
    }
  }
  if (isAlways) placeLed(planner, item, NAME_SETS[1] as LabelSet);
}
