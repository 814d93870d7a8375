/** The rectangle between two corners of a bed that is being drawn. */
import { normalTurn } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { RectangleShape } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { sheetItems } from "../scene/sheet-items.ts";
import type { Guide } from "../snap/guide.ts";
import { type Frame, intoFrame, outOfFrame, snapCorner, snapStep } from "../snap/snap.ts";
import { SNAP_PX, snapTargets } from "../snap/snap-targets.ts";
import { useView } from "../scene/view-store.ts";

/** Sizes that were typed; null where the pointer decides. */
export interface BedSizes {
  readonly widthM: number | null;
  readonly lengthM: number | null;
}

/**
 * A corner of a bed in its frame, on the lines of its neighbours or else on steps.
 * @param from the corner opposite, in the frame; null for the first one
 */
export function drawnCorner(
  frame: Frame,
  place: Point,
  from: Point | null,
  isFree: boolean,
): { readonly at: Point; readonly guides: readonly Guide[] } {
  const raw = intoFrame(frame, place);
  if (isFree) return { at: raw, guides: [] };
  const { plan, layoutId, book } = usePlanStore.getState();
  const items = sheetItems(plan, layoutOf(plan, layoutId), book);
  const so = from === null ? null : bedBetween(frame, from, raw, NO_TYPED, false);
  const shape = so ?? { shape: "point" as const, ...place };
  const part = (to: number, other: number | undefined) => {
    if (other === undefined) return { first: to, last: to };
    return to >= other ? { last: to } : { first: to };
  };
  const { shift, guides } = snapCorner(
    frame,
    { x: part(raw.x, from?.x), y: part(raw.y, from?.y) },
    {
      lines: snapTargets({ items, moving: NOTHING }, frame, { what: "bed", shape }),
      reachM: SNAP_PX / useView.getState().view.scale,
      stepM: snapStep(plan.units),
      // Sizes are whole steps: they count from the corner the bed is drawn from.
      gridFrom: from ?? { x: 0, y: 0 },
    },
  );
  return { at: { x: raw.x + shift.x, y: raw.y + shift.y }, guides };
}

const NOTHING: ReadonlySet<string> = new Set();
const NO_TYPED: BedSizes = { widthM: null, lengthM: null };

/**
 * The bed between two opposite corners of the frame, its length along the side it is drawn further in.
 * @param isSquare both sides take the longer one's length
 */
export function bedBetween(
  frame: Frame,
  from: Point,
  to: Point,
  typed: BedSizes,
  isSquare: boolean,
): RectangleShape {
  const drawn = { x: to.x - from.x, y: to.y - from.y };
  const isAcross = Math.abs(drawn.x) > Math.abs(drawn.y);
  const most = Math.max(Math.abs(drawn.x), Math.abs(drawn.y));
  const size = (run: number, typedM: number | null) =>
    (run < 0 ? -1 : 1) * (typedM ?? (isSquare ? most : Math.abs(run)));
  const x = size(drawn.x, isAcross ? typed.lengthM : typed.widthM);
  const y = size(drawn.y, isAcross ? typed.widthM : typed.lengthM);
  const middle = outOfFrame(frame, { x: from.x + x / 2, y: from.y + y / 2 });
  const sides = [Math.abs(x), Math.abs(y)] as const;
  const isLonger = sides[0] > sides[1];
  return {
    shape: "rectangle",
    x: rounded(middle.x),
    y: rounded(middle.y),
    widthM: rounded(Math.min(...sides)),
    lengthM: rounded(Math.max(...sides)),
    turnDeg: normalTurn(frame.turnDeg + (isLonger ? 90 : 0)),
  };
}

/** To the micrometre: no rounding noise in the plan file. */
function rounded(metres: number): number {
  return Math.round(metres * 1e6) / 1e6;
}
