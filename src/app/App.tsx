import { Suspense, lazy, useEffect } from "react";
import { Sheet } from "../canvas/Sheet.tsx";
import { Announcer } from "../panel/Announcer.tsx";
import { BloomStrip } from "../panel/BloomStrip.tsx";
import { ClearGroundLine } from "../panel/ClearGroundLine.tsx";
import { Dialogs } from "../panel/Dialogs.tsx";
import { DrawerBar } from "../panel/DrawerBar.tsx";
import { Findings } from "../panel/Findings.tsx";
import { FirstSteps } from "../panel/FirstSteps.tsx";
import { HatchPatterns } from "../panel/HatchSwatch.tsx";
import { Header } from "../panel/Header.tsx";
import { Notices } from "../panel/Notices.tsx";
import { Particulars } from "../panel/Particulars.tsx";
import { PictureRegion } from "../panel/PictureRegion.tsx";
import { RegionBoundary } from "../panel/RegionBoundary.tsx";
import { SeedList } from "../panel/SeedList.tsx";
import { HiddenLine } from "../panel/ShowMenu.tsx";
import { SkipLinks } from "../panel/SkipLinks.tsx";
import { ToolBar } from "../panel/ToolBar.tsx";
import { ViewBar } from "../panel/ViewBar.tsx";
import { ViewTabs } from "../panel/ViewTabs.tsx";
import { useShownPlan } from "../panel/use-shown-plan.ts";
import { useViewState } from "../panel/view-state.ts";
import { samples } from "./samples.ts";
import { useShortcuts } from "./use-shortcuts.ts";

const Tables = lazy(async () => ({
  default: (await import("../panel/Tables.tsx")).Tables,
}));
const CompareView = lazy(async () => ({
  default: (await import("./CompareView.tsx")).CompareView,
}));

/** The window: header, seed list, sheet with bloom strip, findings and particulars. */
export function App() {
  const { title } = useShownPlan();
  const view = useViewState((state) => state.view);
  const drawer = useViewState((state) => state.drawer);
  useShortcuts();
  useEffect(() => {
    document.title = title;
  }, [title]);
  return (
    <div className="window" data-drawer={drawer ?? "none"} data-view={view}>
      <SkipLinks />
      <HatchPatterns />
      <RegionBoundary name="The header">
        <Header samples={samples} />
      </RegionBoundary>
      <Notices />
      <div className="seed-column drawer" data-region="seed-list">
        <RegionBoundary name="The seed list">
          <SeedList />
        </RegionBoundary>
      </div>
      <main className="main-column" id="main" tabIndex={-1}>
        <div className="main-bar">
          <ViewTabs />
          <ViewBar />
          <ToolBar />
        </div>
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
          {view === "compare" && (
            <RegionBoundary name="The compared layouts">
              <Suspense fallback={<p role="status">Loading the comparison ...</p>}>
                <CompareView />
              </Suspense>
            </RegionBoundary>
          )}
        </div>
        <div className="drawer" data-region="bloom">
          <RegionBoundary name="The bloom strip">
            <BloomStrip />
          </RegionBoundary>
        </div>
      </main>
      <div className="side-column">
        <div className="drawer" data-region="findings" id="findings">
          <RegionBoundary name="The findings">
            <Findings />
          </RegionBoundary>
        </div>
        <div className="drawer" data-region="particulars">
          <RegionBoundary name="The particulars">
            <PictureRegion />
            <Particulars />
          </RegionBoundary>
        </div>
      </div>
      <DrawerBar />
      <Dialogs />
      <Announcer />
    </div>
  );
}
