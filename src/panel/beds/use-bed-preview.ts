/** Beds of a dialog on the sheet before they are made. */
import { useEffect, useRef } from "react";
import { addBeds } from "../../core/edits/object-edits.ts";
import type { Bed } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { windowNow } from "../state/plan-actions.ts";

/** Shows the beds for as long as the dialog is up; what is kept goes through the dialog alone. */
export function useBedPreview(beds: readonly Bed[]): void {
  const isFirst = useRef(true);
  useEffect(() => {
    const { layoutId, preview } = usePlanStore.getState();
    // What is on trial there stays: it has its own words and buttons.
    if (usePlanStore.getState().previewing?.by === "trial") return undefined;
    if (beds.length > 0) preview(addBeds(layoutId, beds, ""));
    // The whole ground first, then only what would lie outside.
    if (isFirst.current) windowNow().bringIntoView("all");
    else windowNow().keepInView(beds.map(({ id }) => id));
    isFirst.current = false;
    return () => {
      if (usePlanStore.getState().previewing?.by === "gesture") {
        usePlanStore.getState().cancelPreview();
      }
    };
  }, [beds]);
}
