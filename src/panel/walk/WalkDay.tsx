import { useState } from "react";
import { useWalkPlace } from "../state/walk-place.ts";
import type { WalkNow } from "./use-walk.ts";
import { walkWords as words } from "./walk-words.ts";

/** The day that is written down: today, or one before it where it was forgotten. */
export function WalkDay({ walk }: { readonly walk: WalkNow }) {
  const { on, today, planned } = walk;
  const [isOpen, setOpen] = useState(false);
  const setDay = useWalkPlace((state) => state.setDay);
  const isToday = on === today;
  const { season } = planned.plan;
  const isOutside = on < season.first || on > season.last;
  return (
    <>
      <button
        type="button"
        className={isToday ? "walk-day" : "walk-day walk-day-other"}
        aria-expanded={isOpen}
        onClick={() => setOpen(!isOpen)}
      >
        {isToday ? words.today(on) : words.otherDay(on)}
      </button>
      {isOpen && (
        <div className="walk-days" role="group" aria-label={words.otherDay(on)}>
          <button type="button" onClick={() => setDay(on - 1)}>
            {words.dayBefore}
          </button>
          <button type="button" disabled={isToday} onClick={() => setDay(null)}>
            {words.backToToday}
          </button>
          <button
            type="button"
            disabled={on >= today}
            onClick={() => setDay(on + 1 === today ? null : on + 1)}
          >
            {words.dayAfter}
          </button>
        </div>
      )}
      {isOutside && <p className="walk-warning">{words.outsideSeason(season.name)}</p>}
    </>
  );
}
