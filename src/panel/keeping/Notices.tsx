import { problemText } from "../../core/model/problem.ts";
import { savePlanFile } from "../../store/files/plan-file-late.ts";
import { takeOver } from "../../store/keeping/plan-lock.ts";
import { useSaveState } from "../../store/keeping/save-state.ts";
import { UpdateOffer } from "./UpdateOffer.tsx";

/** Problems of a refused file shown before the rest is counted only. */
const FIRST_PROBLEMS = 5;

function putAway(): void {
  useSaveState.getState().dismiss();
}

/** What must be read: a plan open elsewhere, a plan that is not kept, a refused file. */
export function Notices() {
  const { state, isReadOnly, notice, problems } = useSaveState();
  return (
    <div className="notices">
      {isReadOnly && (
        <div className="notice" role="status">
          <p>This plan is open for editing in another tab. Here it can be looked at.</p>
          <button type="button" onClick={() => void takeOver()}>
            Take over editing
          </button>
        </div>
      )}
      {state.kind === "failed" && (
        <div className="notice bad" role="alert">
          <p>Not saved: {state.reason}</p>
          <button type="button" onClick={() => void savePlanFile()}>
            Save a file
          </button>
        </div>
      )}
      {problems.length > 0 && (
        <div className="notice bad" role="alert">
          <p>The file was not opened; the plan on screen is as it was.</p>
          <ul>
            {problems.slice(0, FIRST_PROBLEMS).map((problem) => (
              <li key={problemText(problem)}>{problemText(problem)}</li>
            ))}
          </ul>
          {problems.length > FIRST_PROBLEMS && (
            <p>And {problems.length - FIRST_PROBLEMS} more places.</p>
          )}
          <button type="button" onClick={putAway}>
            Close
          </button>
        </div>
      )}
      {notice !== null && (
        <div className="notice" role="status">
          <p>{notice}</p>
          <button type="button" onClick={putAway}>
            Close
          </button>
        </div>
      )}
      <UpdateOffer />
    </div>
  );
}
