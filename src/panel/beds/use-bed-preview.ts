/** Beds of a dialog on the sheet before they are made. */
import { useMemo } from "react";
import { addBeds } from "../../core/edits/object-edits.ts";
import type { Bed } from "../../core/model/plan.ts";
import { planNow } from "../state/plan-actions.ts";
import { useSheetPreview } from "../state/use-sheet-preview.ts";

/** @param beds the same list as long as nothing of it changes */
export function useBedPreview(beds: readonly Bed[]): void {
  const ids = useMemo(() => beds.map(({ id }) => id), [beds]);
  const edit = useMemo(
    () => (beds.length === 0 ? null : addBeds(planNow().layoutId, beds, "")),
    [beds],
  );
  useSheetPreview(edit, ids);
}
