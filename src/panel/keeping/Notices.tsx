import { problemText } from "../../core/model/problem.ts";
import { savePlanFile } from "../../store/files/plan-file-late.ts";
import { takeOver } from "../../store/keeping/plan-lock.ts";
import { useSaveState } from "../../store/keeping/save-state.ts";
import { UpdateOffer } from "./UpdateOffer.tsx";
import * as texts from "./words.ts";

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
          <p>{texts.planOpenEditingAnother}</p>
          <button type="button" onClick={() => void takeOver()}>
            {texts.takeOverEditing}
          </button>
        </div>
      )}
      {state.kind === "failed" && (
        <div className="notice bad" role="alert">
          <p>{texts.notSaved(state.reason)}</p>
          <button type="button" onClick={() => void savePlanFile()}>
            {texts.saveAFile}
          </button>
        </div>
      )}
      {problems.length > 0 && (
        <div className="notice bad" role="alert">
          <p>{texts.fileNotOpenedPlan}</p>
          <ul>
            {problems.slice(0, FIRST_PROBLEMS).map((problem) => (
              <li key={problemText(problem)}>{problemText(problem)}</li>
            ))}
          </ul>
          {problems.length > FIRST_PROBLEMS && (
            <p>{texts.andMorePlaces(problems.length - FIRST_PROBLEMS)}</p>
          )}
          <button type="button" onClick={putAway}>
            {texts.close}
          </button>
        </div>
      )}
      {notice !== null && (
        <div className="notice" role="status">
          <p>{notice}</p>
          <button type="button" onClick={putAway}>
            {texts.close}
          </button>
        </div>
      )}
      <UpdateOffer />
    </div>
  );
}
