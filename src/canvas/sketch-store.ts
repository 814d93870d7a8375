/** What a tool draws over the sheet while it works. Places are in sheet metres. */
import { create } from "zustand";
import type { Point } from "../core/geometry/point.ts";
import type { RectangleShape } from "../core/model/plan.ts";

/** A line something has snapped to, and what it is. */
export interface Guide {
  readonly from: Point;
  readonly to: Point;
  readonly label: string;
}

export interface Measurement {
  readonly from: Point;
  readonly to: Point;
  /** Measured between the edges of two objects rather than between two places. */
  readonly isEdgeToEdge: boolean;
}

export interface Sketch {
  /** Box of a region selection: two opposite corners. */
  readonly region: readonly [Point, Point] | null;
  readonly guides: readonly Guide[];
  /** A bed being dragged out. */
  readonly rectangle: RectangleShape | null;
  /** An outline being clicked together, and where its next corner would be. */
  readonly corners: readonly Point[];
  readonly nextCorner: Point | null;
  readonly measurement: Measurement | null;
  /** Bed a variety would be dropped on. */
  readonly dropBed: string | null;
  /** Words beside the pointer: a size, a distance moved, a turn. */
  readonly readout: { readonly at: Point; readonly text: string } | null;
  /** Whether plantings are on the move, so that distances that became clear are shown too. */
  readonly isMoving: boolean;
  readonly cursor: string | null;
}

const EMPTY: Sketch = {
  region: null,
  guides: [],
  rectangle: null,
  corners: [],
  nextCorner: null,
  measurement: null,
  dropBed: null,
  readout: null,
  isMoving: false,
  cursor: null,
};

export const useSketch = create<Sketch>()(() => EMPTY);

export function sketch(changes: Partial<Sketch>): void {
  useSketch.setState(changes);
}

/** Takes away what a gesture drew; a measurement stays until it is dismissed. */
export function endSketch(): void {
  const { measurement, corners, nextCorner } = useSketch.getState();
  useSketch.setState({ ...EMPTY, measurement, corners, nextCorner });
}
