import { memo } from "react";
import type { Estimate } from "../../core/lots/estimate.ts";
import type { Lot } from "../../core/model/plan.ts";
import { type CurveBox, lifeCurve } from "./life-curve.ts";

interface LifeCurveProps {
  readonly lot: Lot;
  readonly estimate: Estimate | null;
  /** Fraction of 1. */
  readonly standard: number;
  readonly today: number;
  readonly box: CurveBox;
  /** What it says in words; without it the words stand beside it. */
  readonly label?: string;
  readonly hasYears?: boolean;
}

/** Germination over the years: the band, tests as dots with their intervals, the standard as a line. */
export const LifeCurve = memo(function LifeCurve(props: LifeCurveProps) {
  const { lot, estimate, standard, today, box, label, hasYears = false } = props;
  const marks = lifeCurve({ lot, estimate, standard, today }, box);
  const { width, height } = box;
  const foot = hasYears ? 14 : 0;
  const left = hasYears ? 34 : 0;
  const top = hasYears ? 8 : 3;
  return (
    <svg
      className="life-curve"
      viewBox={`${-left} ${-top} ${width + left + 3} ${height + top + 3 + foot}`}
      role={label === undefined ? undefined : "img"}
      aria-label={label}
      aria-hidden={label === undefined}
    >
      <path className="life-frame" d={`M0,0V${height}H${width}`} />
      {marks.band !== "" && <path className="life-band" d={marks.band} />}
      <path className="life-standard" d={`M0,${marks.standardY}H${width}`} />
      <path className="life-today" d={`M${marks.todayX},0V${height}`} />
      {marks.dots.map((dot, index) => (
        <g key={index}>
          <path className="life-interval" d={`M${dot.x},${dot.top}V${dot.bottom}`} />
          <circle className="life-test" cx={dot.x} cy={dot.y} r={hasYears ? 3.5 : 2.5} />
        </g>
      ))}
      {hasYears && <CurveScales height={height} years={marks.years} />}
    </svg>
  );
});

interface CurveScalesProps {
  readonly height: number;
  readonly years: readonly { readonly year: number; readonly x: number }[];
}

function CurveScales({ height, years }: CurveScalesProps) {
  return (
    <g className="life-scale">
      {[0, 50, 100].map((percent) => (
        <text key={percent} x={-4} y={height * (1 - percent / 100) + 4} textAnchor="end">
          {percent} %
        </text>
      ))}
      {years.map(({ year, x }) => (
        <text key={year} x={x} y={height + 13} textAnchor="middle">
          {year}
        </text>
      ))}
    </g>
  );
}
