import { useEffect, useMemo, useRef, useState } from "react";
import { joinBounds } from "../../core/geometry/bounds.ts";
import type { Plan } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { plotsBounds } from "../scene/content-bounds.ts";
import { type ComparePane, drawPane } from "./draw-compare.ts";
import { drawNorthArrow, drawScaleBar } from "../draw/draw-furniture.ts";
import { type Colours, useColours } from "../draw/sheet-colours.ts";
import { type LinkedView, useLinkedView } from "./use-linked-view.ts";
import type { Size } from "../scene/viewport.ts";
import * as texts from "./words.ts";
import * as said from "../scene/mark-words.ts";

interface CompareSheetsProps {
  readonly panes: readonly ComparePane[];
  /** Old places are drawn as well. */
  readonly isOverlaid: boolean;
}

/** Layouts drawn beside each other; what is panned or zoomed on one is so on all. */
export function CompareSheets({ panes, isOverlaid }: CompareSheetsProps) {
  const plan = usePlanStore((state) => state.shown);
  const colours = useColours();
  const [size, setSize] = useState<Size>({ widthPx: 1, heightPx: 1 });
  const bounds = useMemo(
    () =>
      joinBounds(
        panes.flatMap(({ layout, against }) => [
          plotsBounds(plan, layout),
          ...(against ? [plotsBounds(plan, against)] : []),
        ]),
      ) ?? { minX: 0, minY: 0, maxX: 1, maxY: 1 },
    [plan, panes],
  );
  const linked = useLinkedView(bounds, size);
  return (
    <div className="compare-drawing">
      <div className="compare-zoom" role="group" aria-label={texts.viewOfTheLayouts}>
        <button type="button" aria-label={texts.zoomIn} onClick={() => linked.zoomBy(1.5)}>
          +
        </button>
        <button type="button" aria-label={texts.zoomOut} onClick={() => linked.zoomBy(1 / 1.5)}>
          −
        </button>
        <button type="button" onClick={linked.fit}>
          {texts.fitAll}
        </button>
      </div>
      <div className="compare-panes">
        {panes.map((pane, index) => (
          <Pane
            key={pane.layout.id}
            plan={plan}
            pane={pane}
            isOverlaid={isOverlaid}
            colours={colours}
            linked={linked}
            onSize={index === 0 ? setSize : null}
          />
        ))}
      </div>
    </div>
  );
}

interface PaneProps {
  readonly plan: Plan;
  readonly pane: ComparePane;
  readonly isOverlaid: boolean;
  readonly colours: Colours;
  readonly linked: LinkedView;
  /** The first drawing says how large they all are. */
  readonly onSize: ((size: Size) => void) | null;
}

function Pane({ plan, pane, isOverlaid, colours, linked, onSize }: PaneProps) {
  const holder = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const [size, setSize] = useState<Size>({ widthPx: 0, heightPx: 0 });
  const book = usePlanStore((state) => state.book);
  const { name } = pane.layout;
  const title = isOverlaid && pane.against ? said.overlaid(pane.against.name, name) : name;
  useEffect(() => {
    const element = holder.current;
    if (!element) return;
    const observer = new ResizeObserver(() => {
      const measured = { widthPx: element.clientWidth, heightPx: element.clientHeight };
      setSize(measured);
      onSize?.(measured);
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [onSize]);
  useWheelAndKeys(holder, linked);
  useEffect(() => {
    const element = canvas.current;
    const context = element?.getContext("2d");
    if (!element || !context || size.widthPx === 0) return;
    const ratio = devicePixelRatio;
    element.width = Math.round(size.widthPx * ratio);
    element.height = Math.round(size.heightPx * ratio);
    context.scale(ratio, ratio);
    const brush = { context, view: linked.view, colours, ratio, ...size };
    drawPane(brush, plan, book, pane, isOverlaid);
    drawScaleBar(brush, plan.units, "");
    drawNorthArrow(brush, plan.site.upBearingDeg);
  }, [plan, pane, book, isOverlaid, colours, linked.view, size]);
  return (
    <figure className="compare-pane">
      <figcaption>{title}</figcaption>
      <div
        ref={holder}
        className="compare-sheet"
        role="group"
        aria-label={texts.drawingOf(title)}
        tabIndex={0}
        data-view={JSON.stringify(linked.view)}
        {...linked.handlers}
      >
        <canvas ref={canvas} aria-hidden="true" />
      </div>
    </figure>
  );
}

/** By hand: React listens to the wheel passively, and the page would scroll as well. */
function useWheelAndKeys(holder: React.RefObject<HTMLDivElement | null>, linked: LinkedView): void {
  const latest = useRef(linked);
  useEffect(() => {
    latest.current = linked;
  }, [linked]);
  useEffect(() => {
    const element = holder.current;
    if (!element) return;
    const turn = (event: WheelEvent) => {
      event.preventDefault();
      const box = element.getBoundingClientRect();
      latest.current.wheel(event, { x: event.clientX - box.left, y: event.clientY - box.top });
    };
    const press = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (!latest.current.key(event.key)) return;
      event.preventDefault();
    };
    element.addEventListener("wheel", turn, { passive: false });
    element.addEventListener("keydown", press);
    return () => {
      element.removeEventListener("wheel", turn);
      element.removeEventListener("keydown", press);
    };
  }, [holder]);
}
