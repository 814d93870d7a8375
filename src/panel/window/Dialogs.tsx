import { Suspense, useEffect } from "react";
import { useSourceAsk } from "../../store/window/source-ask.ts";
import { sourceDialog } from "../kinds/commands.ts";
import { ObjectMenuPlace } from "./ObjectMenuPlace.tsx";
import { RegionBoundary } from "./RegionBoundary.tsx";
import { useViewState } from "../state/view-state.ts";
import * as texts from "./words.ts";

/** What comes up over the window: the one open dialog, and the menu of objects. */
export function Dialogs() {
  // The sheet asks what flowers where a pollen source was put.
  useEffect(
    () =>
      useSourceAsk.subscribe(({ asked }) => {
        if (asked) sourceDialog.open({ given: asked.outline, name: asked.name });
      }),
    [],
  );
  return (
    <>
      <AskedDialog />
      <ObjectMenuPlace />
    </>
  );
}

/** A fault in a dialog leaves the window standing. */
function AskedDialog() {
  const dialog = useViewState((state) => state.dialog);
  const close = useViewState((state) => state.closeDialog);
  if (!dialog) return null;
  return (
    <RegionBoundary key={dialog.name} title={texts.dialogNotShown} onClose={close}>
      <Suspense fallback={<p role="status">{texts.loading}</p>}>{dialog.content}</Suspense>
    </RegionBoundary>
  );
}
