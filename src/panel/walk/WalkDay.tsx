import { useId, useRef, useState } from "react";
import { type DayNumber, isoFromDay } from "../../core/model/day.ts";
import { useWalkPlace } from "../state/walk-place.ts";
import type { WalkNow } from "./use-walk.ts";
import { daysAtOnce, earliestDay, pickedDay } from "./walk-days.ts";
import { dayParts, dayWords, walkWords as words } from "./walk-words.ts";

/** The day that is written down: today, or one before it where it was forgotten. */
export function WalkDay({ walk }: { readonly walk: WalkNow }) {
  const { on, today, planned } = walk;
  const [isOpen, setOpen] = useState(false);
  const buttonRef = useRef<HTMLButtonElement>(null);
  const isToday = on === today;
  const { season } = planned.plan;
  const isOutside = on < season.first || on > season.last;
  return (
    <>
      <button
        type="button"
        ref={buttonRef}
        className={isToday ? "walk-day" : "walk-day walk-day-other"}
        aria-expanded={isOpen}
        onClick={() => setOpen(!isOpen)}
      >
        {isToday ? words.today(on) : words.otherDay(on)}
      </button>
      {isOpen && (
        <DayChoice
          walk={walk}
          onPicked={() => {
            setOpen(false);
            buttonRef.current?.focus();
          }}
        />
      )}
      {isOutside && <p className="walk-warning">{words.outsideSeason(season.name)}</p>}
    </>
  );
}

interface DayChoiceProps {
  readonly walk: WalkNow;
  readonly onPicked: () => void;
}

/** The last seven days, one press each; and any other by its date. */
function DayChoice({ walk: { on, today, planned }, onPicked }: DayChoiceProps) {
  const id = useId();
  const setDay = useWalkPlace((state) => state.setDay);
  const pick = (day: DayNumber) => setDay(day === today ? null : day);
  const { first } = planned.plan.season;
  return (
    <div className="walk-days" role="group" aria-label={words.whichDay}>
      {daysAtOnce(today).map((day) => {
        const { name, number } = dayParts(day);
        return (
          <button
            key={day}
            type="button"
            aria-label={day === today ? words.today(day) : dayWords(day)}
            aria-pressed={day === on}
            onClick={() => {
              pick(day);
              onPicked();
            }}
          >
            <span>{name}</span>
            <span>{number}</span>
          </button>
        );
      })}
      <label htmlFor={id}>{words.anotherDay}</label>
      <DateInput
        id={id}
        on={on}
        from={earliestDay(first, today)}
        to={today}
        onText={(text) => {
          const day = pickedDay(text, first, today);
          if (day !== null) pick(day);
        }}
      />
    </div>
  );
}

interface DateInputProps {
  readonly id: string;
  readonly on: DayNumber;
  readonly from: DayNumber;
  readonly to: DayNumber;
  readonly onText: (text: string) => void;
}

/** The browser's own: a calendar under the finger on a phone, typed at a keyboard. */
function DateInput({ id, on, from, to, onText }: DateInputProps) {
  // While a year is typed its first digits are a date long ago, which must stay to be typed on.
  const [typed, setTyped] = useState(isoFromDay(on));
  return (
    <input
      id={id}
      type="date"
      min={isoFromDay(from)}
      max={isoFromDay(to)}
      value={typed}
      onChange={({ target }) => {
        setTyped(target.value);
        onText(target.value);
      }}
    />
  );
}
