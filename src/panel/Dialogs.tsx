import { Suspense, lazy } from "react";
import { KeysDialog } from "./KeysDialog.tsx";
import { NewBedDialog } from "./NewBedDialog.tsx";
import { PlaceDialog } from "./PlaceDialog.tsx";
import { RenameLayoutDialog } from "./RenameLayoutDialog.tsx";
import { SettingsDialog } from "./SettingsDialog.tsx";
import { VarietyDialog } from "./VarietyDialog.tsx";
import { RegionBoundary } from "./RegionBoundary.tsx";
import { type DialogRequest, useViewState } from "./view-state.ts";

// The map of the plot brings its own machinery along: only when it is asked for.
const PlotMapDialog = lazy(async () => {
  const { PlotMapDialog: Loaded } = await import("./PlotMapDialog.tsx");
  return { default: Loaded };
});

// Looked at once a winter.
const KeptPlansDialog = lazy(async () => {
  const { KeptPlansDialog: Loaded } = await import("./KeptPlansDialog.tsx");
  return { default: Loaded };
});
const DiagnosticsDialog = lazy(async () => {
  const { DiagnosticsDialog: Loaded } = await import("./DiagnosticsDialog.tsx");
  return { default: Loaded };
});

/** The one dialog that is open, if any; a fault in it leaves the window standing. */
export function Dialogs() {
  const dialog = useViewState((state) => state.dialog);
  const close = useViewState((state) => state.closeDialog);
  if (!dialog) return null;
  return (
    <RegionBoundary key={dialog.kind} name="This window" onClose={close}>
      <OpenDialog dialog={dialog} close={close} />
    </RegionBoundary>
  );
}

interface OpenDialogProps {
  readonly dialog: DialogRequest;
  readonly close: () => void;
}

function OpenDialog({ dialog, close }: OpenDialogProps) {
  switch (dialog.kind) {
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
    case "kept-plans":
      return (
        <Suspense fallback={<p role="status">Looking for kept plans ...</p>}>
          <KeptPlansDialog onClose={close} />
        </Suspense>
      );
    case "diagnostics":
      return (
        <Suspense fallback={<p role="status">Loading ...</p>}>
          <DiagnosticsDialog onClose={close} />
        </Suspense>
      );
    case "plot-map":
      return (
        <Suspense fallback={<p role="status">Loading the plot map ...</p>}>
          <PlotMapDialog onClose={close} />
        </Suspense>
      );
  }
}
