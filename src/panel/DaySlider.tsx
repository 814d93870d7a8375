import { shortDate } from "../core/model/day.ts";
import { usePlanStore } from "../store/plan-store.ts";
import { type BloomRow, openOn } from "./bloom-rows.ts";
import { type TimeAxis, startPercent, widthPercent } from "./time-axis.ts";
import { planNow } from "./plan-actions.ts";

interface DaySliderProps {
  readonly axis: TimeAxis;
  readonly rows: readonly BloomRow[];
}

/** A day picked on the axis; the sheet shows what is in flower then. */
export function DaySlider({ axis, rows }: DaySliderProps) {
  const day = usePlanStore((state) => state.day);
  const resting = rows[0]?.likely.first ?? axis.first;
  const value = Math.min(axis.last, Math.max(axis.first, day ?? resting));
  const open = openOn(rows, value);
  const words = `${shortDate(value)}, ${open} in flower`;
  return (
    <div className="day-slider">
      <div className="day-label">
        {day === null ? (
          <span>Day</span>
        ) : (
          <button
            type="button"
            className="link"
            aria-label="Clear day"
            onClick={() => planNow().showDay(null)}
          >
            Clear
          </button>
        )}
      </div>
      <div className="day-track">
        <input
          type="range"
          aria-label="Day shown on the sheet"
          aria-valuetext={day === null ? `no day shown; ${words}` : words}
          className={day === null ? "unset" : undefined}
          min={axis.first}
          max={axis.last}
          step={1}
          value={value}
          onChange={(event) => planNow().showDay(Number(event.target.value))}
        />
        {day !== null && (
          <output
            className="day-flag"
            style={{ left: `${startPercent(axis, value) + widthPercent(axis, value, value) / 2}%` }}
          >
            {shortDate(value)} · {open} in flower
          </output>
        )}
      </div>
    </div>
  );
}
