/** Pulling the handles of the one object selected: its size, its turn, its corners. */
import { setOutline, turnObjects } from "../../core/edits/move-objects.ts";
import { normalTurn, shapeCentre } from "../../core/geometry/outline.ts";
import { type Point, directionDeg } from "../../core/geometry/point.ts";
import { formatLength } from "../../core/model/length.ts";
import type { PolygonShape, RectangleShape } from "../../core/model/plan.ts";
import { ringProblem } from "../../core/model/ring.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import type { Handle } from "../scene/handles.ts";
import { shownGaps } from "../snap/neighbour-gaps.ts";
import { objectNames } from "../../core/model/object-names.ts";
import { ownFrame, resizedRectangle } from "./resize-rectangle.ts";
import { type SheetItem, sheetItems } from "../scene/sheet-items.ts";
import type { Guide } from "../snap/guide.ts";
import { sketch } from "./sketch-store.ts";
import { editGesture } from "./gestures.ts";
import { onStep, snapStep } from "../snap/snap.ts";
import { snapToDrawn } from "../snap/snap-place.ts";
import { SNAP_PX, snapTargets } from "../snap/snap-targets.ts";
import { useView } from "../scene/view-store.ts";
import type { Gesture, SheetPointer } from "./tool.ts";
import * as words from "../scene/tool-words.ts";

/** With Shift held turns go in steps of this many degrees. */
const TURN_STEP = 15;
/** Turns come to rest on those of beds from so many degrees. */
const TURN_REACH = 3;

export function handleGesture(start: SheetPointer, item: SheetItem, handle: Handle): Gesture {
  if (handle.kind === "turn") return turnGesture(start, item);
  if (item.shape.shape === "rectangle" && handle.kind === "size") {
    return sizeGesture(start, item, item.shape, handle);
  }
  if (item.shape.shape === "polygon" && handle.kind !== "size") {
    return cornerGesture(start, item, item.shape, handle);
  }
  return { move: () => undefined, end: () => undefined, cancel: () => undefined };
}

function titled(title: (names: string) => string, item: SheetItem): string {
  const { plan, layoutId } = usePlanStore.getState();
  return title(objectNames(plan, layoutOf(plan, layoutId), [item.id]));
}

function sizeGesture(
  start: SheetPointer,
  item: SheetItem,
  shape: RectangleShape,
  handle: Extract<Handle, { kind: "size" }>,
): Gesture {
  const title = titled(words.resize, item);
  const { plan, layoutId, book } = usePlanStore.getState();
  const layout = layoutOf(plan, layoutId);
  // The pointer keeps its distance to the edge it has hold of.
  const frame = ownFrame(shape);
  const bed =
    item.what === "planting"
      ? layout.beds.find((entry) => entry.id === item.planting.bed)
      : undefined;
  const items = sheetItems(plan, layout, book);
  const ground = { items, moving: new Set([item.id]) };
  const lines = snapTargets(ground, frame, { what: item.what, shape, bed });
  const grab = grabOffset(start, shape, handle);
  const resized = (pointer: SheetPointer) =>
    resizedRectangle(
      shape,
      handle,
      { x: pointer.at.x - grab.x, y: pointer.at.y - grab.y },
      pointer.isFree
        ? null
        : { lines, reachM: SNAP_PX / useView.getState().view.scale, stepM: snapStep(plan.units) },
      pointer.isShift,
    );
  return editGesture((pointer) => {
    const { shape: next, guides } = resized(pointer);
    const edit = setOutline(layoutId, item.id, next, title);
    usePlanStore.getState().preview(edit);
    const text = `${formatLength(next.widthM, plan.units)} × ${formatLength(next.lengthM, plan.units)}`;
    const gaps = shownGaps(item.id, [item.id]);
    sketch({ guides, gaps, isMoving: true, readout: { at: pointer.at, text } });
    return edit;
  });
}

/** From the edge or corner that is pulled to where the pointer took hold. */
function grabOffset(
  start: SheetPointer,
  shape: RectangleShape,
  { across, along }: Extract<Handle, { kind: "size" }>,
): Point {
  const angle = (shape.turnDeg * Math.PI) / 180;
  const x = (across * shape.widthM) / 2;
  const y = (along * shape.lengthM) / 2;
  const at = {
    x: shape.x + x * Math.cos(angle) + y * Math.sin(angle),
    y: shape.y - x * Math.sin(angle) + y * Math.cos(angle),
  };
  return { x: start.at.x - at.x, y: start.at.y - at.y };
}

function turnGesture(start: SheetPointer, item: SheetItem): Gesture {
  const title = titled(words.turn, item);
  const { layoutId } = usePlanStore.getState();
  const centre = shapeCentre(item.shape);
  const present = item.shape.shape === "rectangle" ? item.shape.turnDeg : 0;
  const liked = likedTurns(item);
  const turned = (pointer: SheetPointer): Turned => {
    const raw = present + directionDeg(centre, pointer.at) - directionDeg(centre, start.at);
    const plain = (turnDeg: number) => ({ turnDeg: normalTurn(turnDeg), like: null });
    if (pointer.isShift) return plain(Math.round(raw / TURN_STEP) * TURN_STEP);
    if (pointer.isFree) return plain(raw);
    const [near] = liked
      .filter(({ turnDeg }) => Math.abs(quarter(raw - turnDeg)) <= TURN_REACH)
      .sort((a, b) => Math.abs(quarter(raw - a.turnDeg)) - Math.abs(quarter(raw - b.turnDeg)));
    if (!near) return plain(Math.round(raw));
    return { turnDeg: normalTurn(raw - quarter(raw - near.turnDeg)), like: near.name };
  };
  return editGesture((pointer) => {
    const { turnDeg, like } = turned(pointer);
    const edit = turnObjects(layoutId, [item.id], centre, turnDeg - present, title);
    usePlanStore.getState().preview(edit);
    const degrees = Math.round(turnDeg * 10) / 10;
    sketch({
      isMoving: true,
      cursor: "grabbing",
      readout: {
        at: pointer.at,
        text: like === null ? words.turnedTo(degrees) : words.turnedAs(degrees, like),
      },
    });
    return edit;
  });
}

interface Turned {
  readonly turnDeg: number;
  /** What lies the same way, when the turn has come to rest on that. */
  readonly like: string | null;
}

/** The part of a turn that is left over from quarter turns, -45 to 45 degrees. */
function quarter(turnDeg: number): number {
  return turnDeg - Math.round(turnDeg / 90) * 90;
}

/** Turns others have, and their names: of a planting's own bed, of the other beds, and the sheet's own. */
function likedTurns(item: SheetItem): readonly { turnDeg: number; name: string }[] {
  const { plan, layoutId } = usePlanStore.getState();
  const { beds } = layoutOf(plan, layoutId);
  const own = item.what === "planting" ? item.planting.bed : undefined;
  const others = own === undefined ? beds : beds.filter((bed) => bed.id === own);
  const turns = others
    .filter((bed) => bed.id !== item.id)
    .flatMap(({ outline, code }) =>
      outline.shape === "rectangle"
        ? [{ turnDeg: outline.turnDeg, name: words.turnOfBed(code) }]
        : [],
    );
  return [...turns, { turnDeg: 0, name: words.turnOfSheet }];
}

function cornerGesture(
  start: SheetPointer,
  item: SheetItem,
  shape: PolygonShape,
  handle: Extract<Handle, { kind: "corner" | "new-corner" }>,
): Gesture {
  const title = titled(handle.kind === "corner" ? words.moveCorner : words.addCorner, item);
  const { layoutId, plan } = usePlanStore.getState();
  const stepM = snapStep(plan.units);
  let guides: readonly Guide[] = [];
  let problem: string | null = null;
  const pulled = (pointer: SheetPointer): PolygonShape => {
    const found = pointer.isFree ? null : snapToDrawn(pointer.at, SNAP_PX, item.id);
    guides = found ? [{ from: found.at, to: found.at, label: found.label }] : [];
    const onGrid = { x: onStep(pointer.at.x, 0, stepM), y: onStep(pointer.at.y, 0, stepM) };
    const place = pointer.isFree ? pointer.at : (found?.at ?? onGrid);
    const corner = [place.x, place.y] as const;
    const corners = [...shape.corners];
    corners.splice(
      handle.kind === "corner" ? handle.index : handle.index + 1,
      handle.kind === "corner" ? 1 : 0,
      corner,
    );
    return { ...shape, corners };
  };
  const show = (pointer: SheetPointer) => {
    const next = pulled(pointer);
    problem = ringProblem(next.corners);
    const edit = problem === null ? setOutline(layoutId, item.id, next, title) : null;
    if (edit) usePlanStore.getState().preview(edit);
    const away = Math.hypot(pointer.at.x - start.at.x, pointer.at.y - start.at.y);
    const text = problem === null ? formatLength(away, plan.units) : words.wouldCrossItself;
    const gaps = shownGaps(item.id, [item.id]);
    sketch({ isMoving: true, guides, gaps, readout: { at: pointer.at, text } });
    return edit;
  };
  return editGesture(show, () => {
    if (problem !== null) useWindowStore.getState().announce(words.cornerWouldGive(problem));
  });
}
