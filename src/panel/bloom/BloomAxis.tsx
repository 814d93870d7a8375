/** What lies behind and around the rows: months, frosts, the day cursor. */
import * as texts from "./words.ts";
import { memo } from "react";
import { shortDate } from "../../core/model/day.ts";
import type { Site } from "../../core/model/plan.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { type TimeAxis, middlePercent, startPercent } from "./time-axis.ts";

interface BloomAxisProps {
  readonly axis: TimeAxis;
  readonly frosts: Pick<Site, "lastSpringFrost" | "firstAutumnFrost">;
}

/** Names of the months, above the rows. */
export const BloomMonths = memo(function BloomMonths({ axis }: { readonly axis: TimeAxis }) {
  return (
    <div className="bloom-months" aria-hidden="true">
      {axis.months.map(({ day, label }) => (
        <span key={day} style={{ left: `${startPercent(axis, day)}%` }}>
          {label}
        </span>
      ))}
    </div>
  );
});

/** Lines through all rows: months, frosts, the day cursor. */
export function BloomLines({ axis, frosts }: BloomAxisProps) {
  const day = useWindowStore((state) => state.day);
  return (
    <div className="bloom-lines" aria-hidden="true">
      {axis.months.map((month) => (
        <div key={month.day} className="month-line" style={left(startPercent(axis, month.day))} />
      ))}
      {frostDays(axis, frosts).map((frost) => (
        <div key={frost.day} className="frost-line" style={left(startPercent(axis, frost.day))} />
      ))}
      {day !== null && day >= axis.first && day <= axis.last && (
        <div className="day-cursor" style={left(middlePercent(axis, day))} />
      )}
    </div>
  );
}

/** What the frost lines are, below the rows. */
export function BloomFrosts({ axis, frosts }: BloomAxisProps) {
  const days = frostDays(axis, frosts);
  if (days.length === 0) return null;
  return (
    <div className="bloom-frosts">
      <div>
        {days.map(({ day, label }) => (
          <span
            key={day}
            className={startPercent(axis, day) > 80 ? "leftward" : undefined}
            style={left(startPercent(axis, day))}
          >
            {label} {shortDate(day)}
          </span>
        ))}
      </div>
    </div>
  );
}

function left(percent: number): { readonly left: string } {
  return { left: `${percent}%` };
}

function frostDays(
  axis: TimeAxis,
  { lastSpringFrost, firstAutumnFrost }: BloomAxisProps["frosts"],
) {
  return [
    { day: lastSpringFrost, label: texts.lastFrost },
    { day: firstAutumnFrost, label: texts.firstFrost },
  ].flatMap(({ day, label }) =>
    day !== undefined && day >= axis.first && day <= axis.last ? [{ day, label }] : [],
  );
}
