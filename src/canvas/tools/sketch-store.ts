/** What a tool draws over the sheet while it works. Places are in sheet metres. */
import { create } from "zustand";
import type { Point } from "../../core/geometry/point.ts";
import type { RectangleShape } from "../../core/model/plan.ts";
import type { Guide } from "../snap/guide.ts";
import type { SideGap } from "../snap/side-gaps.ts";

export interface Measurement {
  readonly from: Point;
  readonly to: Point;
  /** Measured to the edge of an object rather than between two places. */
  readonly isEdgeToEdge: boolean;
  /** Middles of the two objects, when both ends are objects. */
  readonly centres?: readonly [Point, Point];
  /** What was measured, such as "bed B01 to Amber Lantern". */
  readonly names?: string;
}

interface DraftAction {
  readonly label: string;
  /** The same in fewer words, for a phone. */
  readonly short?: string;
  readonly act: () => void;
}

/** What is being drawn or measured, in words, with what can be done next. */
export interface DraftBar {
  readonly text: string;
  /** Why it cannot be finished as it is; stays until it is mended. */
  readonly fault: string | null;
  readonly actions: readonly DraftAction[];
  /** What is to be drawn, where there is a choice. */
  readonly choice?: {
    readonly label: string;
    readonly value: string;
    readonly options: readonly { readonly value: string; readonly label: string }[];
    readonly pick: (value: string) => void;
  };
}

export interface Sketch {
  /** Box of a region selection: two opposite corners. */
  readonly region: readonly [Point, Point] | null;
  readonly guides: readonly Guide[];
  /** Distances to what lies around what is drawn or moved. */
  readonly gaps: readonly SideGap[];
  /** A bed being dragged out. */
  readonly rectangle: RectangleShape | null;
  /** An outline being clicked together, and where its next corner would be. */
  readonly corners: readonly Point[];
  readonly nextCorner: Point | null;
  /** What the next press would add where that is no straight side: an arc, or a whole circle. */
  readonly curve: readonly Point[];
  readonly measurement: Measurement | null;
  /** Bed a variety would be dropped on. */
  readonly dropBed: string | null;
  /** Words beside the pointer: a size, a distance moved, a turn. */
  readonly readout: { readonly at: Point; readonly text: string } | null;
  /** Whether plantings are on the move, so that distances that became clear are shown too. */
  readonly isMoving: boolean;
  readonly cursor: string | null;
  readonly bar: DraftBar | null;
}

const EMPTY: Sketch = {
  region: null,
  guides: [],
  gaps: [],
  rectangle: null,
  corners: [],
  nextCorner: null,
  curve: [],
  measurement: null,
  dropBed: null,
  readout: null,
  isMoving: false,
  cursor: null,
  bar: null,
};

export const useSketch = create<Sketch>()(() => EMPTY);

export function sketch(changes: Partial<Sketch>): void {
  useSketch.setState(changes);
}

/** A pointer's look and the bar are not on the sheet. */
const BESIDE_SHEET: ReadonlySet<string> = new Set(["cursor", "bar"]);

/** Whether no tool draws anything on the sheet now. */
export function isAtRest(now: Sketch): boolean {
  return Object.entries(EMPTY).every(([key, empty]) => {
    const drawn = now[key as keyof Sketch];
    return BESIDE_SHEET.has(key) || drawn === empty || (Array.isArray(drawn) && drawn.length === 0);
  });
}

/** Takes away what a gesture drew; a measurement and an outline begun stay, with their bar. */
export function endSketch(): void {
  const { measurement, corners, nextCorner, bar } = useSketch.getState();
  useSketch.setState({ ...EMPTY, measurement, corners, nextCorner, bar });
}
