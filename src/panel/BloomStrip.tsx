import { memo, useDeferredValue, useEffect, useMemo, useRef } from "react";
import type { Hatch } from "../core/exports/hatch.ts";
import type { Plan, Site } from "../core/model/plan.ts";
import { usePlanStore } from "../store/plan-store.ts";
import { BloomAxis } from "./BloomAxis.tsx";
import { BloomRowLine } from "./BloomRowLine.tsx";
import { DaySlider } from "./DaySlider.tsx";
import { type BloomRow, type BloomStripRows, bloomRowWords, bloomRows } from "./bloom-rows.ts";
import { type TimeAxis, startPercent, timeAxis, widthPercent } from "./time-axis.ts";
import { useHatches } from "./use-hatches.ts";
import { useShownPlan } from "./use-shown-plan.ts";
import { useViewState } from "./view-state.ts";
import { planNow } from "./plan-actions.ts";

/** Who flowers when; where conflicting windows lie over each other; what is open on one day. */
export function BloomStrip() {
  const isOpen = useViewState((state) => state.isBloomOpen);
  const toggle = useViewState((state) => state.toggleBloom);
  return (
    <section className="region bloom" aria-labelledby="bloom-heading">
      <header className="region-head">
        <h2 id="bloom-heading">Bloom</h2>
        <p className="region-note">
          hatched: likely; dashed: earliest to latest; barred below: open together with a conflict
        </p>
        <button type="button" className="quiet fold" aria-expanded={isOpen} onClick={toggle}>
          {isOpen ? "Fold" : "Unfold"}
        </button>
      </header>
      {isOpen && <BloomChart />}
    </section>
  );
}

function BloomChart() {
  // The strip may lag behind a drag: the sheet comes first.
  const result = useDeferredValue(usePlanStore((state) => state.result));
  const selection = useDeferredValue(usePlanStore((state) => state.selection));
  const plan = useDeferredValue(useShownPlan());
  const { season, site } = plan;
  const hatchOf = useHatches(plan);
  const strip = useMemo(() => bloomRows(result, selection), [result, selection]);
  const axis = useMemo(() => stripAxis(strip.rows, season, site), [strip, season, site]);
  if (strip.rows.length === 0 && strip.undated.length === 0) {
    return <p className="region-empty">Nothing that flowers is placed yet.</p>;
  }
  return (
    <div className="bloom-chart">
      <DaySlider axis={axis} rows={strip.rows} />
      <div className="bloom-body">
        <div className="bloom-plot">
          <BloomAxis axis={axis} frosts={site} />
          <BloomRowList strip={strip} axis={axis} hatchOf={hatchOf} />
        </div>
      </div>
    </div>
  );
}

/** Months around all windows, and around the season's frosts. */
function stripAxis(rows: readonly BloomRow[], season: Plan["season"], site: Site): TimeAxis {
  const frosts = [site.lastSpringFrost, site.firstAutumnFrost]
    .filter((day) => day !== undefined)
    .filter((day) => day >= season.first && day <= season.last);
  const days = rows.flatMap((row) => [row.outer.first, row.outer.last]);
  return timeAxis([...days, ...(days.length > 0 ? frosts : [])], season);
}

interface BloomRowListProps {
  readonly strip: BloomStripRows;
  readonly axis: TimeAxis;
  readonly hatchOf: ReadonlyMap<string, Hatch>;
}

const BloomRowList = memo(function BloomRowList({ strip, axis, hatchOf }: BloomRowListProps) {
  const ref = useRef<HTMLUListElement>(null);
  const firstSelected = strip.rows.find((row) => row.isSelected)?.id;
  useEffect(() => {
    if (firstSelected === undefined) return;
    ref.current?.querySelector('[aria-pressed="true"]')?.scrollIntoView({ block: "nearest" });
  }, [firstSelected]);
  return (
    <ul className="bloom-rows" ref={ref}>
      {strip.rows.map((row) => (
        <BloomRowLine
          key={row.id}
          id={row.id}
          code={row.code}
          name={row.name}
          words={bloomRowWords(row)}
          hatch={hatchOf.get(row.group)}
          isSelected={row.isSelected}
          likely={span(axis, row.likely)}
          outer={span(axis, row.outer)}
          overlaps={row.overlaps.map((window) => span(axis, window)).join(" ")}
        />
      ))}
      {strip.undated.map(({ id, code }) => (
        <li key={id} className="bloom-row">
          <button type="button" className="bloom-code" onClick={() => planNow().select([id])}>
            {code}
          </button>
          <span className="soft">no bloom dates</span>
        </li>
      ))}
    </ul>
  );
});

/** A window as `start,width` in percent of the axis: text, so that a row knows when it is unchanged. */
function span(axis: TimeAxis, { first, last }: { first: number; last: number }): string {
  return `${startPercent(axis, first)},${widthPercent(axis, first, last)}`;
}
