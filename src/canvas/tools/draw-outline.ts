/** Drawing a bed or other ground of any outline, corner by corner. */
import { type Point, directionDeg, pointDistance } from "../../core/geometry/point.ts";
import { formatLength, parseLength } from "../../core/model/length.ts";
import { type Corner, ringProblem } from "../../core/model/ring.ts";
import { useOutlineTarget } from "../../store/window/outline-target.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { decimalMark } from "../../store/window/decimal-mark.ts";
import { outlineCrossings } from "./outline-crossings.ts";
import { onStep, snapStep } from "../snap/snap.ts";
import { snapToDrawn } from "../snap/snap-place.ts";
import type { Guide } from "../snap/guide.ts";
import { endSketch, sketch, useSketch } from "./sketch-store.ts";
import { type TwoTexts, beginsNumber, startTyping, stopTyping } from "./typed-values.ts";
import { useView } from "../scene/view-store.ts";
import { toPx } from "../scene/viewport.ts";
import { keepOutline, leastCorners, outlineTargets, targetEntry } from "./outline-target.ts";
import { alongSide, readDegrees } from "./typed-side.ts";
import type { SheetPointer, Tool } from "./tool.ts";

/** A click so near the first corner closes the outline, pixels. */
const CLOSE_PX = { fine: 12, coarse: 22 } as const;
const CROSSING =
  "Two sides cross, as marked: an outline cannot be closed like that. Take corners back.";
const CLOSING = "The side that closes it would cross another: take corners back or add some.";

/** What is drawn, until something else is chosen. */
const targetNow = () => useOutlineTarget.getState().target;

export const drawOutlineTool: Tool = {
  cursor: "crosshair",
  press: () => ({
    move: showNext,
    end: (pointer) => {
      stopTyping();
      // A quick click in the place of the last one, made with another tool, begins an outline.
      const isBegun = useSketch.getState().corners.length > 0;
      if (isBegun && (pointer.clicks > 1 || isAtFirst(pointer))) close();
      else addCorner(cornerAt(pointer).at);
    },
    // A pinch or Escape takes back the press; the corners set before stay.
    cancel: () => sketch({ nextCorner: null, readout: null }),
  }),
  hover: showNext,
  key: (key) => {
    if (useSketch.getState().corners.length === 0) return false;
    if (key === "Enter") close();
    else if (key === "Backspace") removeLast();
    else if (key === "Escape") drop();
    else if (beginsNumber(key)) typeSide(key);
    else return false;
    return true;
  },
  take: () => showBar(null),
  leave: drop,
};

function drop(): void {
  stopTyping();
  sketch({ corners: [], nextCorner: null, bar: null });
  endSketch();
}

function showNext(pointer: SheetPointer): void {
  const { corners } = useSketch.getState();
  const last = corners.at(-1);
  const next = cornerAt(pointer);
  const guides = next.guide ? [next.guide] : [];
  if (!last) {
    sketch({ guides });
    if (!useSketch.getState().bar) showBar(null);
    return;
  }
  const isClosing = isAtFirst(pointer);
  const at = isClosing ? (corners[0] ?? last) : next.at;
  const text = formatLength(pointDistance(last, at), usePlanStore.getState().plan.units);
  sketch({ nextCorner: at, guides: isClosing ? [] : guides, readout: { at: pointer.at, text } });
}

/** On what is drawn, else on the grid; with Shift held, level or plumb from the last corner. */
function cornerAt(pointer: SheetPointer): { readonly at: Point; readonly guide: Guide | null } {
  const last = useSketch.getState().corners.at(-1);
  const { x, y } = pointer.at;
  const isStraight = pointer.isShift && last !== undefined;
  const found = pointer.isFree || isStraight ? null : snapToDrawn(pointer.at);
  if (found) return { at: found.at, guide: { from: found.at, to: found.at, label: found.label } };
  const stepM = snapStep(usePlanStore.getState().plan.units);
  const place = pointer.isFree ? { x, y } : { x: onStep(x, 0, stepM), y: onStep(y, 0, stepM) };
  if (!isStraight) return { at: place, guide: null };
  const isLevel = Math.abs(x - last.x) >= Math.abs(y - last.y);
  return { at: isLevel ? { x: place.x, y: last.y } : { x: last.x, y: place.y }, guide: null };
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
  if (!last || pointDistance(last, place) > 0) setCorners([...corners, place]);
}

function removeLast(): void {
  const corners = useSketch.getState().corners.slice(0, -1);
  setCorners(corners);
}

/** A fault stays in sight until the corners no longer have it. */
function setCorners(corners: readonly Point[]): void {
  const isCrossing = outlineCrossings(corners).length > 0;
  sketch({ corners, nextCorner: null, readout: null, guides: [] });
  showBar(isCrossing ? CROSSING : null);
}

function showBar(fault: string | null): void {
  const { corners, bar } = useSketch.getState();
  const { announce } = useWindowStore.getState();
  if (fault !== null && fault !== bar?.fault) announce(fault);
  const isBegun = corners.length > 0;
  const target = targetNow();
  const canClose = corners.length >= leastCorners(target);
  sketch({
    bar: {
      text: isBegun ? countWords(corners.length) : "Click corner after corner.",
      fault,
      choice: {
        label: "Draws:",
        value: target,
        options: outlineTargets,
        pick: (value) => {
          const picked = outlineTargets.find((entry) => entry.value === value)?.value ?? "bed";
          useOutlineTarget.setState({ target: picked });
          showBar(null);
        },
      },
      actions: [
        ...(isBegun ? [{ label: "Take last corner back", short: "Back", act: removeLast }] : []),
        ...(isBegun ? [{ label: "Type next side", short: "Type", act: () => typeSide("") }] : []),
        ...(canClose ? [{ label: closeLabel(corners.length), short: "Done", act: close }] : []),
        ...(isBegun ? [{ label: "Cancel", act: drop }] : []),
      ],
    },
  });
}

function countWords(count: number): string {
  return count === 1 ? "1 corner" : `${count} corners`;
}

function closeLabel(count: number): string {
  if (count > 2) return "Close outline";
  return count === 2 ? "Keep as a line" : "Keep as a point";
}

/** The next side by its length and direction; what is left empty follows the pointer. */
function typeSide(key: string): void {
  const { corners, nextCorner } = useSketch.getState();
  const last = corners.at(-1);
  if (!last) return;
  const before = corners.at(-2);
  const drawn = before ? directionDeg(before, last) : 0;
  const pointed = nextCorner && pointDistance(last, nextCorner) > 0 ? nextCorner : null;
  const from = { last, drawn, pointed };
  let next: Point | null = null;
  const change = ([length, direction]: TwoTexts) => {
    const { units } = usePlanStore.getState().plan;
    const side = parseLength(length, units, false, decimalMark());
    if (!side.ok) return side.reason;
    if (side.metres === 0) return "A side is longer than nothing";
    const degrees = readDegrees(direction);
    if (degrees === undefined) return "Directions are degrees clockwise from up, for example 90";
    next = alongSide(from, side.metres, degrees);
    sketch({ nextCorner: next });
    return null;
  };
  const apply = () => {
    if (next) addCorner(next);
  };
  const at = toPx(useView.getState().view, nextCorner ?? last);
  startTyping(
    { labels: ["Length of side", "Direction, °"], change, apply, dismiss: () => undefined },
    key,
    at,
  );
}

function close(): void {
  const { corners } = useSketch.getState();
  const target = targetNow();
  const least = leastCorners(target);
  if (corners.length < least) {
    const name = targetEntry(target).label;
    useWindowStore.getState().announce(`${name}: at least ${countWords(least)}.`);
    return;
  }
  const problem = corners.length < 3 ? null : ringProblem(asCorners(corners));
  if (problem !== null) {
    const isCrossing = outlineCrossings(corners).length > 0;
    const isClosing = outlineCrossings([...corners.slice(1), ...corners.slice(0, 1)]).length > 0;
    showBar(isCrossing ? CROSSING : isClosing ? CLOSING : `That would give ${problem}.`);
    return;
  }
  drop();
  keepOutline(target, corners);
}
