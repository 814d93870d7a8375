import { useState } from "react";
import { mixLots } from "../../core/edits/lot-edits.ts";
import { lotBook } from "../../core/lots/lot-book.ts";
import { foldedCode } from "../../core/model/lot-code.ts";
import type { Lot } from "../../core/model/plan.ts";
import { Dialog } from "../form/Dialog.tsx";
import { FormProblem } from "../form/Field.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { TextField } from "../form/TextField.tsx";
import { commit, planNow, useKept } from "../state/plan-actions.ts";
import { lotsNow } from "../state/lots-state.ts";
import { patternCode } from "./pattern-code.ts";
import * as texts from "./words.ts";

interface MixLotsDialogProps {
  readonly ids: readonly string[];
  readonly onClose: () => void;
}

/** Several lots of one variety into one, which names them all. */
export function MixLotsDialog({ ids, onClose }: MixLotsDialogProps) {
  const { plan, book } = useKept();
  const shelf = lotBook(plan.lots);
  const lots = ids.flatMap((id) => shelf.lot(id) ?? []);
  const [first] = lots;
  const variety = plan.varieties.find(({ id }) => id === first?.variety);
  const [code, setCode] = useState(() =>
    variety && first
      ? patternCode(plan, variety, book.kind(variety.kind), { harvestYear: first.harvestYear })
      : "",
  );
  const [problem, setProblem] = useState<string | null>(null);
  const mix = () => {
    const refusal =
      code.trim() === ""
        ? texts.typeMixtureCode
        : shelf.codes.has(foldedCode(code))
          ? texts.codeOfAnother(code.trim())
          : null;
    setProblem(refusal);
    if (refusal !== null) return;
    commit(mixLots(ids, code.trim()));
    const made = lotBook(planNow().plan.lots).ofCode(code);
    if (made) lotsNow().openLot(made.id);
    onClose();
  };
  return (
    <Dialog title={texts.mixLots(lots.length)} onClose={onClose}>
      <form className="fields" noValidate onSubmit={onFormSubmit(mix)}>
        <p>
          {texts.becomeOneLotUsed(
            lots.map(({ code: each }) => each).join(", "),
            variety?.name ?? "",
          )}
        </p>
        <MixCautions lots={lots} />
        <TextField
          label={texts.codeField}
          value={code}
          onApply={(text) => {
            setCode(text);
            setProblem(null);
            return null;
          }}
        />
        <FormProblem problem={problem} />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {texts.mixThem}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

function MixCautions({ lots }: { readonly lots: readonly Lot[] }) {
  const isPartlyTreated =
    lots.some(({ treated }) => treated === true) && lots.some(({ treated }) => treated !== true);
  const years = new Set(lots.map(({ harvestYear }) => harvestYear));
  return (
    <>
      {years.size > 1 && <p className="caution-text">{texts.theyDifferentYearsAge}</p>}
      {isPartlyTreated && <p className="caution-text">{texts.someTreatedAllMixture}</p>}
    </>
  );
}
