import { useState } from "react";
import { changeLots } from "../../core/edits/lot-edits.ts";
import { lotBook } from "../../core/lots/lot-book.ts";
import { Dialog } from "../form/Dialog.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { onFormSubmit } from "../form/use-form.ts";
import { TextField } from "../form/TextField.tsx";
import { commit, useKept } from "../state/plan-actions.ts";
import * as texts from "./words.ts";

interface EndLotsDialogProps {
  readonly ids: readonly string[];
  readonly as: "used up" | "discarded";
  readonly onClose: () => void;
}

/** Lots that are no longer on the shelf. They stay in the list, out of stock. */
export function EndLotsDialog({ ids, as, onClose }: EndLotsDialogProps) {
  const { plan } = useKept();
  const lots = ids.flatMap((id) => lotBook(plan.lots).lot(id) ?? []);
  const [reason, setReason] = useState("");
  const what = texts.lotsNamed(lots);
  const end = () => {
    const discardedBecause = as === "discarded" && reason !== "" ? reason : undefined;
    commit(
      changeLots(
        ids,
        { state: as, discardedBecause },
        as === "discarded" ? texts.thrownAway(what) : texts.usedUp(what),
      ),
    );
    onClose();
  };
  const isTreated = lots.some(({ treated }) => treated === true);
  return (
    <Dialog
      title={as === "discarded" ? texts.thrownAway(what) : texts.usedUp(what)}
      onClose={onClose}
    >
      <form className="fields" noValidate onSubmit={onFormSubmit(end)}>
        <p>{as === "discarded" ? texts.staysListThrownAway : texts.staysListLineSeed}</p>
        {as === "discarded" && (
          <TextField
            label={texts.why}
            value={reason}
            isWide
            placeholder={texts.deadCrossedMouldy}
            onApply={(text) => {
              const problem = nameProblem(text, { tooLong: texts.reasonTooLong });
              if (problem !== null) return problem;
              setReason(text.trim());
              return null;
            }}
          />
        )}
        {as === "discarded" && isTreated && (
          <p className="caution-text">{texts.treatedSeedNeitherComposted}</p>
        )}
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {texts.apply}
          </button>
        </p>
      </form>
    </Dialog>
  );
}
