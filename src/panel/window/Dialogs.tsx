import { Suspense, lazy } from "react";
import { ObjectMenuPlace } from "../commands/ObjectMenuPlace.tsx";
import { RegionBoundary } from "./RegionBoundary.tsx";
import { type DialogRequest, useViewState } from "../state/view-state.ts";

// The daily ones; still, the sheet is drawn before anybody can ask for them.
const NewBedDialog = lazy(async () => {
  const { NewBedDialog: Loaded } = await import("../beds/NewBedDialog.tsx");
  return { default: Loaded };
});
const PlaceDialog = lazy(async () => {
  const { PlaceDialog: Loaded } = await import("../beds/PlaceDialog.tsx");
  return { default: Loaded };
});
const VarietyDialog = lazy(async () => {
  const { VarietyDialog: Loaded } = await import("../seed-list/VarietyDialog.tsx");
  return { default: Loaded };
});
const SettingsDialog = lazy(async () => {
  const { SettingsDialog: Loaded } = await import("../site/SettingsDialog.tsx");
  return { default: Loaded };
});
const RenameLayoutDialog = lazy(async () => {
  const { RenameLayoutDialog: Loaded } = await import("../layouts/RenameLayoutDialog.tsx");
  return { default: Loaded };
});

// The map of the plot brings its own machinery along: only when it is asked for.
const PlotMapDialog = lazy(async () => {
  const { PlotMapDialog: Loaded } = await import("../paper/PlotMapDialog.tsx");
  return { default: Loaded };
});

const ArrangeDialog = lazy(async () => {
  const { ArrangeDialog: Loaded } = await import("../arrange/ArrangeDialog.tsx");
  return { default: Loaded };
});
const LayoutExchangeDialog = lazy(async () => {
  const { LayoutExchangeDialog: Loaded } = await import("../layouts/LayoutExchangeDialog.tsx");
  return { default: Loaded };
});
const FilesDialog = lazy(async () => {
  const { FilesDialog: Loaded } = await import("../paper/FilesDialog.tsx");
  return { default: Loaded };
});

// Looked at once a winter.
const KeptPlansDialog = lazy(async () => {
  const { KeptPlansDialog: Loaded } = await import("../keeping/KeptPlansDialog.tsx");
  return { default: Loaded };
});
const DiagnosticsDialog = lazy(async () => {
  const { DiagnosticsDialog: Loaded } = await import("../keeping/DiagnosticsDialog.tsx");
  return { default: Loaded };
});

// Tables and readers of temperatures, and the season's jobs: each only when asked for.
const ClimateDialog = lazy(async () => {
  const { ClimateDialog: Loaded } = await import("../season/ClimateDialog.tsx");
  return { default: Loaded };
});
const SeasonDialog = lazy(async () => {
  const { SeasonDialog: Loaded } = await import("../season/SeasonDialog.tsx");
  return { default: Loaded };
});

// The figures and the lists: read for a while, then put away.
const FigurePlanDialog = lazy(async () => {
  const { FigurePlanDialog: Loaded } = await import("../figures/FigurePlanDialog.tsx");
  return { default: Loaded };
});
const OwnKindsDialog = lazy(async () => {
  const { OwnKindsDialog: Loaded } = await import("../kinds/OwnKindsDialog.tsx");
  return { default: Loaded };
});
const EarlierCropsDialog = lazy(async () => {
  const { EarlierCropsDialog: Loaded } = await import("../earlier-crops/EarlierCropsDialog.tsx");
  return { default: Loaded };
});
const VarietyCsvDialog = lazy(async () => {
  const { VarietyCsvDialog: Loaded } = await import("../seed-list/VarietyCsvDialog.tsx");
  return { default: Loaded };
});

// Read once, when the ground has been walked.
const OutlineImportDialog = lazy(async () => {
  const { OutlineImportDialog: Loaded } = await import("../outlines/OutlineImportDialog.tsx");
  return { default: Loaded };
});

const ObjectDialogs = lazy(async () => {
  const { ObjectDialogs: Loaded } = await import("./ObjectDialogs.tsx");
  return { default: Loaded };
});

// Setting out the ground: asked for now and then.
const NumberBedsDialog = lazy(async () => {
  const { NumberBedsDialog: Loaded } = await import("../beds/NumberBedsDialog.tsx");
  return { default: Loaded };
});
const ShareBedDialog = lazy(async () => {
  const { ShareBedDialog: Loaded } = await import("../beds/ShareBedDialog.tsx");
  return { default: Loaded };
});
const CutBedDialog = lazy(async () => {
  const { CutBedDialog: Loaded } = await import("../beds/CutBedDialog.tsx");
  return { default: Loaded };
});
const GroundDialog = lazy(async () => {
  const { GroundDialog: Loaded } = await import("../beds/GroundDialog.tsx");
  return { default: Loaded };
});

/** What comes up over the window: the one open dialog, and the menu of objects. */
export function Dialogs() {
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
    <RegionBoundary key={dialog.kind} name="This window" onClose={close}>
      <Suspense fallback={<p role="status">Loading ...</p>}>
        <OpenDialog dialog={dialog} close={close} />
      </Suspense>
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
    case "commands":
    case "array":
    case "bed-rows":
    case "line-up":
    case "rename-object":
    case "paste":
    case "copied-text":
      return <ObjectDialogs dialog={dialog} onClose={close} />;
    case "new-bed":
      return <NewBedDialog onClose={close} />;
    case "number-beds":
      return <NumberBedsDialog onClose={close} />;
    case "share-bed":
      return <ShareBedDialog id={dialog.id} onClose={close} />;
    case "cut-bed":
      return <CutBedDialog id={dialog.id} onClose={close} />;
    case "new-ground":
      return <GroundDialog onClose={close} />;
    case "variety":
      return <VarietyDialog id={dialog.id} onClose={close} />;
    case "place":
      return <PlaceDialog varietyId={dialog.varietyId} bedId={dialog.bedId} onClose={close} />;
    case "rename-layout":
      return <RenameLayoutDialog id={dialog.id} onClose={close} />;
    case "arrange":
      return <ArrangeDialog onClose={close} />;
    case "layout-exchange":
      return <LayoutExchangeDialog what={dialog.what} onClose={close} />;
    case "kept-plans":
      return <KeptPlansDialog onClose={close} />;
    case "diagnostics":
      return <DiagnosticsDialog onClose={close} />;
    case "climate":
      return <ClimateDialog onClose={close} />;
    case "season":
      return <SeasonDialog onClose={close} />;
    case "figures":
      return (
        <FigurePlanDialog kindId={dialog.kindId} varietyId={dialog.varietyId} onClose={close} />
      );
    case "own-kinds":
      return <OwnKindsDialog onClose={close} />;
    case "outline-import":
      return <OutlineImportDialog onClose={close} />;
    case "earlier-crops":
      return <EarlierCropsDialog onClose={close} />;
    case "variety-list":
      return <VarietyCsvDialog onClose={close} />;
    case "files":
      return <FilesDialog onClose={close} />;
    case "plot-map":
      return <PlotMapDialog onClose={close} />;
  }
}
