import { Suspense, lazy, useEffect } from "react";
import { Sheet } from "../canvas/sheet/Sheet.tsx";
import { Announcer } from "../panel/window/Announcer.tsx";
import { ClearGroundLine } from "../panel/findings/ClearGroundLine.tsx";
import { Dialogs } from "../panel/window/Dialogs.tsx";
import { DrawerBar } from "../panel/window/DrawerBar.tsx";
import { Findings } from "../panel/findings/Findings.tsx";
import { FirstSteps } from "../panel/window/FirstSteps.tsx";
import { HatchPatterns } from "../panel/state/HatchSwatch.tsx";
import { Header } from "../panel/window/Header.tsx";
import { Notices } from "../panel/keeping/Notices.tsx";
import { Particulars } from "../panel/particulars/Particulars.tsx";
import { PictureRegion } from "../panel/picture/PictureRegion.tsx";
import { RegionBoundary } from "../panel/window/RegionBoundary.tsx";
import { SeedList } from "../panel/seed-list/SeedList.tsx";
import { HiddenLine } from "../panel/window/ShowMenu.tsx";
import { SkipLinks } from "../panel/window/SkipLinks.tsx";
import { ToolBar } from "../panel/window/ToolBar.tsx";
import { ViewBar } from "../panel/window/ViewBar.tsx";
import { ViewTabs } from "../panel/window/ViewTabs.tsx";
import { useShownPlan } from "../panel/state/use-shown-plan.ts";
import { useViewState } from "../panel/state/view-state.ts";
import { useShortcuts } from "./use-shortcuts.ts";

/** Asked for at once, so that it is there with the sheet or a moment later; the sheet waits for nothing. */
const bloomStrip = import("../panel/bloom/BloomStrip.tsx");
const BloomStrip = lazy(async () => ({ default: (await bloomStrip).BloomStrip }));
const Tables = lazy(async () => ({
  default: (await import("../panel/tables/Tables.tsx")).Tables,
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
        <Header />
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
            <Suspense fallback={<p role="status">Loading the bloom strip ...</p>}>
              <BloomStrip />
            </Suspense>
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
