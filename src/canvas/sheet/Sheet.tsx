import { Suspense, lazy, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useFirstPicture } from "../../store/window/first-picture.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { areIdsWithin, boundsOfIds, contentBounds } from "../scene/content-bounds.ts";
import { DraftBar } from "./DraftBar.tsx";
import { listenToKeys } from "../input/key-input.ts";
import { AboveLayer } from "./AboveLayer.tsx";
import { PictureLayer } from "./PictureLayer.tsx";
import { listenToPointers } from "../input/pointer-input.ts";
import { LayersPlace } from "./SheetShape.tsx";
import { SheetSwitches } from "./SheetSwitches.tsx";
import { StaticLayer } from "./StaticLayer.tsx";
import { useColours } from "../draw/sheet-colours.ts";
import { useSketch } from "../tools/sketch-store.ts";
import { tools } from "../tools/tool-list.ts";
import { listenToDrops } from "../input/variety-drop.ts";
import { useView, zoomAboutMiddle } from "../scene/view-store.ts";
import { visibleBounds } from "../scene/viewport.ts";
import { listenToWheel } from "../input/wheel-input.ts";
import { ZoomButtons } from "./ZoomButtons.tsx";
import { useZoomRequest } from "../../store/window/zoom-request.ts";
import * as texts from "./words.ts";
import "./sheet.css";

/** Fetched a moment after the sheet, long before the first key; without it all is drawn by hand. */
const TypedFields = lazy(() =>
  import("./TypedFields.tsx").then(
    ({ TypedFields: Loaded }) => ({ default: Loaded }),
    () => ({ default: () => null }),
  ),
);

/** The drawing of the plan. Fills the box it is put in. */
export function Sheet() {
  const holder = useRef<HTMLDivElement>(null);
  const siteName = usePlanStore((state) => state.shown.site.name);
  const tool = useWindowStore((state) => state.tool);
  const cursor = useSketch((state) => state.cursor);
  const view = useView((state) => state.view);
  const widthPx = useView((state) => state.widthPx);
  const heightPx = useView((state) => state.heightPx);
  const colours = useColours();
  const [place, setPlace] = useState<HTMLElement | null>(null);
  useSize(holder);
  usePixelRatio();
  useViewRequests(widthPx > 0 && heightPx > 0);
  useZoomRequests();
  useInput(holder);
  useEffect(() => {
    tools[tool].take?.();
    return tools[tool].leave;
  }, [tool]);
  return (
    <>
      <div
        ref={holder}
        className="sheet"
        role="group"
        tabIndex={0}
        aria-label={texts.sheetOf(siteName)}
        data-view={JSON.stringify(view)}
        style={{ background: colours.sheet, cursor: cursor ?? tools[tool].cursor }}
      >
        <div ref={widthPx > 0 && heightPx > 0 ? setPlace : null} role="presentation" />
        <LayersPlace value={place}>
          <PictureLayer colours={colours} />
          <StaticLayer colours={colours} />
          <AboveLayer colours={colours} />
        </LayersPlace>
      </div>
      <DraftBar />
      <SheetSwitches />
      <ZoomButtons />
      <LateFields />
    </>
  );
}

function LateFields() {
  const isPainted = useFirstPicture((state) => state.isPainted);
  return <Suspense fallback={null}>{isPainted && <TypedFields />}</Suspense>;
}

type Holder = React.RefObject<HTMLDivElement | null>;

function useSize(holder: Holder): void {
  const openings = usePlanStore((state) => state.openings);
  const measure = useMemo(() => measuring(holder), [holder]);
  // Before anything is painted: the sheet is drawn with the window, not after it, and a plan just
  // opened once, though what was said of the one before has made room.
  useLayoutEffect(() => {
    if (openings >= 0) measure();
  }, [measure, openings]);
  useLayoutEffect(() => {
    const element = holder.current;
    if (!element) return;
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [holder, measure]);
}

/** What tells the view how large the sheet is, and where it has moved in the window. */
function measuring(holder: Holder): () => void {
  let last: { readonly x: number; readonly y: number; readonly window: string } | null = null;
  return () => {
    const size = holder.current?.getBoundingClientRect();
    if (!size) return;
    const before = useView.getState();
    const now = { x: size.left, y: size.top, window: `${innerWidth} ${innerHeight}` };
    const isBeside = last?.window === now.window;
    const movedPx = last && isBeside ? { x: now.x - last.x, y: now.y - last.y } : null;
    last = now;
    const widthPx = Math.round(size.width);
    const heightPx = Math.round(size.height);
    // A sheet that is hidden for a while keeps its view.
    if (widthPx === 0 || heightPx === 0) return;
    if (widthPx === before.widthPx && heightPx === before.heightPx) return;
    before.resize({ widthPx, heightPx }, movedPx);
  };
}

/** Follows browser zoom and moves to another screen. */
function usePixelRatio(): void {
  const ratio = useView((state) => state.ratio);
  useEffect(() => {
    const query = matchMedia(`(resolution: ${ratio}dppx)`);
    const follow = () => useView.getState().setRatio(devicePixelRatio);
    follow();
    query.addEventListener("change", follow);
    window.addEventListener("resize", follow);
    return () => {
      query.removeEventListener("change", follow);
      window.removeEventListener("resize", follow);
    };
  }, [ratio]);
}

/** Brings into view what the rest of the window asks for. */
function useViewRequests(hasSize: boolean): void {
  const request = useWindowStore((state) => state.viewRequest);
  // Before anything is painted: a plan just opened is drawn once, in the view that shows it.
  useLayoutEffect(() => {
    if (!hasSize) return;
    const { shown, layoutId, result } = usePlanStore.getState();
    const layout = layoutOf(shown, layoutId);
    const { fit, view, widthPx, heightPx } = useView.getState();
    if (request.isIfOutside === true && request.ids !== "all") {
      const visible = visibleBounds(view, { widthPx, heightPx });
      if (areIdsWithin(shown, layout, request.ids, visible)) return;
    }
    const bounds =
      request.ids === "all"
        ? contentBounds(shown, layout)
        : boundsOfIds(shown, layout, request.ids, requiredOf(result, request.ids));
    if (bounds) fit(bounds);
  }, [request, hasSize]);
}

/** Zooms when a command of the window says so. */
function useZoomRequests(): void {
  useEffect(
    () =>
      useZoomRequest.subscribe(({ asked }) => {
        if (asked) zoomAboutMiddle(asked.direction);
      }),
    [],
  );
}

/** The longest isolation distance any of these plantings needs, metres. */
function requiredOf({ standById }: CheckResult, ids: readonly string[]): number {
  return Math.max(0, ...ids.map((id) => standById.get(id)?.requirement?.metres ?? 0));
}

function useInput(holder: Holder): void {
  useEffect(() => {
    const element = holder.current;
    if (!element) return;
    const pointers = listenToPointers(element);
    const stops = [
      listenToKeys(element, pointers),
      listenToWheel(element),
      listenToDrops(element),
      pointers.stop,
    ];
    return () => {
      for (const stop of stops) stop();
    };
  }, [holder]);
}
