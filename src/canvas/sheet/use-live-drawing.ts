import { useCallback } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { type Brush, around } from "../draw/brush.ts";
import { drawItems } from "../draw/draw-items.ts";
import { drawOldPlace, drawSelected } from "../draw/draw-selection.ts";
import { useGroundPainter } from "./use-ground-painter.ts";
import { useLiveIds } from "./live-ids.ts";
import { isHidden } from "../scene/locks.ts";
import type { Drawing } from "./SheetShape.tsx";
import { useView } from "../scene/view-store.ts";
import { itemsOf } from "../scene/sheet-items.ts";
import { boxesOf, liveLabels, lookOf } from "./sheet-labels.ts";
import { useSketchPainter } from "./use-sketch-painter.ts";

/** Draws what is selected or on the move, on every frame of a drag; null while nothing is. */
export function useLiveDrawing(): Drawing | null {
  const plan = usePlanStore((state) => state.plan);
  const shown = usePlanStore((state) => state.shown);
  const layoutId = usePlanStore((state) => state.layoutId);
  const selection = useWindowStore((state) => state.selection);
  const book = usePlanStore((state) => state.book);
  const day = useWindowStore((state) => state.day);
  const hidden = useWindowStore((state) => state.hidden);
  const isTrial = usePlanStore(({ previewing }) => previewing?.by === "trial");
  const reading = usePlanStore((state) => state.reading);
  const painter = useGroundPainter();
  const sketcher = useSketchPainter();
  const live = useLiveIds();
  const isMoving = useView((state) => state.isMoving);
  const draw = useCallback(
    (brush: Brush) => {
      const selected = new Set(selection);
      const drawn = itemsOf(
        shown,
        layoutOf(shown, layoutId),
        book,
        new Set([...live, ...selection]),
      ).filter((item) => !isHidden(item, hidden));
      // What is tried is marked from where to where; it need not be selected for that.
      const marked = isTrial ? new Set([...live, ...selected]) : selected;
      const old = shown === plan ? [] : itemsOf(plan, layoutOf(plan, layoutId), book, marked);
      for (const item of old) drawOldPlace(brush, item, isTrial);
      const { result } = usePlanStore.getState();
      const layout = layoutOf(plan, layoutId);
      const resting = { plan, layout, book, result, day, hidden, painter, reading, isMoving };
      const items = drawn.filter((item) => live.has(item.id));
      const labels = liveLabels(brush, resting, shown, items);
      drawItems(brush, items, { ...lookOf(resting), labels });
      const held = drawn.filter((item) => marked.has(item.id));
      around(brush, boxesOf(labels), () => drawSelected(brush, held));
      if (isTrial) around(brush, boxesOf(labels), () => sketcher?.drawTrial(brush, old, held));
    },
    [
      plan,
      shown,
      layoutId,
      selection,
      book,
      day,
      painter,
      reading,
      live,
      hidden,
      isMoving,
      isTrial,
      sketcher,
    ],
  );
  const isEmpty = live.size === 0 && selection.length === 0;
  return isEmpty ? null : draw;
}
