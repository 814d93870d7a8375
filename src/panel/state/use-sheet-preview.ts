/** What a dialog would make, on the sheet before it is made. */
import { useEffect, useRef } from "react";
import type { Edit } from "../../core/edits/edit.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { planNow, windowNow } from "./plan-actions.ts";

/**
 * Shows an edit for as long as the dialog is up; what is kept goes through the dialog alone.
 * @param edit the same object as long as it would make the same; null: nothing to show
 * @param ids what it makes, to be kept in view
 */
export function useSheetPreview(edit: Edit | null, ids: readonly string[]): void {
  const isFirst = useRef(true);
  useEffect(() => {
    // What is on trial there stays: it has its own words and buttons.
    if (!edit || usePlanStore.getState().previewing?.by === "trial") return undefined;
    usePlanStore.getState().preview(edit);
    // The whole ground first; again with what is shown, should that lie outside.
    if (isFirst.current) windowNow().bringIntoView("all");
    else windowNow().keepInView([...planNow().kept.layout.beds.map(({ id }) => id), ...ids]);
    isFirst.current = false;
    return () => {
      if (usePlanStore.getState().previewing?.by === "gesture") {
        usePlanStore.getState().cancelPreview();
      }
    };
  }, [edit, ids]);
}
