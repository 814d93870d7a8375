import { Suspense, lazy } from "react";
import { Sheet } from "../canvas/sheet/Sheet.tsx";
import { ClearGroundLine } from "../panel/findings/ClearGroundLine.tsx";
import { FirstSteps } from "../panel/window/FirstSteps.tsx";
import { HiddenLine } from "../panel/window/ShowMenu.tsx";
import { RegionBoundary } from "../panel/window/RegionBoundary.tsx";
import { useViewState } from "../panel/state/view-state.ts";

const Tables = lazy(async () => ({
  default: (await import("../panel/tables/Tables.tsx")).Tables,
}));
const Lots = lazy(async () => ({
  default: (await import("../panel/shelf/Lots.tsx")).Lots,
}));
const CompareView = lazy(async () => ({
  default: (await import("./CompareView.tsx")).CompareView,
}));

/** The sheet, the tables, the lots or the compared layouts. */
export function MainView() {
  const view = useViewState((state) => state.view);
  return (
    <div className="main-view">
      {/* Kept in place behind the tables, so that it comes back as it was left. */}
      <div className="sheet-holder" inert={view !== "sheet"}>
        <RegionBoundary name="The sheet">
          <Sheet />
          <ClearGroundLine />
          <HiddenLine />
          <FirstSteps />
        </RegionBoundary>
      </div>
      {view === "tables" && (
        <RegionBoundary name="The tables">
          <Suspense fallback={<p role="status">Loading the tables ...</p>}>
            <Tables />
          </Suspense>
        </RegionBoundary>
      )}
      {view === "lots" && (
        <RegionBoundary name="The lots">
          <Suspense fallback={<p role="status">Loading the lots ...</p>}>
            <Lots />
          </Suspense>
        </RegionBoundary>
      )}
      {view === "compare" && (
        <RegionBoundary name="The compared layouts">
          <Suspense fallback={<p role="status">Loading the comparison ...</p>}>
            <CompareView />
          </Suspense>
        </RegionBoundary>
      )}
    </div>
  );
}
