import { memo } from "react";
import { dailyCourse } from "../../core/calendar/daily-course.ts";
import type { Climate } from "../../core/model/plan.ts";
import { fullMonths } from "../../core/words/month-words.ts";

const WIDTH = 365;
const HEIGHT = 90;

interface ClimateChartProps {
  readonly normals: NonNullable<Climate["normals"]>;
}

/** The year's usual course of days, from lowest to highest: a mistyped month stands out. */
export const ClimateChart = memo(function ClimateChart({ normals }: ClimateChartProps) {
  const low = dailyCourse(normals.minC);
  const high = dailyCourse(normals.maxC);
  const least = Math.min(0, ...low);
  const most = Math.max(...high);
  const y = (celsius: number) => (((most - celsius) / (most - least || 1)) * HEIGHT).toFixed(1);
  const points = (course: Float64Array) =>
    Array.from(course, (celsius, day) => `${day},${y(celsius)}`);
  const band = [...points(high), ...points(low).reverse()].join(" ");
  return (
    <div className="climate-chart" aria-hidden="true">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} preserveAspectRatio="none" focusable="false">
        <polygon className="climate-band" points={band} />
        <line className="climate-freezing" x1={0} x2={WIDTH} y1={y(0)} y2={y(0)} />
      </svg>
      <p>
        {fullMonths.map((name) => (
          <span key={name}>{name.slice(0, 1)}</span>
        ))}
      </p>
    </div>
  );
});
