import { shortDate } from "../../core/model/day.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { DayPlay } from "./DayPlay.tsx";
import { type BloomRow, openOn } from "./bloom-rows.ts";
import { windowNow } from "../state/plan-actions.ts";
import { type TimeAxis, middlePercent } from "./time-axis.ts";
import * as texts from "./words.ts";

interface DaySliderProps {
  readonly axis: TimeAxis;
  readonly rows: readonly BloomRow[];
}

/** A day picked on the axis; the sheet shows what is in flower then. */
export function DaySlider({ axis, rows }: DaySliderProps) {
  const day = useWindowStore((state) => state.day);
  const resting = rows[0]?.likely.first ?? axis.first;
  const value = Math.min(axis.last, Math.max(axis.first, day ?? resting));
  const open = openOn(rows, value);
  const words = texts.dayInFlower(shortDate(value), open);
  return (
    <div className="day-slider">
      <div className="day-label">
        <DayPlay axis={axis} rows={rows} />
        {day !== null && (
          <button
            type="button"
            className="act"
            aria-label={texts.clearDay}
            onClick={() => windowNow().showDay(null)}
          >
            {texts.clear}
          </button>
        )}
      </div>
      <div className="day-track">
        <input
          type="range"
          aria-label={texts.dayOnSheet}
          aria-valuetext={day === null ? texts.noDayShown(words) : words}
          className={day === null ? "unset" : undefined}
          min={axis.first}
          max={axis.last}
          step={1}
          value={value}
          onChange={(event) => windowNow().showDay(Number(event.target.value))}
        />
        {day === null && (
          <span className="day-hint" aria-hidden="true">
            {texts.pickDayHint}
          </span>
        )}
        {day !== null && (
          <output className="day-flag" style={flagPlace(middlePercent(axis, value))}>
            {texts.inFlower(shortDate(value), open)}
          </output>
        )}
      </div>
    </div>
  );
}

/** Beside the knob, on the side that has more room. */
function flagPlace(percent: number) {
  return percent <= 50
    ? { left: `calc(${percent}% + 12px)` }
    : { right: `calc(${100 - percent}% + 12px)` };
}
