import { Suspense, lazy } from "react";
import { KeysDialog } from "./KeysDialog.tsx";
import { NewBedDialog } from "./NewBedDialog.tsx";
import { PlaceDialog } from "./PlaceDialog.tsx";
import { RenameLayoutDialog } from "./RenameLayoutDialog.tsx";
import { SettingsDialog } from "./SettingsDialog.tsx";
import { VarietyDialog } from "./VarietyDialog.tsx";
import { useViewState } from "./view-state.ts";

// The map of the plot brings its own machinery along: only when it is asked for.
const PlotMapDialog = lazy(async () => {
  const { PlotMapDialog: Loaded } = await import("./PlotMapDialog.tsx");
  return { default: Loaded };
});

/** The one dialog that is open, if any. */
export function Dialogs() {
  const dialog = useViewState((state) => state.dialog);
  const close = useViewState((state) => state.closeDialog);
  switch (dialog?.kind) {
    case undefined:
      return null;
    case "settings":
      return <SettingsDialog onClose={close} />;
    case "keys":
      return <KeysDialog onClose={close} />;
    case "new-bed":
      return <NewBedDialog onClose={close} />;
    case "variety":
      return <VarietyDialog id={dialog.id} onClose={close} />;
    case "place":
      return <PlaceDialog varietyId={dialog.varietyId} bedId={dialog.bedId} onClose={close} />;
    case "rename-layout":
      return <RenameLayoutDialog id={dialog.id} onClose={close} />;
    case "plot-map":
      return (
        <Suspense fallback={<p role="status">Loading the plot map ...</p>}>
          <PlotMapDialog onClose={close} />
        </Suspense>
      );
  }
}
