import { useMemo, useState } from "react";
import { exportById } from "../../core/files/export-list.ts";
import {
  type Job,
  type JobName,
  jobsByWeek,
  seasonJobs,
} from "../../core/fieldwork/season-calendar.ts";
import { longDate } from "../../core/model/day.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { fieldJobs } from "../../core/fieldwork/field-jobs.ts";
import { jobLabels } from "../../core/fieldwork/job-name-words.ts";
import { jobKey, jobsDone } from "../../core/fieldwork/job-ticks.ts";
import type { Entry } from "../../core/model/plan.ts";
import { Dialog } from "../form/Dialog.tsx";
import { makeFile } from "../form/make-file.ts";
import { jobCounts, jobDay, weekWords } from "./season-jobs.ts";
import { doneWords, tickHint, tickJob, untickJob } from "../record/job-tick.ts";
import { today } from "../state/today.ts";
import { useKept } from "../state/plan-actions.ts";
import * as texts from "./words.ts";
import "./season.css";

/** What is to be done when, computed for each planting of the layout. */
export function SeasonDialog({ onClose }: { readonly onClose: () => void }) {
  const kept = useKept();
  const { plan, layout } = kept;
  const grown = usePlanStore((state) => state.grown);
  const grownOn = usePlanStore(({ reading }) => reading?.on ?? null);
  const jobs = useMemo(() => (grown ? fieldJobs(kept, grown) : seasonJobs(kept)), [kept, grown]);
  const [hidden, setHidden] = useState<ReadonlySet<JobName>>(new Set());
  const shown = useMemo(() => jobs.filter((job) => !hidden.has(job.job)), [jobs, hidden]);
  const done = useMemo(() => jobsDone(jobs, plan.entries), [jobs, plan.entries]);
  const toggle = (name: JobName) => {
    const next = new Set(hidden);
    if (!next.delete(name)) next.add(name);
    setHidden(next);
  };
  const download = () => void makeFile(exportById("calendar"), { leftOut: hidden });
  return (
    <Dialog title={texts.seasonCalendarOf(layout.name)} onClose={onClose} isWide>
      <div className="season">
        <p className="season-head">{texts.seasonDatesBloomSeed(plan.title, plan.season.name)}</p>
        {grownOn !== null && <p>{texts.daysAsGrown(longDate(grownOn))}</p>}
        <JobFilter jobs={jobs} hidden={hidden} onToggle={toggle} />
        <p className="dialog-actions">
          <button
            type="button"
            className="primary"
            disabled={shown.length === 0}
            onClick={download}
          >
            {texts.downloadCalendarFileIcs}
          </button>
          <button type="button" disabled={shown.length === 0} onClick={() => window.print()}>
            {texts.print}
          </button>
        </p>
        <p className="field-hint season-hint">
          {grownOn === null ? texts.fileHoldsListedHere : texts.fileHoldsPlanned}
        </p>
        {jobs.length === 0 && <p className="region-empty">{texts.noJobsGivePlantings}</p>}
        <WeekList jobs={shown} done={done} />
      </div>
    </Dialog>
  );
}

interface JobFilterProps {
  readonly jobs: readonly Job[];
  readonly hidden: ReadonlySet<JobName>;
  readonly onToggle: (name: JobName) => void;
}

function JobFilter({ jobs, hidden, onToggle }: JobFilterProps) {
  const counts = useMemo(() => jobCounts(jobs), [jobs]);
  if (counts.length < 2) return null;
  return (
    <fieldset className="season-filter">
      <legend>{texts.jobsListed}</legend>
      {counts.map(({ name, count }) => (
        <label key={name} className="check-field">
          <input type="checkbox" checked={!hidden.has(name)} onChange={() => onToggle(name)} />
          {jobLabels[name]} <span className="soft">{count}</span>
        </label>
      ))}
    </fieldset>
  );
}

function WeekList({ jobs, done }: { readonly jobs: readonly Job[] } & DoneJobs) {
  const weeks = useMemo(() => jobsByWeek(jobs), [jobs]);
  return weeks.map((week) => (
    <section key={week.monday} className="season-week">
      <h3>{weekWords(week)}</h3>
      <ul className="plain-list">
        {week.jobs.map((job) => (
          <li key={`${job.planting} ${jobKey(job)}`}>
            <JobLine job={job} done={done.get(job) ?? null} />
          </li>
        ))}
      </ul>
    </section>
  ));
}

interface DoneJobs {
  /** Entries of the field record that say a job is done. */
  readonly done: ReadonlyMap<Job, Entry>;
}

function JobLine({ job, done }: { readonly job: Job; readonly done: Entry | null }) {
  const hint = tickHint(job);
  return (
    <label className="season-job">
      <input
        type="checkbox"
        checked={done !== null}
        onChange={() => (done ? untickJob(job) : tickJob(job, today()))}
      />
      <span className="season-day">{jobDay(job.day)}</span>
      <span>
        {job.text}
        {done && <b className="season-done"> {doneWords(done)}</b>}
        {!done && hint !== null && <span className="soft season-hint"> ({hint})</span>}
        {job.caution !== null && (
          <strong className="season-caution">
            <span aria-hidden="true">!</span>
            {texts.caution(job.caution)}
          </strong>
        )}
      </span>
    </label>
  );
}
