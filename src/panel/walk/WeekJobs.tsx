import type { WalkStop } from "../../core/fieldwork/walk-stops.ts";
import { useWalkPlace } from "../state/walk-place.ts";
import { DueJobList } from "./DueJobs.tsx";
import { stopJobs } from "./stop-jobs.ts";
import type { WalkNow } from "./use-walk.ts";
import type { WalkSheet } from "./walk-sheet.ts";
import { walkWords as words } from "./walk-words.ts";

interface WeekJobsProps {
  readonly walk: WalkNow;
  readonly onSheet: (sheet: WalkSheet) => void;
}

/** What is due anywhere, in the order one walks; each plot's code leads there. */
export function WeekJobs({ walk, onSheet }: WeekJobsProps) {
  const goTo = useWalkPlace((state) => state.goTo);
  const busy = walk.stops
    .map((stop) => ({ stop, due: ownJobs(walk, stop) }))
    .filter(({ due }) => due.length > 0);
  return (
    <div className="walk-ask" role="group" aria-label={words.weekJobs}>
      <h3>{words.weekJobs}</h3>
      {busy.length === 0 && <p>{words.nothingDueAnywhere}</p>}
      {busy.map(({ stop, due }) => (
        <div key={stop.id}>
          <button
            type="button"
            className="walk-near"
            onClick={() => {
              goTo(stop.id);
              onSheet(null);
            }}
          >
            <b className={stop.planting ? "code" : undefined}>{stop.code}</b>
          </button>
          <DueJobList
            due={due}
            walk={walk}
            onAsk={(sheet) => {
              goTo(stop.id);
              onSheet(sheet);
            }}
          />
        </div>
      ))}
      <button type="button" onClick={() => onSheet(null)}>
        {words.close}
      </button>
    </div>
  );
}

/** A job that two plots share stands once, with the plot it is written down for. */
function ownJobs(walk: WalkNow, { id }: WalkStop) {
  return stopJobs(walk, id).due.filter(({ planting }) => planting === id);
}
