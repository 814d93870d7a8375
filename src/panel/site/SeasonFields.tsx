import { useState } from "react";
import {
  type DatesThen,
  changeSeason,
  datesLeftBehind,
  seasonLater,
  yearsBetween,
} from "../../core/edits/change-season.ts";
import { longDate } from "../../core/model/day.ts";
import type { Plan } from "../../core/model/plan.ts";
import { DayField } from "../form/DayField.tsx";
import { TextField } from "../form/TextField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { commit } from "../state/plan-actions.ts";

/** Name and days of the season. Where dates would be left behind, it asks what becomes of them. */
export function SeasonFields({ plan }: { readonly plan: Plan }) {
  const { season } = plan;
  const [asked, setAsked] = useState<Plan["season"] | null>(null);
  const change = (next: Plan["season"]) => {
    if (next.first > next.last) return "The season would end before it starts";
    const isMoved = yearsBetween(season, next) !== 0;
    if (isMoved && datesLeftBehind(plan, next) > datesLeftBehind(plan, season)) setAsked(next);
    else commit(changeSeason(next, "keep"));
    return null;
  };
  const set = (part: Partial<Plan["season"]>) => change({ ...season, ...part });
  return (
    <fieldset className="field-group">
      <legend>Season</legend>
      <TextField
        label="Name"
        value={season.name}
        onApply={(text) =>
          nameProblem(text, { isNeeded: "A season needs a name, for example 2027" }) ??
          set({ name: text.trim() })
        }
      />
      <DayField
        label="First day"
        value={season.first}
        onApply={(day) => (day === undefined ? "A season needs a first day" : set({ first: day }))}
      />
      <DayField
        label="Last day"
        value={season.last}
        onApply={(day) => (day === undefined ? "A season needs a last day" : set({ last: day }))}
      />
      <p className="field-hint">A season may cross New Year, for example July to June.</p>
      {asked === null ? (
        <p>
          <button type="button" onClick={() => change(seasonLater(season, 1))}>
            Go on to the season a year later
          </button>
        </p>
      ) : (
        <DatesThenQuestion plan={plan} next={asked} onDone={() => setAsked(null)} />
      )}
    </fieldset>
  );
}

interface DatesThenQuestionProps {
  readonly plan: Plan;
  readonly next: Plan["season"];
  readonly onDone: () => void;
}

function DatesThenQuestion({ plan, next, onDone }: DatesThenQuestionProps) {
  const years = yearsBetween(plan.season, next);
  const count = datesLeftBehind(plan, next);
  const answer = (dates: DatesThen) => {
    commit(changeSeason(next, dates));
    onDone();
  };
  const by = `${Math.abs(years)} ${Math.abs(years) === 1 ? "year" : "years"} ${years < 0 ? "back" : "on"}`;
  return (
    <div role="group" aria-label="What becomes of the dates">
      <p role="alert">
        {`In the season ${longDate(next.first)} to ${longDate(next.last)}, ${count === 1 ? "1 date lies" : `${count} dates lie`} outside: bloom, sowing and frost of another year. Time clears nothing by them.`}
      </p>
      <p className="dialog-actions">
        <button type="button" className="primary" onClick={() => answer("move")}>
          {`Move all dates ${by}`}
        </button>
        <button type="button" onClick={() => answer("keep")}>
          Keep them as they are
        </button>
        <button type="button" onClick={() => answer("drop")}>
          Take all dates out
        </button>
        <button type="button" className="quiet" onClick={onDone}>
          Leave the season
        </button>
      </p>
    </div>
  );
}
