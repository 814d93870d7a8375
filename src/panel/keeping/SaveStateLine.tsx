import { daysWithoutFile, useFileNotes } from "../../store/files/file-reminder.ts";
import { savePlanFile } from "../../store/files/plan-file-late.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { type SaveStatus, useSaveState } from "../../store/keeping/save-state.ts";
import * as texts from "./words.ts";

/** Whether the plan is kept, honestly; and when it has long been kept in no file, that too. */
export function SaveStateLine() {
  const state = useSaveState((entry) => entry.state);
  const isReadOnly = useSaveState((entry) => entry.isReadOnly);
  return (
    <>
      <p className={`save-state ${isReadOnly ? "unsaved" : state.kind}`} role="status">
        {isReadOnly ? texts.lookOnly : saveWords(state)}
      </p>
      <FileReminder />
    </>
  );
}

function FileReminder() {
  const planId = usePlanStore((state) => state.plan.id);
  const days = useFileNotes((state) => daysWithoutFile(state.notes, planId, new Date()));
  if (days === null) return null;
  return (
    <button
      type="button"
      className="quiet"
      title={texts.changedDaysAgoNo(days)}
      onClick={() => void savePlanFile()}
    >
      {texts.noFileForDays(days)}
    </button>
  );
}

function saveWords(state: SaveStatus): string {
  switch (state.kind) {
    case "loading":
      return texts.opening;
    case "saving":
      return texts.saving;
    case "saved":
      return texts.savedAt(state.at);
    case "unsaved":
      return texts.notSavedYet;
    case "failed":
      return texts.notSavedAtAll;
  }
}
