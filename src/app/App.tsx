import { type ReactNode, Suspense, lazy, useEffect } from "react";
import { BloomStrip } from "../panel/bloom/BloomStrip.tsx";
import { Announcer } from "../panel/window/Announcer.tsx";
import { Dialogs } from "../panel/window/Dialogs.tsx";
import { DrawerBar } from "../panel/window/DrawerBar.tsx";
import { Findings } from "../panel/findings/Findings.tsx";
import { HatchPatterns } from "../panel/state/HatchSwatch.tsx";
import { Header } from "../panel/window/Header.tsx";
import { Notices } from "../panel/keeping/Notices.tsx";
import { Particulars } from "../panel/particulars/Particulars.tsx";
import { PictureRegion } from "../panel/picture/PictureRegion.tsx";
import { RegionBoundary } from "../panel/window/RegionBoundary.tsx";
import { SeedList } from "../panel/seed-list/SeedList.tsx";
import { SkipLinks } from "../panel/window/SkipLinks.tsx";
import { ToolLine } from "../panel/window/ToolLine.tsx";
import { ViewBar } from "../panel/window/ViewBar.tsx";
import { ViewTabs } from "../panel/window/ViewTabs.tsx";
import { useShownPlan } from "../panel/state/use-shown-plan.ts";
import { useViewState } from "../panel/state/view-state.ts";
import { useFirstPicture } from "../store/window/first-picture.ts";
import { MainView } from "./MainView.tsx";
import { useChosenInSight } from "./use-chosen-in-sight.ts";
import { useShortcuts } from "./use-shortcuts.ts";
import * as texts from "./words.ts";

const LotParticulars = lazy(async () => ({
  default: (await import("../panel/lots/LotParticulars.tsx")).LotParticulars,
}));
const YearStrip = lazy(async () => ({
  default: (await import("../panel/earlier-crops/YearStrip.tsx")).YearStrip,
}));

/** The window: header, seed list, sheet with bloom strip, findings and particulars. */
export function App() {
  const { title } = useShownPlan();
  const view = useViewState((state) => state.view);
  const drawer = useViewState((state) => state.drawer);
  // Only the seed list and the bloom strip are hatched by them.
  const isPainted = useFirstPicture((state) => state.isPainted);
  useShortcuts();
  useChosenInSight();
  useEffect(() => {
    document.title = title;
  }, [title]);
  return (
    <div className="window" data-drawer={drawer ?? "none"} data-view={view}>
      <SkipLinks />
      {isPainted && <HatchPatterns />}
      <RegionBoundary title={texts.headerNotShown}>
        <Header />
      </RegionBoundary>
      <Notices />
      <Drawer region="seed-list" title={texts.seedListNotShown} className="seed-column drawer">
        <SeedList />
      </Drawer>
      <MainColumn />
      <div className="side-column">
        <Drawer region="findings" title={texts.findingsNotShown} id="findings">
          <Findings />
        </Drawer>
        <Drawer region="particulars" title={texts.particularsNotShown}>
          <PictureRegion />
          {view === "lots" ? (
            <Suspense fallback={null}>
              <LotParticulars />
            </Suspense>
          ) : (
            <Particulars />
          )}
        </Drawer>
      </div>
      <DrawerBar />
      <Dialogs />
      <Announcer />
    </div>
  );
}

/** The view picked, and the strips under it. */
function MainColumn() {
  const { earlierCrops } = useShownPlan();
  const view = useViewState((state) => state.view);
  return (
    <main className="main-column" id="main" tabIndex={-1}>
      <div className="main-bar">
        <ViewTabs />
        <ViewBar />
        <ToolLine />
      </div>
      <MainView />
      {view === "sheet" && earlierCrops.length > 0 && (
        <Suspense fallback={null}>
          <YearStrip />
        </Suspense>
      )}
      <Drawer region="bloom" title={texts.bloomNotShown}>
        <BloomStrip />
      </Drawer>
    </main>
  );
}

interface DrawerProps {
  readonly region: string;
  /** What is said where it cannot be shown. */
  readonly title: string;
  readonly className?: string;
  readonly id?: string;
  readonly children: ReactNode;
}

/** A part of the window that a small screen pulls up; a fault in it leaves the others working. */
function Drawer({ region, title, className = "drawer", id, children }: DrawerProps) {
  return (
    <div className={className} data-region={region} id={id}>
      <RegionBoundary title={title}>{children}</RegionBoundary>
    </div>
  );
}
