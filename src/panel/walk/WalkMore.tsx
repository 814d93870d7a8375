import type { WalkStop } from "../../core/fieldwork/walk-stops.ts";
import { useFieldPerson } from "../../store/window/field-person.ts";
import { whoDialog } from "../record/dialogs.ts";
import { recordWords } from "../record/record-words.ts";
import { scanDialog } from "../scan/commands.ts";
import { useWalkPlace } from "../state/walk-place.ts";
import { EntryButtons } from "./EntryButtons.tsx";
import { stopJobs } from "./stop-jobs.ts";
import type { WalkNow } from "./use-walk.ts";
import type { WalkSheet } from "./walk-sheet.ts";
import { walkWords as words } from "./walk-words.ts";

interface WalkMoreProps {
  readonly walk: WalkNow;
  readonly onSheet: (sheet: WalkSheet) => void;
}

/** What is wanted more rarely: other entries, another plot, a code, a position, a plant found. */
export function WalkMore({ walk, onSheet }: WalkMoreProps) {
  const { stop } = walk;
  const who = useFieldPerson((state) => state.who);
  return (
    <div className="walk-more">
      {stop && <EntryButtons walk={walk} stop={stop} isAll onSheet={onSheet} />}
      <div className="walk-buttons walk-tools" role="group" aria-label={words.tools}>
        <button type="button" onClick={() => onSheet("plots")}>
          {words.plots}
        </button>
        <button type="button" onClick={() => onSheet("jobs")}>
          {words.weekJobs}
        </button>
        <button
          type="button"
          onClick={() => {
            onSheet(null);
            scanDialog.open({ isForWalk: true });
          }}
        >
          {words.scan}
        </button>
        <button type="button" onClick={() => onSheet("position")}>
          {words.position}
        </button>
        <button type="button" onClick={() => onSheet("source")}>
          {words.flowersHere}
        </button>
        <button type="button" onClick={() => whoDialog.open()}>
          {who === "" ? recordWords.who : who}
        </button>
      </div>
    </div>
  );
}

/** Every stop of the walk, with how much is due there. */
export function PlotList({ walk, onSheet }: WalkMoreProps) {
  const goTo = useWalkPlace((state) => state.goTo);
  return (
    <div className="walk-ask" role="group" aria-label={words.plots}>
      <h3>{words.plots}</h3>
      {walk.stops.map((stop) => (
        <button
          key={stop.id}
          type="button"
          className="walk-near"
          aria-current={stop.id === walk.stop?.id ? "true" : undefined}
          onClick={() => {
            goTo(stop.id);
            onSheet(null);
          }}
        >
          <span>
            <b className={stop.planting ? "code" : undefined}>{stop.code}</b> {nameOf(walk, stop)}
          </span>
          <span>{dueWords(walk, stop)}</span>
        </button>
      ))}
      <button type="button" onClick={() => onSheet(null)}>
        {words.close}
      </button>
    </div>
  );
}

/** Its variety; of what lies outside the label says enough. */
function nameOf({ planned }: WalkNow, { planting }: WalkStop): string {
  return planned.plan.varieties.find(({ id }) => id === planting?.variety)?.name ?? "";
}

function dueWords(walk: WalkNow, { id }: WalkStop): string {
  const { due } = stopJobs(walk, id);
  return due.length === 0 ? "" : words.dueCount(due.length);
}
