import type { WalkStop } from "../../core/fieldwork/walk-stops.ts";
import { jobKey } from "../../core/fieldwork/job-ticks.ts";
import type { Job } from "../../core/fieldwork/season-calendar.ts";
import { doneWords, tickHint, tickJob } from "../record/job-tick.ts";
import { type StopJobs, stopJobs } from "./stop-jobs.ts";
import type { WalkNow } from "./use-walk.ts";
import type { WalkSheet } from "./walk-sheet.ts";
import { dayWords, walkWords as words } from "./walk-words.ts";

interface DueJobsProps {
  readonly walk: WalkNow;
  readonly stop: WalkStop;
  readonly onAsk: (sheet: WalkSheet) => void;
}

/** Jobs of this plot that are due this week or overdue, to tick; what was ticked of late; what comes next. */
export function DueJobs({ walk, stop, onAsk }: DueJobsProps) {
  const { due, older, done, next } = stopJobs(walk, stop.id);
  return (
    <>
      <h4>{words.due}</h4>
      {due.length === 0 && <p>{words.nothingDue}</p>}
      {older > 0 && <p>{words.older(older)}</p>}
      <ul className="plain-list walk-jobs">
        {due.map((job) => (
          <DueJob
            key={`${job.planting} ${job.job} ${job.beside ?? ""}`}
            {...{ job, walk, onAsk }}
          />
        ))}
        {done.map(({ job, entry }) => (
          // Not to be unticked by a wet thumb: what was counted with it would be struck out.
          <li key={`${job.planting} ${jobKey(job)}`} className="walk-done">
            <span aria-hidden="true">✓</span> {job.text} <b>{doneWords(entry)}</b>
          </li>
        ))}
      </ul>
      <NextJob next={next} />
    </>
  );
}

interface DueJobListProps extends Omit<DueJobsProps, "stop"> {
  readonly due: readonly Job[];
}

/** Jobs to tick. */
export function DueJobList({ due, walk, onAsk }: DueJobListProps) {
  if (due.length === 0) return null;
  return (
    <ul className="plain-list walk-jobs">
      {due.map((job) => (
        <DueJob key={`${job.planting} ${jobKey(job)}`} {...{ job, walk, onAsk }} />
      ))}
    </ul>
  );
}

interface DueJobProps {
  readonly job: Job;
  readonly walk: WalkNow;
  readonly onAsk: (sheet: WalkSheet) => void;
}

function DueJob({ job, walk, onAsk }: DueJobProps) {
  const hint = tickHint(job);
  const tick = () => {
    // How many is asked where it counts, and where this is the plot it is about.
    if (job.job === "rogue") onAsk({ asks: "rogued" });
    else if (job.job === "hand pollinate") onAsk({ asks: "hand pollinated" });
    else if (job.job === "seed ripe") onAsk({ asks: "harvested" });
    else if (job.job === "set out") onAsk({ asks: "set out" });
    else tickJob(job, walk.on);
  };
  return (
    <li>
      <label>
        <input type="checkbox" checked={false} onChange={tick} />
        <span>
          <b>{job.day < walk.on ? words.since(job.day) : dayWords(job.day)}</b>: {job.text}
          {hint !== null && <i> ({hint})</i>}
          {job.caution !== null && <span className="caution-text walk-doubt">! {job.caution}</span>}
        </span>
      </label>
    </li>
  );
}

function NextJob({ next }: Pick<StopJobs, "next">) {
  return next && <p>{words.nextJob(next.day, next.text)}</p>;
}
