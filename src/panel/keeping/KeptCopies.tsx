import { useEffect, useState } from "react";
import { clockText } from "../../store/keeping/save-state.ts";
import { faultReason } from "../../store/keeping/storage-fault.ts";
import {
  type StoredCopy,
  type StoredPlan,
  listGenerations,
  openGenerationAsCopy,
  textOfCopy,
} from "../../store/keeping/stored-plans.ts";
import { downloadBytes } from "../form/download.ts";
import * as texts from "./dialog-words.ts";

interface KeptCopiesProps {
  readonly plan: StoredPlan;
  readonly onOpened: () => void;
}

/** Earlier copies of one plan. Opening one makes a plan of its own; the plan itself stays. */
export function KeptCopies({ plan, onOpened }: KeptCopiesProps) {
  const { planId, title } = plan;
  const [copies, setCopies] = useState<readonly StoredCopy[] | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const failed = (error: unknown) => setFault(texts.copiesUnreadable(faultReason(error)));
  useEffect(() => {
    listGenerations(planId).then(setCopies, (error: unknown) =>
      setFault(texts.copiesUnreadable(faultReason(error))),
    );
  }, [planId]);

  const open = async (revision: number) => {
    const outcome = await openGenerationAsCopy(planId, revision);
    if (outcome === "opened") onOpened();
    if (outcome === "unreadable") {
      setFault(texts.copyDamaged(revision));
    }
  };
  const save = async (revision: number) => {
    const text = await textOfCopy(planId, revision);
    if (text === null) setFault(texts.copyGone(revision));
    else {
      const name = `plan-copy-${revision}.json`;
      downloadBytes(new TextEncoder().encode(text), name, "application/json");
    }
  };

  return (
    <div className="kept-copies">
      {fault !== null && (
        <p className="notice bad" role="alert">
          {fault}
        </p>
      )}
      <ol reversed aria-label={texts.copiesOfNewestFirst(title)}>
        {copies?.map(({ revision, savedAt, origin }) => (
          <li key={revision} value={revision}>
            <span className="kept-when">
              {clockText(savedAt, new Date())}
              {origin === "opened" && texts.asOpened}
            </span>
            <button
              type="button"
              aria-label={texts.openCopyNumber(revision)}
              onClick={() => void open(revision).catch(failed)}
            >
              {texts.openAsACopy}
            </button>
            <button
              type="button"
              className="quiet"
              aria-label={texts.saveFileNumber(revision)}
              onClick={() => void save(revision).catch(failed)}
            >
              {texts.saveAsAFile}
            </button>
          </li>
        ))}
      </ol>
    </div>
  );
}
