import { useState } from "react";
import {
  type DatesThen,
  changeSeason,
  datedCounts,
  seasonLater,
  yearsBetween,
} from "../../core/edits/change-season.ts";
import type { Plan } from "../../core/model/plan.ts";
import { DayField } from "../form/DayField.tsx";
import { TextField } from "../form/TextField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { commit } from "../state/plan-actions.ts";
import { answersFor, datedWords, leftWords, seasonDays } from "./season-words.ts";
import * as texts from "./words.ts";

/**
 * Name and days of the season. Both days are typed before anything happens, in whatever order; then
 * the season changes in one step, and where the plan has dates it asks what becomes of them.
 */
export function SeasonFields({ plan }: { readonly plan: Plan }) {
  const { season } = plan;
  const [typed, setTyped] = useState<Plan["season"] | null>(null);
  const draft = typed ?? season;
  const change = (next: Plan["season"]) => {
    const isMoved = next.first !== season.first || next.last !== season.last;
    setTyped(isMoved ? next : null);
    // A name moves nothing.
    if (!isMoved && next.name !== season.name) commit(changeSeason(next, "keep"));
    return null;
  };
  const set = (part: Partial<Plan["season"]>) => {
    const next = { ...draft, ...part };
    const namedFor = (days: Plan["season"]) => seasonLater(season, yearsBetween(season, days)).name;
    // Years in the name follow the days, until it is typed by hand.
    const follows = part.name === undefined && draft.name === namedFor(draft);
    return change(follows ? { ...next, name: namedFor(next) } : next);
  };
  return (
    <fieldset className="field-group">
      <legend>{texts.season}</legend>
      <TextField
        label={texts.name}
        value={draft.name}
        onApply={(text) =>
          nameProblem(text, { isNeeded: texts.seasonNeedsName }) ?? set({ name: text.trim() })
        }
      />
      <DayField
        label={texts.firstDay}
        value={draft.first}
        onApply={(day) => (day === undefined ? texts.seasonNeedsFirst : set({ first: day }))}
      />
      <DayField
        label={texts.lastDay}
        value={draft.last}
        onApply={(day) => (day === undefined ? texts.seasonNeedsLast : set({ last: day }))}
      />
      <p className="field-hint">{texts.seasonMayCrossNew}</p>
      {typed === null ? (
        <p>
          <button type="button" onClick={() => change(seasonLater(season, 1))}>
            {texts.goSeasonYearLater}
          </button>
        </p>
      ) : (
        <SeasonQuestion plan={plan} next={typed} onSet={set} onDone={() => setTyped(null)} />
      )}
    </fieldset>
  );
}

interface SeasonQuestionProps {
  readonly plan: Plan;
  readonly next: Plan["season"];
  readonly onSet: (part: Partial<Plan["season"]>) => null;
  readonly onDone: () => void;
}

/** Nothing has changed yet: what is to become of the dates, or what keeps the season from changing. */
function SeasonQuestion({ plan, next, onSet, onDone }: SeasonQuestionProps) {
  if (next.first > next.last) return <EndsBefore plan={plan} {...{ next, onSet, onDone }} />;
  const answers = answersFor(plan, next);
  const answer = (dates: DatesThen) => {
    commit(changeSeason(next, dates));
    onDone();
  };
  const dated = datedWords(datedCounts(plan));
  return (
    <div role="group" aria-label={texts.becomesDates}>
      <p role="alert">
        {texts.seasonIsToBe(next.name, seasonDays(next))}
        {dated === "" ? texts.noDatePlanHangs : `${dated} ${leftWords(plan, next)}`}
      </p>
      <p className="dialog-actions">
        {answers.map(({ dates, label }, index) => (
          <button
            key={dates}
            type="button"
            className={index === 0 ? "primary" : undefined}
            onClick={() => answer(dates)}
          >
            {label}
          </button>
        ))}
        <button type="button" className="quiet" onClick={onDone}>
          {texts.cancel}
        </button>
      </p>
    </div>
  );
}

/** The two days do not fit together yet: the other one is still to be typed, or moves along. */
function EndsBefore({ plan, next, onSet, onDone }: SeasonQuestionProps) {
  const { season } = plan;
  const isFirstTyped = next.first !== season.first;
  const years = yearsBetween(
    season,
    isFirstTyped ? { ...season, first: next.first } : { ...season, last: next.last },
  );
  const moved = seasonLater(season, years);
  const other = isFirstTyped ? { last: moved.last } : { first: moved.first };
  const isFitting = isFirstTyped ? moved.last >= next.first : moved.first <= next.last;
  return (
    <div role="group" aria-label={texts.otherDaySeason}>
      <p role="alert">{texts.nothingChangedYetSeason(seasonDays(next))}</p>
      <p className="dialog-actions">
        {isFitting && (
          <button type="button" className="primary" onClick={() => onSet(other)}>
            {texts.apply(seasonDays({ ...next, ...other }))}
          </button>
        )}
        <button type="button" className="quiet" onClick={onDone}>
          {texts.cancel}
        </button>
      </p>
    </div>
  );
}
