/** Drawing a bed or other ground of any outline, corner by corner. */
import { ARC_ERROR_M, arcThrough } from "../../core/geometry/arc.ts";
import { type Point, pointDistance } from "../../core/geometry/point.ts";
import { formatLength } from "../../core/model/length.ts";
import { keepOutline, leastCorners, outlineShape } from "../../core/outlines/drawn-outline.ts";
import { outlineTargetWords } from "../../core/outlines/drawn-outline-words.ts";
import { type Corner, ringProblem } from "../../core/model/ring.ts";
import { useOutlineTarget } from "../../store/window/outline-target.ts";
import { askSource } from "../../store/window/source-ask.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { outlineBar } from "./outline-bar.ts";
import { cornerAt } from "./outline-corner.ts";
import { outlineCrossings } from "./outline-crossings.ts";
import { outlineDraftWords as words } from "./outline-draft-words.ts";
import { STRAIGHT, type Shaping, roundCorners, shapedPath } from "./outline-shaping.ts";
import { typeCorner, typeDiameter, typeSide } from "./outline-typing.ts";
import { endSketch, sketch, useSketch } from "./sketch-store.ts";
import { beginsNumber, stopTyping } from "./typed-values.ts";
import { useView } from "../scene/view-store.ts";
import type { SheetPointer, Tool } from "./tool.ts";

/** A click so near the first corner closes the outline, pixels. */
const CLOSE_PX = { fine: 12, coarse: 22 } as const;

/** What is drawn: each outline begins anew as a bed, unless something else is chosen for it. */
const targetNow = () => useOutlineTarget.getState().target;

let shaping: Shaping = STRAIGHT;
/** How many corners each step added, so that a curve is taken back whole. */
let steps: readonly number[] = [];

export const drawOutlineTool: Tool = {
  cursor: "crosshair",
  press: () => ({
    move: showNext,
    end: (pointer) => {
      stopTyping();
      // A quick click in the place of the last one, made with another tool, begins an outline.
      const isBegun = useSketch.getState().corners.length > 0 && shaping === STRAIGHT;
      if (isBegun && (pointer.clicks > 1 || isAtFirst(pointer))) close();
      else put(cornerAt(pointer).at);
    },
    // A pinch or Escape takes back the press; the corners set before stay.
    cancel: () => sketch({ nextCorner: null, curve: [], readout: null }),
  }),
  hover: showNext,
  key: (key) => {
    const isBegun = useSketch.getState().corners.length > 0;
    if (beginsNumber(key)) type(key);
    else if (shaping !== STRAIGHT && (key === "Escape" || key === "Backspace")) shape(STRAIGHT);
    else if (!isBegun) return false;
    else if (key === "Enter") close();
    else if (key === "Backspace") removeLast();
    else if (key === "Escape") drop();
    else return false;
    return true;
  },
  take: () => showBar(null),
  leave: () => {
    drop();
    useOutlineTarget.setState({ target: "bed" });
  },
};

/** Corners that were pasted while an outline is drawn; what comes of them is said. */
export function pasteCorners(corners: readonly Point[]): void {
  addCorners(corners);
  useWindowStore.getState().announce(words.pasted(words.count(corners.length)));
}

function drop(): void {
  stopTyping();
  shaping = STRAIGHT;
  steps = [];
  sketch({ corners: [], nextCorner: null, curve: [], bar: null });
  endSketch();
}

function shape(next: Shaping): void {
  shaping = next;
  sketch({ nextCorner: null, curve: [], readout: null });
  showBar(null);
}

function showNext(pointer: SheetPointer): void {
  const { corners } = useSketch.getState();
  const last = corners.at(-1);
  const next = cornerAt(pointer);
  const guides = next.guide ? [next.guide] : [];
  const { units } = usePlanStore.getState().plan;
  const curve = shapedPath(shaping, last, next.at);
  if (curve.length > 0) {
    const readout = { at: pointer.at, text: curveText(last, next.at) };
    sketch({ nextCorner: null, curve, guides, readout });
    return;
  }
  if (!last) {
    sketch({ guides });
    if (!useSketch.getState().bar) showBar(null);
    return;
  }
  const isClosing = shaping === STRAIGHT && isAtFirst(pointer);
  const at = isClosing ? (corners[0] ?? last) : next.at;
  const text = formatLength(pointDistance(last, at), units);
  sketch({
    nextCorner: at,
    curve: [],
    guides: isClosing ? [] : guides,
    readout: { at: pointer.at, text },
  });
}

/** How large what is being bent would be. */
function curveText(last: Point | undefined, at: Point): string {
  const { units } = usePlanStore.getState().plan;
  if (shaping.kind === "rim") {
    return words.across(formatLength(2 * pointDistance(shaping.middle, at), units));
  }
  if (shaping.kind !== "end" || !last) return "";
  const { radiusM } = arcThrough(last, shaping.via, at);
  return radiusM === null ? "" : words.radius(formatLength(radiusM, units));
}

function isAtFirst(pointer: SheetPointer): boolean {
  const { corners } = useSketch.getState();
  const [first] = corners;
  if (!first || corners.length < 3) return false;
  const reachPx = pointer.isCoarse ? CLOSE_PX.coarse : CLOSE_PX.fine;
  return pointDistance(first, pointer.at) * useView.getState().view.scale <= reachPx;
}

const asCorners = (places: readonly Point[]): readonly Corner[] => places.map(({ x, y }) => [x, y]);

/** A place was pressed or typed: what it is depends on what is being shaped. */
function put(place: Point): void {
  const last = useSketch.getState().corners.at(-1);
  switch (shaping.kind) {
    case "straight":
      addCorners([place]);
      return;
    case "via":
      if (last && pointDistance(last, place) > 0) shape({ kind: "end", via: place });
      return;
    case "end":
      if (last && pointDistance(last, place) > 0) bend(last, shaping.via, place);
      return;
    case "middle":
      shape({ kind: "rim", middle: place });
      return;
    case "rim": {
      const diameterM = 2 * pointDistance(shaping.middle, place);
      if (diameterM > 0) keep(roundCorners(shaping.middle, diameterM));
    }
  }
}

/** A curve ends; how true its corners are to the arc is said. */
function bend(last: Point, via: Point, to: Point): void {
  const { corners, errorM } = arcThrough(last, via, to);
  shaping = STRAIGHT;
  addCorners(corners);
  const { units } = usePlanStore.getState().plan;
  const error = formatLength(Math.max(errorM, ARC_ERROR_M), units);
  useWindowStore.getState().announce(words.curved(corners.length, error));
}

function addCorners(places: readonly Point[]): void {
  const { corners } = useSketch.getState();
  const last = corners.at(-1);
  const [next] = places;
  if (!next || (last && pointDistance(last, next) === 0)) return;
  steps = [...steps, places.length];
  setCorners([...corners, ...places]);
}

function removeLast(): void {
  const { corners } = useSketch.getState();
  const count = steps.at(-1) ?? 1;
  steps = steps.slice(0, -1);
  setCorners(corners.slice(0, corners.length - count));
}

/** A fault stays in sight until the corners no longer have it. */
function setCorners(corners: readonly Point[]): void {
  const isCrossing = outlineCrossings(corners).length > 0;
  sketch({ corners, nextCorner: null, curve: [], readout: null, guides: [] });
  showBar(isCrossing ? words.crossing : null);
}

function type(key: string): void {
  stopTyping();
  if (shaping.kind === "rim") typeDiameter(key, shaping.middle, keep);
  else if (shaping === STRAIGHT && useSketch.getState().corners.length > 0) typeSide(key, put);
  else typeCorner(key, put);
}

function showBar(fault: string | null): void {
  const { corners, bar } = useSketch.getState();
  if (fault !== null && fault !== bar?.fault) useWindowStore.getState().announce(fault);
  const bars = outlineBar(
    { corners, shaping, target: targetNow(), fault },
    {
      pick: (target) => {
        useOutlineTarget.setState({ target });
        showBar(null);
      },
      back: removeLast,
      type: () => type(""),
      typeCorner: () => typeCorner("", put),
      shape,
      close,
      drop: () => {
        drop();
        showBar(null);
      },
    },
  );
  sketch({ bar: bars });
}

function close(): void {
  const { corners } = useSketch.getState();
  const target = targetNow();
  const least = leastCorners(target);
  if (corners.length < least) {
    const text = words.atLeast(outlineTargetWords[target], words.count(least));
    useWindowStore.getState().announce(text);
    return;
  }
  const problem = corners.length < 3 ? null : ringProblem(asCorners(corners));
  if (problem === null) {
    keep(corners);
    return;
  }
  const isCrossing = outlineCrossings(corners).length > 0;
  const isClosing = outlineCrossings([...corners.slice(1), ...corners.slice(0, 1)]).length > 0;
  showBar(isCrossing ? words.crossing : isClosing ? words.closing : words.wouldGive(problem));
}

/** Keeps what was drawn as one undo step and selects it. */
function keep(corners: readonly Point[]): void {
  const target = targetNow();
  drop();
  const { plan, layoutId, commit } = usePlanStore.getState();
  if (target === "pollen") {
    // What flowers there is asked before anything is kept.
    askSource(outlineShape(target, corners));
    return;
  }
  const { edit, id } = keepOutline(plan, layoutId, target, corners);
  commit(edit);
  if (id !== null) useWindowStore.getState().select([id]);
  useWindowStore.getState().pickTool("select");
}
