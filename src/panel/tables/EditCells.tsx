/** Cells of the table of plantings that are typed into: what a grower sets for one after another. */
import { useId, useState } from "react";
import { changePlantings } from "../../core/edits/object-edits.ts";
import { isoFromDay, shortDate } from "../../core/model/day.ts";
import type { Planting } from "../../core/model/plan.ts";
import { readDay } from "../form/day-text.ts";
import { readCount } from "../form/number-text.ts";
import { useDraft } from "../form/use-draft.ts";
import { commit, planNow } from "../state/plan-actions.ts";
import { useShownPlan, useShownResult } from "../state/use-shown-plan.ts";
import { cellLabels, cellTitles, startMethods } from "./table-words.ts";

type Changes = Parameters<typeof changePlantings>[2];

function change({ id }: Planting, changes: Changes, title: string): void {
  commit(changePlantings(planNow().layoutId, [id], changes, title));
}

interface EditCellProps {
  readonly planting: Planting;
}

interface CellInputProps {
  readonly label: string;
  readonly value: string;
  readonly placeholder?: string;
  readonly isNumeric?: boolean;
  /** Takes the typed text; returns why it cannot be used, or null once it is applied. */
  readonly onApply: (text: string) => string | null;
}

function CellInput({ label, value, placeholder, isNumeric = false, onApply }: CellInputProps) {
  const id = useId();
  const { text, reason, type, field } = useDraft<HTMLInputElement>(value, onApply);
  return (
    <>
      <input
        {...field}
        className={isNumeric ? "cell-input cell-count" : "cell-input"}
        type="text"
        inputMode={isNumeric ? "numeric" : "text"}
        autoComplete="off"
        spellCheck={false}
        aria-label={label}
        aria-invalid={reason === null ? undefined : true}
        aria-describedby={reason === null ? undefined : id}
        placeholder={placeholder}
        value={text}
        onChange={(event) => type(event.target.value)}
      />
      {reason !== null && (
        <span className="field-reason cell-reason" id={id} role="alert">
          {reason}
        </span>
      )}
    </>
  );
}

export function PlantsCell({ planting }: EditCellProps) {
  const { code, plants } = planting;
  const apply = (text: string) => {
    const title = cellTitles.plants(code);
    if (text.trim() === "") {
      change(planting, { plants: undefined }, title);
      return null;
    }
    const read = readCount(text);
    if (!read.ok) return read.reason;
    change(planting, { plants: read.value }, title);
    return null;
  };
  return (
    <CellInput
      label={cellLabels.plants(code)}
      value={plants === undefined ? "" : String(plants)}
      isNumeric
      onApply={apply}
    />
  );
}

/** How it starts and on which day; the way its kind usually starts stands there to begin with. */
export function StartCell({ planting }: EditCellProps) {
  const { season } = useShownPlan();
  const timing = useShownResult().standById.get(planting.id)?.kind.timing;
  const usual = timing?.transplantedToFlower && !timing.sownToFlower ? "transplanted" : "sown";
  const [picked, setPicked] = useState<keyof typeof startMethods>(usual);
  const { code, start } = planting;
  const method = start?.method ?? picked;
  const title = cellTitles.start(code);
  const apply = (text: string) => {
    if (text.trim() === "") {
      change(planting, { start: undefined }, title);
      return null;
    }
    const read = readDay(text, season);
    if (!read.ok) return read.reason;
    change(planting, { start: { ...start, method, date: read.value } }, title);
    return null;
  };
  const shown = start === undefined ? "" : shownDay(start.date, season);
  return (
    <span className="cell-pair">
      <select
        aria-label={cellLabels.method(code)}
        value={method}
        onChange={(event) => {
          const next = event.target.value === "sown" ? "sown" : "transplanted";
          setPicked(next);
          if (start) change(planting, { start: { ...start, method: next } }, title);
        }}
      >
        {Object.entries(startMethods).map(([value, label]) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
      <CellInput
        label={cellLabels.start(code)}
        value={shown}
        placeholder={shortDate(season.first)}
        onApply={apply}
      />
    </span>
  );
}

/** `20 May` within the season, where that is read back as the same day; else the whole date. */
function shownDay(day: number, season: { readonly first: number; readonly last: number }): string {
  const short = shortDate(day);
  const read = readDay(short, season);
  return read.ok && read.value === day ? short : isoFromDay(day);
}
