/** A variety dragged from the seed list onto a bed. */
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import type { Point } from "../../core/geometry/point.ts";
import { itemsAt } from "../scene/hit-test.ts";
import { sheetItems } from "../scene/sheet-items.ts";
import { sketch } from "../tools/sketch-store.ts";
import { useView } from "../scene/view-store.ts";
import { toSheet } from "../scene/viewport.ts";
import * as words from "./words.ts";

/** What a dragged variety is known by; the seed list gives it. */
const VARIETY_TYPE = "application/x-wideberth-variety";

/** Finding a place in a bed is fetched when the first variety is dropped. */
function plantLater(varietyId: string, bedId: string, at: Point): void {
  import("../../store/plan/plant-variety.ts").then(
    ({ plantVariety }) => plantVariety(varietyId, bedId, { at }),
    () => useWindowStore.getState().announce(words.partNotLoaded),
  );
}

export function listenToDrops(element: HTMLElement): () => void {
  const placeOf = (event: DragEvent) => {
    const box = element.getBoundingClientRect();
    const px = { x: event.clientX - box.left, y: event.clientY - box.top };
    return toSheet(useView.getState().view, px);
  };
  const bedAt = (event: DragEvent) => {
    const { plan, layoutId, book } = usePlanStore.getState();
    const under = itemsAt(sheetItems(plan, layoutOf(plan, layoutId), book), placeOf(event), 0);
    return under.find((item) => item.what === "bed");
  };
  const over = (event: DragEvent) => {
    const { dataTransfer } = event;
    if (!dataTransfer?.types.includes(VARIETY_TYPE)) return;
    event.preventDefault();
    const bed = bedAt(event);
    dataTransfer.dropEffect = bed ? "copy" : "none";
    sketch({ dropBed: bed?.id ?? null });
  };
  const leave = () => sketch({ dropBed: null });
  const drop = (event: DragEvent) => {
    const variety = event.dataTransfer?.getData(VARIETY_TYPE);
    if (!variety) return;
    event.preventDefault();
    leave();
    const bed = bedAt(event);
    if (bed) plantLater(variety, bed.id, placeOf(event));
    else useWindowStore.getState().announce(words.dropOnBed);
    element.focus({ preventScroll: true });
  };
  element.addEventListener("dragover", over);
  element.addEventListener("dragleave", leave);
  element.addEventListener("drop", drop);
  return () => {
    element.removeEventListener("dragover", over);
    element.removeEventListener("dragleave", leave);
    element.removeEventListener("drop", drop);
  };
}
