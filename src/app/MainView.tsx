import { Suspense, lazy } from "react";
import { Sheet } from "../canvas/sheet/Sheet.tsx";
import { usePlanStore } from "../store/plan/plan-store.ts";
import { useSheetPlace } from "../store/window/sheet-place.ts";
import { useWindowStore } from "../store/window/window-store.ts";
import { ClearGroundLine } from "../panel/findings/ClearGroundLine.tsx";
import { StatusLine } from "../panel/window/Announcer.tsx";
import { HiddenLine } from "../panel/window/ShowMenu.tsx";
import { RegionBoundary } from "../panel/window/RegionBoundary.tsx";
import { useViewState } from "../panel/state/view-state.ts";
import * as texts from "./words.ts";

/** Where they cannot be fetched the sheet is as usable without them. */
const FirstSteps = lazy(() =>
  import("../panel/window/FirstSteps.tsx").then(
    ({ FirstSteps: Loaded }) => ({ default: Loaded }),
    () => ({ default: () => null }),
  ),
);
const ReadingLine = lazy(async () => ({
  default: (await import("../panel/grown/ReadingLine.tsx")).ReadingLine,
}));
const Tables = lazy(async () => ({
  default: (await import("../panel/tables/Tables.tsx")).Tables,
}));
const Lots = lazy(async () => ({
  default: (await import("../panel/shelf/Lots.tsx")).Lots,
}));
const Walk = lazy(async () => ({
  default: (await import("../panel/walk/Walk.tsx")).Walk,
}));
const PlotCard = lazy(async () => ({
  default: (await import("../panel/walk/PlotCard.tsx")).PlotCard,
}));
const PlaceLine = lazy(async () => ({
  default: (await import("../panel/walk/PlaceLine.tsx")).PlaceLine,
}));
const CompareView = lazy(async () => ({
  default: (await import("./CompareView.tsx")).CompareView,
}));

/** Over the sheet: that it is read as grown, and what to do with an empty one. */
function Lines() {
  const isGrown = usePlanStore(({ reading }) => reading !== null);
  const isEmpty = usePlanStore(({ kept }) => kept.layout.plantings.length === 0);
  return (
    <Suspense fallback={null}>
      {isGrown && <ReadingLine />}
      {isEmpty && <FirstSteps />}
    </Suspense>
  );
}

/** The sheet, the tables, the lots, the compared layouts or the walk. */
export function MainView() {
  const view = useViewState((state) => state.view);
  return (
    <div className="main-view">
      {/* Kept in place behind the tables, so that it comes back as it was left. */}
      <div className="sheet-holder" inert={view !== "sheet"}>
        <RegionBoundary title={texts.sheetNotShown}>
          <Sheet />
          <ClearGroundLine />
          <HiddenLine />
          <Lines />
          <OnTheSheet />
        </RegionBoundary>
      </div>
      {view === "tables" && (
        <RegionBoundary title={texts.tablesNotShown}>
          <Suspense fallback={<p role="status">{texts.loadingTables}</p>}>
            <Tables />
          </Suspense>
        </RegionBoundary>
      )}
      {view === "lots" && (
        <RegionBoundary title={texts.lotsNotShown}>
          <Suspense fallback={<p role="status">{texts.loadingLots}</p>}>
            <Lots />
          </Suspense>
        </RegionBoundary>
      )}
      {view === "walk" && (
        <RegionBoundary title={texts.walkNotShown}>
          <Suspense fallback={<p role="status">{texts.loadingWalk}</p>}>
            <Walk />
          </Suspense>
        </RegionBoundary>
      )}
      {view === "compare" && (
        <RegionBoundary title={texts.comparisonNotShown}>
          <Suspense fallback={<p role="status">{texts.loadingComparison}</p>}>
            <CompareView />
          </Suspense>
        </RegionBoundary>
      )}
      <StatusLine />
    </div>
  );
}

/** What a finger asked for by a tap, and where the grower stands: fetched when asked for. */
function OnTheSheet() {
  const tapped = useWindowStore(({ selection, tool }) =>
    tool === "select" && selection.length === 1 ? selection[0] : undefined,
  );
  const isClear = useViewState(({ drawer }) => drawer === null);
  const isPlaced = useSheetPlace(({ place }) => place !== null);
  const isTapped = tapped !== undefined && isClear && matchMedia("(pointer: coarse)").matches;
  return (
    <Suspense fallback={null}>
      {isTapped && <PlotCard id={tapped} />}
      {isPlaced && <PlaceLine />}
    </Suspense>
  );
}
