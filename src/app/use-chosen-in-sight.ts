import { useEffect } from "react";
import { useViewState } from "../panel/state/view-state.ts";
import { useWindowStore } from "../store/window/window-store.ts";

/** The sheet has become smaller by then. */
const RESIZED_MS = 120;

/** Where a region comes up and takes room from the sheet, what is selected stays in sight. */
export function useChosenInSight(): void {
  const drawer = useViewState((state) => state.drawer);
  useEffect(() => {
    if (drawer === null) return undefined;
    const timer = setTimeout(() => {
      const { selection, keepInView } = useWindowStore.getState();
      if (selection.length > 0) keepInView(selection);
    }, RESIZED_MS);
    return () => clearTimeout(timer);
  }, [drawer]);
}
