/** Drawing a bed from corner to corner, by dragging or with two clicks, or by typing its size. */
import { nextBedCode } from "../../core/beds/codes.ts";
import { drawnIds, nextId } from "../../core/edits/edit.ts";
import { addBed } from "../../core/edits/object-edits.ts";
import { normalTurn, rectangleCorners } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import { formatLength, parseLength } from "../../core/model/length.ts";
import type { Bed, RectangleShape } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { decimalMark } from "../../store/window/decimal-mark.ts";
import { type BedSizes, bedBetween, drawnCorner } from "./draw-bed-shape.ts";
import { neighbourGaps } from "../snap/neighbour-gaps.ts";
import { sheetItems } from "../scene/sheet-items.ts";
import type { Frame } from "../snap/snap.ts";
import { type DraftBar, endSketch, sketch } from "./sketch-store.ts";
import {
  type TwoTexts,
  beginsNumber,
  startTyping,
  stopTyping,
  useTypedValues,
} from "./typed-values.ts";
import { clickOrDrag } from "./gestures.ts";
import type { Gesture, SheetPointer, Tool } from "./tool.ts";
import * as words from "../scene/tool-words.ts";

/** Nothing shorter than this either way is a bed, metres. */
const LEAST_BED_M = 0.2;
const SHEET_ORIGIN: Point = { x: 0, y: 0 };
const NO_SIZES: BedSizes = { widthM: null, lengthM: null };

/** The bed being drawn. */
interface Draft {
  readonly frame: Frame;
  /** Its first corner, in the frame. */
  readonly from: Point;
  /** Where the pointer is now. */
  pointer: SheetPointer;
  typed: BedSizes;
}

let draft: Draft | null = null;

export const drawBedTool: Tool = {
  cursor: "crosshair",
  press: (start) => (draft ? secondCorner(draft) : firstCorner(start)),
  hover: (pointer) => {
    if (draft) show(draft, pointer);
    else sketch({ guides: startAt(pointer).guides });
  },
  key: (key) => {
    const drawn = draft;
    if (!drawn) return false;
    if (key === "Escape" || key === "Backspace") drop();
    else if (key === "Enter") finish(drawn);
    else if (beginsNumber(key)) startTyping(ownerOf(drawn), key, drawn.pointer.px);
    else return false;
    return true;
  },
  leave: drop,
};

function drop(): void {
  draft = null;
  stopTyping();
  sketch({ bar: null });
  endSketch();
}

/** Where the first corner comes to lie. */
function startAt(pointer: SheetPointer) {
  const { plan, layoutId } = usePlanStore.getState();
  const frame = bedFrame(layoutOf(plan, layoutId).beds);
  const { at: from, guides } = drawnCorner(frame, pointer.at, null, pointer.isFree);
  return { frame, from, guides };
}

/** Pressed and dragged, the bed is done where the pointer is let go; a click only sets the corner. */
function firstCorner(start: SheetPointer): Gesture {
  const { announce } = useWindowStore.getState();
  const { frame, from } = startAt(start);
  const drawn: Draft = { frame, from, pointer: start, typed: NO_SIZES };
  draft = drawn;
  return clickOrDrag(
    start,
    () => {
      const text = words.firstCornerSet;
      announce(text);
      sketch({ bar: barOf(drawn, text) });
    },
    () => ({
      move: (pointer) => show(drawn, pointer),
      end: (pointer) => {
        if (draft !== drawn) return;
        show(drawn, pointer);
        // Someone who types with the hand off the mouse has not finished.
        if (!useTypedValues.getState().owner) finish(drawn);
      },
      cancel: drop,
    }),
  );
}

function barOf(drawn: Draft, text: string): DraftBar {
  const type = () => startTyping(ownerOf(drawn), "", drawn.pointer.px);
  const actions = [
    { label: words.typeSize, act: type },
    { label: words.cancel, act: drop },
  ];
  return { text, fault: null, actions };
}

function secondCorner(drawn: Draft): Gesture {
  return {
    move: (pointer) => show(drawn, pointer),
    end: (pointer) => {
      if (draft !== drawn) return;
      show(drawn, pointer);
      finish(drawn);
    },
    // A pinch or Escape takes back the press; the first corner stays.
    cancel: () => undefined,
  };
}

function shapeOf({ frame, from, pointer, typed }: Draft): {
  readonly shape: RectangleShape;
  readonly guides: ReturnType<typeof drawnCorner>["guides"];
} {
  const { at, guides } = drawnCorner(frame, pointer.at, from, pointer.isFree);
  const shape = bedBetween(frame, from, at, typed, pointer.isShift);
  const isTyped = typed.widthM !== null || typed.lengthM !== null;
  return { shape, guides: isTyped || pointer.isShift ? [] : guides };
}

function show(drawn: Draft, pointer: SheetPointer): void {
  if (draft !== drawn) return;
  drawn.pointer = pointer;
  const { shape, guides } = shapeOf(drawn);
  const { plan, layoutId, book } = usePlanStore.getState();
  const { widthM, lengthM } = shape;
  const isThere = widthM > 0 && lengthM > 0;
  const items = sheetItems(plan, layoutOf(plan, layoutId), book);
  const text = `${formatLength(widthM, plan.units)} × ${formatLength(lengthM, plan.units)}`;
  sketch({
    rectangle: isThere ? shape : null,
    guides,
    gaps: isThere ? neighbourGaps({ plan, items }, { what: "bed", shape }, new Set()) : [],
    readout: { at: pointer.at, text },
  });
}

function finish(drawn: Draft): void {
  const { shape: outline } = shapeOf(drawn);
  drop();
  const { plan, layoutId, commit } = usePlanStore.getState();
  const { select, pickTool, announce } = useWindowStore.getState();
  const layout = layoutOf(plan, layoutId);
  if (Math.min(outline.widthM, outline.lengthM) < LEAST_BED_M) {
    announce(words.tooSmallForBed);
    return;
  }
  const id = nextId("bed-", drawnIds(plan, layout));
  commit(addBed(layoutId, { id, code: nextBedCode(layout), outline }));
  select([id]);
  pickTool("select");
}

function ownerOf(drawn: Draft) {
  return {
    labels: [words.width, words.length] as const,
    change: (texts: TwoTexts) => {
      const { units } = usePlanStore.getState().plan;
      const [width, length] = texts.map((text) =>
        text.trim() === "" ? null : parseLength(text, units, false, decimalMark()),
      );
      for (const read of [width, length]) if (read && !read.ok) return read.reason;
      const metres = (read: typeof width) => (read?.ok ? read.metres : null);
      drawn.typed = { widthM: metres(width), lengthM: metres(length) };
      show(drawn, drawn.pointer);
      return null;
    },
    apply: () => finish(drawn),
    dismiss: () => {
      drawn.typed = NO_SIZES;
      show(drawn, drawn.pointer);
    },
  };
}

/** New beds lie as the last one does, and on steps counted from its corner. */
function bedFrame(beds: readonly Bed[]): Frame {
  const last = beds.findLast((bed) => bed.outline.shape === "rectangle")?.outline;
  return last?.shape === "rectangle"
    ? { origin: rectangleCorners(last)[0] ?? SHEET_ORIGIN, turnDeg: normalTurn(last.turnDeg) }
    : { origin: SHEET_ORIGIN, turnDeg: 0 };
}
