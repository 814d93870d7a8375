/** Measuring between two places, or from edge to edge of two objects. */
import { gapBetween } from "../../core/geometry/gap.ts";
import type { Point } from "../../core/geometry/point.ts";
import { layoutOf, usePlanStore } from "../../store/plan-store.ts";
import { measurementText } from "../draw-sketch.ts";
import { edgeNear, itemsAt } from "../hit-test.ts";
import { type SheetItem, sheetItems } from "../sheet-items.ts";
import { type Measurement, sketch, useSketch } from "../sketch-store.ts";
import { useView } from "../view-store.ts";
import { clickOrDrag } from "./gestures.ts";
import type { SheetPointer, Tool } from "./tool.ts";

/** Ends come to rest on edges within so many pixels. */
const EDGE_PX = 10;

export const measureTool: Tool = {
  cursor: "crosshair",
  press: (start) => {
    const before = useSketch.getState().measurement;
    return clickOrDrag(start, dismiss, () => ({
      move: (pointer) => sketch({ measurement: measured(start, pointer) }),
      end: (pointer) => {
        const measurement = measured(start, pointer);
        sketch({ measurement });
        const { plan, announce } = usePlanStore.getState();
        announce(`${measurementText(measurement, plan.units).join(": ")}.`);
      },
      cancel: () => sketch({ measurement: before }),
    }));
  },
  hover: () => undefined,
  key: (key) => {
    if (key !== "Escape" || !useSketch.getState().measurement) return false;
    dismiss();
    return true;
  },
  leave: () => undefined,
};

function dismiss(): void {
  sketch({ measurement: null });
}

interface End {
  readonly at: Point;
  /** The object the end lies in, when it has not come to rest on an edge. */
  readonly inside: SheetItem | null;
}

function measured(start: SheetPointer, pointer: SheetPointer): Measurement {
  const from = endAt(start, pointer.isAlt);
  const to = endAt(pointer, pointer.isAlt);
  if (from.inside && to.inside && from.inside.id !== to.inside.id) {
    const gap = gapBetween(from.inside.outline, to.inside.outline);
    return { from: gap.from, to: gap.to, isEdgeToEdge: true };
  }
  return { from: from.at, to: to.at, isEdgeToEdge: false };
}

function endAt({ at }: SheetPointer, isFree: boolean): End {
  if (isFree) return { at, inside: null };
  const { shown, layoutId, book } = usePlanStore.getState();
  const items = sheetItems(shown, layoutOf(shown, layoutId), book);
  const edge = edgeNear(items, at, EDGE_PX / useView.getState().view.scale);
  if (edge) return { at: edge.at, inside: null };
  return { at, inside: itemsAt(items, at, 0)[0] ?? null };
}
