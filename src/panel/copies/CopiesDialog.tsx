import { useId, useState } from "react";
import type { Plan } from "../../core/model/plan.ts";
import type { Read } from "../../core/model/problem.ts";
import { refuse } from "../../core/model/problem.ts";
import { readPlanFile } from "../../store/files/plan-file.ts";
import { Dialog } from "../form/Dialog.tsx";
import { FileField, FileProblems } from "../form/FileField.tsx";
import { useKept, windowNow } from "../state/plan-actions.ts";
import { copiesWords as words } from "./copies-words.ts";
import { handOver, saveCopy, shareableCopy } from "./send-copy.ts";
import { TakeBack } from "./TakeBack.tsx";
import "./copies.css";

interface Returned {
  readonly name: string;
  readonly read: Read<Plan>;
}

/** The plan out to a helper's phone as a file, and a returned file back into it. */
export function CopiesDialog({ onClose }: { readonly onClose: () => void }) {
  const [returned, setReturned] = useState<Returned | null>(null);
  const hintId = useId();
  const take = async (file: File) => {
    const read = await readPlanFile(file);
    setReturned({ name: file.name, read: read.ok ? planOf(read.value, file.name) : read });
  };
  return (
    <Dialog title={words.title} onClose={onClose} isWide>
      <section className="csv-part">
        <h3>{words.sendHeading}</h3>
        <p>{words.sendHint}</p>
        <SendButtons />
      </section>
      <section className="csv-part">
        <h3>{words.backHeading}</h3>
        <p id={hintId}>{words.backHint}</p>
        <p>
          <FileField
            label={words.file}
            accept=".json,.txt,application/json,text/plain"
            describedBy={hintId}
            onPick={(file) => void take(file)}
          />
        </p>
        {returned && !returned.read.ok && <FileProblems problems={returned.read.problems} />}
        {returned?.read.ok === true && (
          <TakeBack fileName={returned.name} theirs={returned.read.value} onDone={onClose} />
        )}
      </section>
    </Dialog>
  );
}

function SendButtons() {
  const { plan, layout } = useKept();
  const copy = shareableCopy(plan, layout);
  const [problem, setProblem] = useState<string | null>(null);
  const send = async () => {
    if (!copy) return;
    const fault = await handOver(copy);
    setProblem(fault);
    if (fault === null) windowNow().announce(words.sent);
  };
  return (
    <>
      <p className="dialog-actions">
        {copy && (
          <button type="button" className="primary" onClick={() => void send()}>
            {words.send}
          </button>
        )}
        <button
          type="button"
          onClick={() => {
            saveCopy(plan, layout);
            windowNow().announce(words.saved);
          }}
        >
          {words.save}
        </button>
      </p>
      {!copy && <p className="field-hint">{words.cannotSend}</p>}
      {problem !== null && (
        <p className="field-reason" role="alert">
          {problem}
        </p>
      )}
    </>
  );
}

function planOf(
  { plan, from }: { readonly plan: Plan; readonly from: "plan" | "geojson" },
  file: string,
): Read<Plan> {
  if (from === "plan") return { ok: true, value: plan };
  return refuse({
    file,
    object: "",
    field: "",
    got: words.notAPlan,
    expected: words.planSentBack,
  });
}
