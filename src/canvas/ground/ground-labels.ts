/**
 * Where the words of the ground's past stand: years of earlier crops on their ground, diseases beside
 * theirs. They come after the codes and names of this season and keep off them, off plantings and
 * off each other. Pure: the same ground, view and words give the same places. Pixels.
 */
import { type LabelBox, isInRings, labelBox } from "../../core/page/label-box.ts";
import type { Box } from "../draw/draw-text.ts";
import {
  type LabelSpot,
  type Placed,
  besideBoxes,
  insideBoxes,
  sharedBox,
} from "../draw/label-boxes.ts";
import { type LabelRoom, labelRoom, ringsInPixels } from "../draw/label-room.ts";
import type { SheetItem } from "../scene/sheet-items.ts";
import type { Size, View } from "../scene/viewport.ts";

export interface GroundNamed extends Placed {
  /** What it may be called, the fullest first. */
  readonly texts: readonly string[];
  /** Years are left out where they do not fit; a disease is always named. */
  readonly stands: "on its ground" | "beside its edge";
}

export interface GroundLabel {
  readonly text: string;
  readonly label: LabelBox;
}

export interface GroundLabelsWanted {
  readonly widthPx: (text: string) => number;
  /** What of this season is drawn: words keep off its plantings. */
  readonly items: readonly SheetItem[];
  /** Words that have their places. */
  readonly taken: readonly LabelBox[];
  /** Boxes at the edges of the drawing that are always there. */
  readonly furniture: readonly Box[];
}

const WORDS_PX = 14;
const SIDE_PX = 4;

/** A place for each, in the same order; null for what is out of sight or has no room. */
export function planGroundLabels(
  view: View,
  size: Size,
  named: readonly GroundNamed[],
  wanted: GroundLabelsWanted,
): readonly (GroundLabel | null)[] {
  const room = labelRoom(view, size, wanted.items, wanted.furniture);
  for (const label of wanted.taken) room.take(label);
  return named.map((ground) => {
    const found = placeOf(view, room, ground, wanted.widthPx);
    if (found) room.take(found.label);
    return found;
  });
}

function placeOf(
  view: View,
  room: LabelRoom,
  ground: GroundNamed,
  widthPx: (text: string) => number,
): GroundLabel | null {
  const { rings, box } = ringsInPixels(view, ground);
  const seen = sharedBox(box, room.window);
  if (!seen) return null;
  const isFree = (label: LabelBox) => room.isFree(label) && room.isOffFurniture(label);
  const isFit = (label: LabelBox) => isFree(label) && room.isOff(label, null, "plantings");
  const spotOf = (text: string): LabelSpot => ({
    view,
    seen,
    size: { width: widthPx(text) + SIDE_PX * 2, height: WORDS_PX },
  });
  const inside = (spot: LabelSpot) => insideBoxes(ground, spot, (label) => isInRings(label, rings));
  for (const text of ground.texts) {
    const spot = spotOf(text);
    const label =
      ground.stands === "on its ground"
        ? first(inside(spot), isFit)
        : (first(besideBoxes(ground, spot), isFit) ?? first(inside(spot), isFit));
    if (label) return { text, label };
  }
  const [text] = ground.texts.slice(-1);
  if (text === undefined || ground.stands === "on its ground") return null;
  const spot = spotOf(text);
  // Rather over a planting than not at all.
  const label =
    first(besideBoxes(ground, spot), isFree) ??
    first(inside(spot), isFree) ??
    first(besideBoxes(ground, spot), () => true) ??
    labelBox(middleOf(seen), spot.size.width, spot.size.height, 0);
  return { text, label };
}

function middleOf({ left, top, width, height }: Box) {
  return { x: left + width / 2, y: top + height / 2 };
}

function first(boxes: Iterable<LabelBox>, isFit: (box: LabelBox) => boolean): LabelBox | null {
  for (const box of boxes) if (isFit(box)) return box;
  return null;
}
