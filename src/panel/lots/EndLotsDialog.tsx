import { useState } from "react";
import { changeLots } from "../../core/edits/lot-edits.ts";
import { lotBook } from "../../core/lots/lot-book.ts";
import { Dialog } from "../form/Dialog.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { onFormSubmit } from "../form/use-form.ts";
import { TextField } from "../form/TextField.tsx";
import { commit, useKept } from "../state/plan-actions.ts";

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
  const what = lots.length === 1 ? (lots[0]?.code ?? "") : `${lots.length} lots`;
  const end = () => {
    const discardedBecause = as === "discarded" && reason !== "" ? reason : undefined;
    commit(
      changeLots(
        ids,
        { state: as, discardedBecause },
        as === "discarded" ? `${what} thrown away` : `${what} used up`,
      ),
    );
    onClose();
  };
  const isTreated = lots.some(({ treated }) => treated === true);
  return (
    <Dialog
      title={as === "discarded" ? `${what} thrown away` : `${what} used up`}
      onClose={onClose}
    >
      <form className="fields" noValidate onSubmit={onFormSubmit(end)}>
        <p>
          {as === "discarded"
            ? "It stays in the list as thrown away, with why."
            : "It stays in the list, so that the line of seed can be followed."}
        </p>
        {as === "discarded" && (
          <TextField
            label="Why"
            value={reason}
            isWide
            placeholder="dead, crossed, mouldy"
            onApply={(text) => {
              const problem = nameProblem(text, { what: "A reason has" });
              if (problem !== null) return problem;
              setReason(text.trim());
              return null;
            }}
          />
        )}
        {as === "discarded" && isTreated && (
          <p className="caution-text">
            ! Treated seed is neither composted, fed nor poured away. Follow its label and the rules
            for such waste where you are.
          </p>
        )}
        <p className="dialog-actions">
          <button type="submit" className="primary">
            Apply
          </button>
        </p>
      </form>
    </Dialog>
  );
}
