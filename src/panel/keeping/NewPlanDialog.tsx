import { useState } from "react";
import { lastFileOf, useFileNotes } from "../../store/files/file-reminder.ts";
import { newPlan, savePlanFile } from "../../store/files/plan-file.ts";
import { tell, useSaveState } from "../../store/keeping/save-state.ts";
import { faultReason } from "../../store/keeping/storage-fault.ts";
import { deleteStoredPlan } from "../../store/keeping/stored-plans.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { Dialog } from "../form/Dialog.tsx";
import { newPlanWords as words } from "./new-plan-words.ts";
import "./kept.css";

/** Begins a new plan once it is settled what becomes of the open one. Nothing is lost unasked. */
export function NewPlanDialog({ onClose }: { readonly onClose: () => void }) {
  const [plan] = useState(() => usePlanStore.getState().plan);
  const [isAsking, setAsking] = useState(false);
  const begin = async (): Promise<boolean> => {
    const isBegun = await newPlan();
    if (isBegun) onClose();
    return isBegun;
  };
  const save = async () => {
    if (await savePlanFile()) await begin();
  };
  const remove = async () => {
    if (!(await begin())) return;
    await deleteStoredPlan(plan.id).catch((error: unknown) => {
      tell(words.removeFailed(faultReason(error)));
    });
  };
  return isAsking ? (
    <Dialog title={words.title} onClose={onClose}>
      <p role="alert">{words.sure(plan)}</p>
      <p className="dialog-actions">
        <button type="button" onClick={() => void remove()}>
          {words.sureButton}
        </button>
        <button type="button" className="quiet" onClick={() => setAsking(false)}>
          {words.cancel}
        </button>
      </p>
    </Dialog>
  ) : (
    <Dialog title={words.title} onClose={onClose}>
      <p>{words.open(plan)}</p>
      <Ways
        planId={plan.id}
        onKeep={() => void begin()}
        onSave={() => void save()}
        onDelete={() => setAsking(true)}
      />
      <p className="dialog-actions">
        <button type="button" className="quiet" onClick={onClose}>
          {words.cancel}
        </button>
      </p>
    </Dialog>
  );
}

interface WaysProps {
  readonly planId: string;
  readonly onKeep: () => void;
  readonly onSave: () => void;
  readonly onDelete: () => void;
}

function Ways({ planId, onKeep, onSave, onDelete }: WaysProps) {
  const isFailed = useSaveState(({ state }) => state.kind === "failed");
  const isReadOnly = useSaveState((state) => state.isReadOnly);
  const isInFile = useFileNotes(({ notes }) => lastFileOf(notes, planId) !== null);
  return (
    <ul className="plain-list new-plan-ways">
      <li>
        <button type="button" className="primary" disabled={isFailed} onClick={onKeep}>
          {words.keep}
        </button>
        <p className="field-hint">{isFailed ? words.keepFails : words.keepHint}</p>
      </li>
      <li>
        <button type="button" onClick={onSave}>
          {words.save}
        </button>
        <p className="field-hint">{words.saveHint}</p>
      </li>
      {!isReadOnly && (
        <li>
          <button type="button" onClick={onDelete}>
            {words.remove}
          </button>
          <p className="field-hint">{words.removeHint(isInFile)}</p>
        </li>
      )}
    </ul>
  );
}
