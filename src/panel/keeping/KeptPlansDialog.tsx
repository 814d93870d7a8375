import { useEffect, useState } from "react";
import { lastFileOf, useFileNotes } from "../../store/files/file-reminder.ts";
import { savePlanFile } from "../../store/files/plan-file.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { clockText } from "../../store/keeping/save-state.ts";
import { faultReason } from "../../store/keeping/storage-fault.ts";
import { type StoredPlan, listPlans } from "../../store/keeping/stored-plans.ts";
import { openStored } from "../../store/keeping/switch-plan.ts";
import { Dialog } from "../form/Dialog.tsx";
import { KeptCopies } from "./KeptCopies.tsx";
import * as texts from "./dialog-words.ts";
import "./kept.css";

/** The plans this browser keeps, and the earlier copies of each. */
export function KeptPlansDialog({ onClose }: { readonly onClose: () => void }) {
  const [plans, setPlans] = useState<readonly StoredPlan[] | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const openId = usePlanStore((state) => state.plan.id);
  useEffect(() => {
    listPlans().then(setPlans, (error: unknown) => setFault(faultReason(error)));
  }, []);
  const open = async (planId: string) => {
    try {
      const found = await openStored(planId);
      if (found === "found") onClose();
      else if (found !== "kept-open") setFault(texts.noCopyReadable);
    } catch (error) {
      setFault(faultReason(error));
    }
  };
  return (
    <Dialog title={texts.keptPlans} onClose={onClose} isWide>
      <p>{texts.browserKeepsPlansYou}</p>
      {!globalThis.isSecureContext && <p className="region-note">{texts.plainHttp}</p>}
      {fault !== null && (
        <p className="notice bad" role="alert">
          {texts.theKeptPlans(fault)}
        </p>
      )}
      {plans?.length === 0 && <p className="region-empty">{texts.noPlanKeptHere}</p>}
      <ul className="kept-plans" aria-label={texts.keptPlans}>
        {plans?.map((plan) => (
          <KeptPlan
            key={plan.planId}
            plan={plan}
            isOpen={plan.planId === openId}
            onOpen={() => void open(plan.planId)}
            onOpenedCopy={onClose}
          />
        ))}
      </ul>
    </Dialog>
  );
}

function timeOf(iso: string): string {
  return clockText(iso, new Date());
}

interface KeptPlanProps {
  readonly plan: StoredPlan;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
  readonly onOpenedCopy: () => void;
}

function KeptPlan({ plan, isOpen, onOpen, onOpenedCopy }: KeptPlanProps) {
  const notes = useFileNotes((state) => state.notes);
  const [isUnfolded, setUnfolded] = useState(false);
  const inFile = lastFileOf(notes, plan.planId);
  return (
    <li>
      <div className="kept-line">
        <div>
          <strong>{plan.title}</strong>
          <p className="region-note">
            {texts.savedHere(timeOf(plan.savedAt))}
            {inFile === null ? texts.noFileYet : texts.lastFile(timeOf(inFile))}
          </p>
        </div>
        {isOpen ? (
          <button type="button" onClick={() => void savePlanFile()}>
            {texts.saveFile}
          </button>
        ) : (
          <button type="button" onClick={onOpen}>
            {texts.open}
          </button>
        )}
        <button
          type="button"
          className="quiet"
          aria-expanded={isUnfolded}
          aria-label={texts.earlierCopiesOf(plan.title)}
          onClick={() => setUnfolded(!isUnfolded)}
        >
          {texts.earlierCopies}
        </button>
      </div>
      {isUnfolded && <KeptCopies plan={plan} onOpened={onOpenedCopy} />}
    </li>
  );
}
