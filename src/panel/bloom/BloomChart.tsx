import { useDeferredValue, useMemo, useState } from "react";
import type { Hatch } from "../../core/page/hatch.ts";
import type { Plan, Site } from "../../core/model/plan.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { BloomFrosts, BloomLines, BloomMonths } from "./BloomAxis.tsx";
import { BloomLineList } from "./BloomLineList.tsx";
import { LINE_PX, useChartHeight } from "./bloom-height.ts";
import { DaySlider } from "./DaySlider.tsx";
import { LateSpringTrial } from "./LateSpringTrial.tsx";
import { type BloomLine, type BloomOrder, bloomLines, linesHeld } from "./bloom-order.ts";
import { type BloomRow, bloomRows } from "./bloom-rows.ts";
import { type TimeAxis, timeAxis } from "./time-axis.ts";
import { useFollowed } from "../state/followed-plan.ts";
import { useHatches } from "../state/use-hatches.ts";
import { useShownPlan, useShownResult } from "../state/use-shown-plan.ts";
import { useVisibleLines } from "../form/use-visible-lines.ts";
import * as texts from "./command-words.ts";

interface BloomBodyProps {
  readonly order: BloomOrder;
  readonly isTesting: boolean;
}

/** What lies in the strip: a late spring tried out, and the windows. */
export function BloomBody({ order, isTesting }: BloomBodyProps) {
  return (
    <>
      {isTesting && <LateSpringTrial />}
      <BloomChart order={order} />
    </>
  );
}

/** The windows of all that flowers over a time axis. */
function BloomChart({ order }: { readonly order: BloomOrder }) {
  // The strip may lag behind a drag: the sheet comes first.
  const result = useDeferredValue(useShownResult());
  const selection = useDeferredValue(useWindowStore((state) => state.selection));
  const isPreviewing = useDeferredValue(useFollowed((state) => state.previewing !== null));
  const plan = useDeferredValue(useShownPlan());
  const { season, site } = plan;
  const hatchOf = useHatches(plan);
  const strip = useMemo(() => bloomRows(result, selection), [result, selection]);
  const axis = useMemo(() => stripAxis(strip.rows, season, site), [strip, season, site]);
  const lines = useMemo(() => bloomLines(strip, order), [strip, order]);
  const held = useHeld(lines, axis, isPreviewing);
  if (lines.length === 0) {
    return <p className="region-empty">{texts.nothingFlowersYet}</p>;
  }
  return (
    <BloomPlot
      lines={held.lines}
      axis={held.axis}
      rows={strip.rows}
      season={season}
      site={site}
      hatchOf={hatchOf}
    />
  );
}

interface BloomPlotProps extends Held {
  readonly rows: readonly BloomRow[];
  readonly season: Plan["season"];
  readonly site: Site;
  readonly hatchOf: ReadonlyMap<string, Hatch>;
}

/** Slider, months, the lines in view, and frosts. */
function BloomPlot({ lines, axis, rows, season, site, hatchOf }: BloomPlotProps) {
  const { ref, onScroll, from, to, focused } = useVisibleLines(LINE_PX);
  const style = useChartHeight();
  return (
    <div className="bloom-chart" ref={ref} onScroll={onScroll} style={style}>
      <div className="bloom-head">
        <DaySlider axis={axis} rows={rows} />
        <BloomMonths axis={axis} />
      </div>
      <div className="bloom-plot">
        <BloomLines axis={axis} frosts={site} />
        <BloomLineList
          lines={lines}
          axis={axis}
          season={season}
          hatchOf={hatchOf}
          from={from}
          to={to}
          focused={focused}
          scroller={ref}
        />
      </div>
      <BloomFrosts axis={axis} frosts={site} />
    </div>
  );
}

interface Held {
  readonly lines: readonly BloomLine[];
  readonly axis: TimeAxis;
}

/** While something is dragged, axis and order stay as they were: no row slips away from the pointer. */
function useHeld(lines: readonly BloomLine[], axis: TimeAxis, isPreviewing: boolean): Held {
  const [resting, setResting] = useState<Held>({ lines, axis });
  if (!isPreviewing && (resting.lines !== lines || resting.axis !== axis)) {
    setResting({ lines, axis });
  }
  return useMemo(() => {
    if (!isPreviewing) return { lines, axis };
    const order = resting.lines.map((line) => line.id);
    return { lines: linesHeld(lines, order), axis: resting.axis };
  }, [isPreviewing, lines, axis, resting]);
}

/** Months around all windows, and around the season's frosts. */
function stripAxis(rows: readonly BloomRow[], season: Plan["season"], site: Site): TimeAxis {
  const frosts = [site.lastSpringFrost, site.firstAutumnFrost]
    .filter((day) => day !== undefined)
    .filter((day) => day >= season.first && day <= season.last);
  const days = rows.flatMap((row) => [row.outer.first, row.outer.last]);
  return timeAxis([...days, ...(days.length > 0 ? frosts : [])], season);
}
