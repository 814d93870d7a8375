/**
 * Finds room for the words of one map sheet. A label goes inside what it names; if it does not
 * fit, beside it; if there is no room, further off with a leader line. What was placed first stays.
 * Cost: places tried times the labels and grounds near by, a few thousand simple tests a label.
 */
import {
  type LabelBox,
  isInBox,
  isInRings,
  labelBox,
  labelEdge,
  labelsMeet,
  lineMeetsLabel,
  meetsRings,
  segmentsCross,
} from "./label-box.ts";
import {
  type Ground,
  type LabelSize,
  anchorsOf,
  around,
  besideBoxes,
  longestEdge,
  readableTurns,
} from "./label-places.ts";
import type { Box, PagePoint } from "./scene.ts";

export interface Placed {
  readonly label: LabelBox;
  /** From the named thing to the label's edge, when it lies apart. */
  readonly leader: readonly [PagePoint, PagePoint] | null;
}

export interface LabelPlacer {
  /** Level, or along the ground where that is nearer to level than to upright. */
  readonly inside: (ground: Ground, size: LabelSize) => Placed | null;
  /** Inside, read from the right. */
  readonly turned: (ground: Ground, size: LabelSize) => Placed | null;
  /** On the ground and over its edges, but on nobody else's planting; some of it stays to be seen. */
  readonly over: (ground: Ground, size: LabelSize) => Placed | null;
  readonly beside: (ground: Ground, size: LabelSize) => Placed | null;
  readonly apart: (ground: Ground, size: LabelSize) => Placed | null;
  /** Takes the first free of some boxes, off planted ground if there is one. */
  readonly firstFree: (candidates: readonly LabelBox[]) => LabelBox | null;
}

/** Of what a label lies in, at least this much is seen around it. */
const RIM_MM = 0.4;

/** What is taken on a page so far, and what else a label must keep off. */
interface LabelSpace {
  readonly box: Box;
  readonly isFree: (label: LabelBox) => boolean;
  /** Off every ground; unless strict, off planted ground and its own alone. */
  readonly isOff: (label: LabelBox, self: Ground, isStrict: boolean) => boolean;
  readonly isOnPlanted: (label: LabelBox, but?: Ground) => boolean;
  readonly isClearLine: (line: readonly [PagePoint, PagePoint]) => boolean;
  readonly take: (label: LabelBox, leader: Placed["leader"]) => Placed;
}

function labelSpace(box: Box, grounds: readonly Ground[]): LabelSpace {
  const taken: LabelBox[] = [];
  const leaders: (readonly [PagePoint, PagePoint])[] = [];
  const meets = (label: LabelBox, { rings, box: its }: Ground) => meetsRings(label, rings, its);
  return {
    box,
    isFree: (label) =>
      isInBox(label, box) &&
      !taken.some((other) => labelsMeet(label, other)) &&
      !leaders.some(([from, to]) => lineMeetsLabel(from, to, label)),
    isOff: (label, self, isStrict) =>
      !grounds.some(
        (ground) => (isStrict || ground.isPlanted || ground === self) && meets(label, ground),
      ),
    isOnPlanted: (label, but) =>
      grounds.some((ground) => ground !== but && ground.isPlanted && meets(label, ground)),
    isClearLine: (line) =>
      !taken.some((other) => lineMeetsLabel(...line, other)) &&
      !leaders.some((other) => segmentsCross(...line, ...other)),
    take: (label, leader) => {
      taken.push(label);
      if (leader) leaders.push(leader);
      return { label, leader };
    },
  };
}

export function labelPlacer(box: Box, grounds: readonly Ground[]): LabelPlacer {
  const space = labelSpace(box, grounds);
  return {
    firstFree: (candidates) => {
      const free = candidates.filter(space.isFree);
      const label = free.find((each) => !space.isOnPlanted(each)) ?? free[0];
      return label ? space.take(label, null).label : null;
    },
    inside: (ground, size) => placeInside(space, ground, size, readableTurns(ground).slice(0, 2)),
    turned: (ground, size) => placeInside(space, ground, size, readableTurns(ground).slice(2)),
    over: (ground, size) => placeOver(space, ground, size),
    beside: (ground, size) => {
      const candidates = besideBoxes(ground, size);
      for (const isStrict of [true, false]) {
        const label = candidates.find(
          (each) => space.isFree(each) && space.isOff(each, ground, isStrict),
        );
        if (label) return space.take(label, null);
      }
      return null;
    },
    apart: (ground, size) => placeApart(space, ground, size),
  };
}

function placeInside(
  { box, isFree, take }: LabelSpace,
  ground: Ground,
  { width, height }: LabelSize,
  turns: readonly number[],
): Placed | null {
  for (const turnDeg of turns) {
    for (const anchor of anchorsOf(ground, box)) {
      const label = labelBox(anchor, width, height, turnDeg);
      const withRim = labelBox(anchor, width + 2 * RIM_MM, height + 2 * RIM_MM, turnDeg);
      if (isFree(label) && isInRings(withRim, ground.rings)) return take(label, null);
    }
  }
  return null;
}

function placeOver(
  { box, isFree, isOnPlanted, take }: LabelSpace,
  ground: Ground,
  { width, height }: LabelSize,
): Placed | null {
  const [turnDeg] = readableTurns(ground);
  const isHidden = longestEdge(ground).length < width * 0.95;
  const anchor = anchorsOf(ground, box)[0];
  if (turnDeg === undefined || isHidden || !anchor) return null;
  const label = labelBox(anchor, width, height, turnDeg);
  return isFree(label) && !isOnPlanted(label, ground) ? take(label, null) : null;
}

/** Off every ground nearest to the thing named, else off planted ground; with a line to it. */
function placeApart(
  { box, isFree, isOff, isClearLine, take }: LabelSpace,
  ground: Ground,
  { width, height }: LabelSize,
): Placed | null {
  const anchor = anchorsOf(ground, box)[0];
  if (!anchor) return null;
  let onBed: Placed | null = null;
  for (const centre of around(anchor)) {
    const label = labelBox(centre, width, height, 0);
    if (!isFree(label) || !isOff(label, ground, false)) continue;
    const leader = [anchor, labelEdge(label, anchor)] as const;
    if (!isClearLine(leader)) continue;
    if (isOff(label, ground, true)) return take(label, leader);
    onBed ??= { label, leader };
  }
  return onBed && take(onBed.label, onBed.leader);
}
