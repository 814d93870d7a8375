import { memo } from "react";
import { shortDate } from "../core/model/day.ts";
import type { Site } from "../core/model/plan.ts";
import { usePlanStore } from "../store/plan-store.ts";
import { type TimeAxis, startPercent, widthPercent } from "./time-axis.ts";

interface BloomAxisProps {
  readonly axis: TimeAxis;
  readonly frosts: Pick<Site, "lastSpringFrost" | "firstAutumnFrost">;
}

/** Months, frosts and the day cursor, drawn behind the rows. */
export function BloomAxis({ axis, frosts }: BloomAxisProps) {
  const day = usePlanStore((state) => state.day);
  return (
    <div className="bloom-axis" aria-hidden="true">
      <Months axis={axis} />
      <FrostLine axis={axis} day={frosts.lastSpringFrost} label="last frost" />
      <FrostLine axis={axis} day={frosts.firstAutumnFrost} label="first frost" />
      {day !== null && day >= axis.first && day <= axis.last && (
        <div className="day-cursor" style={{ left: `${middlePercent(axis, day)}%` }} />
      )}
    </div>
  );
}

/** The middle of a day on the axis, percent. */
function middlePercent(axis: TimeAxis, day: number): number {
  return startPercent(axis, day) + widthPercent(axis, day, day) / 2;
}

const Months = memo(function Months({ axis }: { readonly axis: TimeAxis }) {
  return axis.months.map(({ day, label }) => (
    <div key={day} className="month" style={{ left: `${startPercent(axis, day)}%` }}>
      {label}
    </div>
  ));
});

interface FrostLineProps {
  readonly axis: TimeAxis;
  readonly day: number | undefined;
  readonly label: string;
}

function FrostLine({ axis, day, label }: FrostLineProps) {
  if (day === undefined || day < axis.first || day > axis.last) return null;
  return (
    <div className="frost-line" style={{ left: `${startPercent(axis, day)}%` }}>
      <span>
        {label} {shortDate(day)}
      </span>
    </div>
  );
}
