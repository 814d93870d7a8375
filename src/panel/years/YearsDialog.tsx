import { useMemo, useState } from "react";
import type { RenewalYears } from "../../core/model/plan.ts";
import {
  clearYears,
  seasonSeedList,
  seedListLines,
  takeYears,
} from "../../core/renewal/years-edits.ts";
import type { Years } from "../../core/renewal/years-problem.ts";
import { type PlanYears, yearsOfPlan } from "../../core/renewal/years-of-plan.ts";
import { seasonNames } from "../../core/renewal/years-settings.ts";
import { yearsTable } from "../../core/renewal/years-table.ts";
import type { YearsNames } from "../../core/renewal/fault-words.ts";
import { Dialog } from "../form/Dialog.tsx";
import { commit, planNow, useKept, windowNow } from "../state/plan-actions.ts";
import { today } from "../state/today.ts";
import { YearsGrid } from "./YearsGrid.tsx";
import { YearsNotLaid } from "./YearsNotLaid.tsx";
import { YearsPaper } from "./YearsPaper.tsx";
import { YearsSettings } from "./YearsSettings.tsx";
import { YearsTold } from "./YearsTold.tsx";
import { useYears } from "./use-years.ts";
import { seedListAdded, yearsPageWords as words } from "./years-page-words.ts";
import "./years.css";

/** Longest time for the solver, seconds. */
const SECONDS = 20;

/** Which variety is grown for seed in which season: laid out, changed by hand, judged at once. */
export function YearsDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan, layout, book } = useKept();
  const { stage, start, stop } = useYears();
  /** The years an answer was kept as: what is proven of it holds while they stay. */
  const [proven, setProven] = useState<RenewalYears | undefined>();
  const kept = useMemo(() => yearsOfPlan(plan, layout, book, today()), [plan, layout, book]);
  const first = stage.kind === "running" ? stage.first : null;
  const shown = useMemo(() => (first ? { ...kept, years: first } : kept), [kept, first]);
  const names = useMemo(
    (): YearsNames => ({
      years: shown,
      seasons: seasonNames(plan, shown.problem.seasons),
      units: plan.units,
    }),
    [plan, shown],
  );
  const table = useMemo(() => yearsTable(plan, book, shown), [plan, book, shown]);
  const take = (years: Years) => {
    commit(takeYears(kept.rows, years, words.undo.layOut));
    setProven(planNow().plan.renewalYears);
  };
  const isRunning = stage.kind === "running";
  const isProven = stage.kind === "answered" && proven === plan.renewalYears;
  return (
    <Dialog title={words.title} onClose={onClose} isWide>
      <div className="fields years-page">
        <p className="soft">{words.intro}</p>
        <fieldset disabled={isRunning}>
          <YearsSettings plan={plan} years={kept} />
        </fieldset>
        <p className="dialog-actions">
          {isRunning ? (
            <RunningActions onKeep={first ? () => [stop(), take(first)] : null} onCancel={stop} />
          ) : (
            <YearsActions
              years={kept}
              names={names}
              onStart={() => start({ problem: kept.problem, seconds: SECONDS }, take)}
            />
          )}
        </p>
        {isRunning && (
          <>
            <p role="status">{first ? words.proving : words.running}</p>
            <progress aria-label={words.progressLabel} />
          </>
        )}
        {stage.kind === "failed" && <p role="alert">{`${words.failed} ${stage.reason}`}</p>}
        <YearsTold
          judged={table.judged}
          names={names}
          answer={isProven && stage.kind === "answered" ? stage.answer : null}
        />
        <YearsGrid table={table} names={names} isLocked={isRunning} />
        <p className="soft">{words.legend}</p>
        <YearsNotLaid years={kept} />
        <YearsPaper isLaid={kept.years.some((bits) => bits !== 0)} />
      </div>
    </Dialog>
  );
}

interface RunningActionsProps {
  readonly onKeep: (() => void) | null;
  readonly onCancel: () => void;
}

function RunningActions({ onKeep, onCancel }: RunningActionsProps) {
  return (
    <>
      {onKeep && (
        <button type="button" className="primary" onClick={onKeep}>
          {words.takeFirst}
        </button>
      )}
      <button type="button" onClick={onCancel}>
        {words.cancel}
      </button>
    </>
  );
}

interface YearsActionsProps {
  readonly years: PlanYears;
  readonly names: YearsNames;
  readonly onStart: () => void;
}

function YearsActions({ years, names, onStart }: YearsActionsProps) {
  const isLaid = years.years.some((bits) => bits !== 0);
  const { plan } = useKept();
  const lines = seedListLines(names);
  const [season = ""] = names.seasons;
  const isHand = plan.renewalYears?.choices.some(({ byHand }) => byHand === true) ?? false;
  const isListed =
    lines.length > 0 &&
    lines.every(
      ({ row, plants }) =>
        (row.variety.wantedPlants ?? 0) >= plants && row.variety.reason !== undefined,
    );
  const makeList = () => {
    commit(seasonSeedList(names, words.undo.seedList(season)));
    windowNow().announce(seedListAdded(lines.length, season));
  };
  return (
    <>
      <button type="button" className={isLaid ? "" : "primary"} onClick={onStart}>
        {isLaid ? words.layOutAnew : words.layOut}
      </button>
      {isLaid &&
        (isListed ? (
          <span className="clear-text">{words.seedListDone(season)}</span>
        ) : (
          <button
            type="button"
            className="primary"
            disabled={lines.length === 0}
            onClick={makeList}
          >
            {words.seedList(season)}
          </button>
        ))}
      {isHand && (
        <button type="button" onClick={() => commit(clearYears(false, words.undo.clear))}>
          {words.clearHand}
        </button>
      )}
      {isLaid && (
        <button type="button" onClick={() => commit(clearYears(true, words.undo.clear))}>
          {words.clear}
        </button>
      )}
    </>
  );
}
