/** Drawing a bed of any outline, corner by corner. */
import { nextBedCode } from "../../core/edits/codes.ts";
import { drawnIds, nextId } from "../../core/edits/edit.ts";
import { addBed } from "../../core/edits/object-edits.ts";
import { type Point, pointDistance } from "../../core/geometry/point.ts";
import { formatLength } from "../../core/model/length.ts";
import { type Corner, ringProblem } from "../../core/model/ring.ts";
import { layoutOf, usePlanStore } from "../../store/plan-store.ts";
import { onStep, snapStep } from "../snap.ts";
import { sketch, useSketch } from "../sketch-store.ts";
import { useView } from "../view-store.ts";
import type { SheetPointer, Tool } from "./tool.ts";

/** A click so near the first corner closes the outline, pixels. */
const CLOSE_PX = { fine: 9, coarse: 22 } as const;

export const drawOutlineTool: Tool = {
  cursor: "crosshair",
  press: () => ({
    move: showNext,
    end: (pointer) => {
      if (pointer.clicks > 1 || isAtFirst(pointer)) close();
      else addCorner(cornerAt(pointer));
    },
    cancel: drop,
  }),
  hover: showNext,
  key: (key) => {
    if (useSketch.getState().corners.length === 0) return false;
    if (key === "Enter") close();
    else if (key === "Backspace") removeLast();
    else if (key === "Escape") drop();
    else return false;
    return true;
  },
  leave: drop,
};

function drop(): void {
  sketch({ corners: [], nextCorner: null, readout: null });
}

function showNext(pointer: SheetPointer): void {
  const { corners } = useSketch.getState();
  const last = corners.at(-1);
  if (!last) return;
  const next = isAtFirst(pointer) ? (corners[0] ?? last) : cornerAt(pointer);
  const text = formatLength(pointDistance(last, next), usePlanStore.getState().plan.units);
  sketch({ nextCorner: next, readout: { at: pointer.at, text } });
}

/** On the grid; with Shift held, level or plumb from the last corner. */
function cornerAt(pointer: SheetPointer): Point {
  const last = useSketch.getState().corners.at(-1);
  const { x, y } = pointer.at;
  const stepM = snapStep(usePlanStore.getState().plan.units);
  const place = pointer.isAlt ? { x, y } : { x: onStep(x, 0, stepM), y: onStep(y, 0, stepM) };
  if (!pointer.isShift || !last) return place;
  return Math.abs(x - last.x) >= Math.abs(y - last.y)
    ? { x: place.x, y: last.y }
    : { x: last.x, y: place.y };
}

function isAtFirst(pointer: SheetPointer): boolean {
  const { corners } = useSketch.getState();
  const [first] = corners;
  if (!first || corners.length < 3) return false;
  const reachPx = pointer.isCoarse ? CLOSE_PX.coarse : CLOSE_PX.fine;
  return pointDistance(first, pointer.at) * useView.getState().view.scale <= reachPx;
}

const asCorners = (places: readonly Point[]): readonly Corner[] => places.map(({ x, y }) => [x, y]);

function addCorner(place: Point): void {
  const { corners } = useSketch.getState();
  const last = corners.at(-1);
  if (last && pointDistance(last, place) === 0) return;
  const next = [...corners, place];
  if (crossesItself(next)) {
    usePlanStore.getState().announce("That side would cross another: choose another corner.");
    return;
  }
  sketch({ corners: next, nextCorner: null });
}

/** Whether the newest side crosses or touches an earlier one. */
export function crossesItself(places: readonly Point[]): boolean {
  const newest = places.at(-1);
  const before = places.at(-2);
  if (!newest || !before || places.length < 4) return false;
  return places.slice(0, -3).some((corner, index) => {
    const next = places[index + 1];
    return next !== undefined && sidesMeet(corner, next, before, newest);
  });
}

function sidesMeet(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) =>
    Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}

function removeLast(): void {
  const { corners } = useSketch.getState();
  sketch({ corners: corners.slice(0, -1), nextCorner: null, readout: null });
}

function close(): void {
  const { corners } = useSketch.getState();
  const { plan, layoutId, announce, commit, select, pickTool } = usePlanStore.getState();
  if (corners.length < 3) {
    announce("An outline needs at least three corners.");
    return;
  }
  const problem = ringProblem(asCorners(corners));
  if (problem !== null) {
    announce(`That would give ${problem}.`);
    return;
  }
  drop();
  const layout = layoutOf(plan, layoutId);
  const id = nextId("bed-", drawnIds(plan, layout));
  const outline = {
    shape: "polygon" as const,
    corners: corners.map(({ x, y }) => [x, y] as const),
  };
  commit(addBed(layoutId, { id, code: nextBedCode(layout), outline }));
  select([id]);
  pickTool("select");
}
