/** Drawing a bed by dragging from corner to corner. */
import { nextBedCode } from "../../core/edits/codes.ts";
import { drawnIds, nextId } from "../../core/edits/edit.ts";
import { addBed } from "../../core/edits/object-edits.ts";
import { normalTurn, rectangleCorners } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import { formatLength } from "../../core/model/length.ts";
import type { Bed, RectangleShape } from "../../core/model/plan.ts";
import { layoutOf, usePlanStore } from "../../store/plan-store.ts";
import { type Frame, intoFrame, onStep, outOfFrame, snapStep } from "../snap.ts";
import { endSketch, sketch } from "../sketch-store.ts";
import { clickOrDrag } from "./gestures.ts";
import type { SheetPointer, Tool } from "./tool.ts";

/** A drag shorter than this either way draws nothing, metres. */
const LEAST_BED_M = 0.2;
const SHEET_ORIGIN: Point = { x: 0, y: 0 };

export const drawBedTool: Tool = {
  cursor: "crosshair",
  press: (start) =>
    clickOrDrag(
      start,
      () =>
        usePlanStore
          .getState()
          .announce("Drag from one corner of the bed to the opposite one, or type its size."),
      () => bedGesture(start),
    ),
  hover: () => undefined,
  key: () => false,
  leave: endSketch,
};

function bedGesture(start: SheetPointer) {
  const { plan, layoutId } = usePlanStore.getState();
  const layout = layoutOf(plan, layoutId);
  const frame = bedFrame(layout.beds);
  const drawn = (pointer: SheetPointer) =>
    bedBetween(
      frame,
      start.at,
      pointer.at,
      pointer.isAlt ? null : snapStep(plan.units),
      pointer.isShift,
    );
  return {
    move: (pointer: SheetPointer) => {
      const rectangle = drawn(pointer);
      const { widthM, lengthM } = rectangle;
      const text = `${formatLength(widthM, plan.units)} × ${formatLength(lengthM, plan.units)}`;
      const isThere = widthM > 0 && lengthM > 0;
      sketch({ rectangle: isThere ? rectangle : null, readout: { at: pointer.at, text } });
    },
    end: (pointer: SheetPointer) => {
      endSketch();
      const outline = drawn(pointer);
      const { commit, select, pickTool, announce } = usePlanStore.getState();
      if (Math.min(outline.widthM, outline.lengthM) < LEAST_BED_M) {
        announce("Too small for a bed: nothing drawn.");
        return;
      }
      const id = nextId("bed-", drawnIds(plan, layout));
      commit(addBed(layoutId, { id, code: nextBedCode(layout), outline }));
      select([id]);
      pickTool("select");
    },
    cancel: endSketch,
  };
}

/** New beds lie as the last one does, and on steps counted from its corner. */
function bedFrame(beds: readonly Bed[]): Frame {
  const last = beds.findLast((bed) => bed.outline.shape === "rectangle")?.outline;
  return last?.shape === "rectangle"
    ? { origin: rectangleCorners(last)[0] ?? SHEET_ORIGIN, turnDeg: last.turnDeg }
    : { origin: SHEET_ORIGIN, turnDeg: 0 };
}

/**
 * The bed between two opposite corners, its length along the longer side.
 * @param stepM step of its sides, or null for none
 * @param isSquare both sides take the longer one's length
 */
export function bedBetween(
  frame: Frame,
  from: Point,
  to: Point,
  stepM: number | null,
  isSquare: boolean,
): RectangleShape {
  const stepped = (length: number) => (stepM === null ? length : onStep(length, 0, stepM));
  const corner = (place: Point) => {
    const { x, y } = intoFrame(frame, place);
    return { x: stepped(x), y: stepped(y) };
  };
  const a = corner(from);
  const b = corner(to);
  let width = b.x - a.x;
  let length = b.y - a.y;
  if (isSquare) {
    const side = Math.max(Math.abs(width), Math.abs(length));
    width = Math.sign(width) * side;
    length = Math.sign(length) * side;
  }
  const middle = outOfFrame(frame, { x: a.x + width / 2, y: a.y + length / 2 });
  const sides = [Math.abs(width), Math.abs(length)] as const;
  const isAcross = sides[0] > sides[1];
  return {
    shape: "rectangle",
    x: rounded(middle.x),
    y: rounded(middle.y),
    widthM: rounded(Math.min(...sides)),
    lengthM: rounded(Math.max(...sides)),
    turnDeg: normalTurn(frame.turnDeg + (isAcross ? 90 : 0)),
  };
}

/** To the micrometre: no rounding noise in the plan file. */
function rounded(metres: number): number {
  return Math.round(metres * 1e6) / 1e6;
}
