import { useState } from "react";
import { splitLot } from "../../core/edits/lot-edits.ts";
import { lotBook } from "../../core/lots/lot-book.ts";
import { inGrams, inSeeds, seedsPerGram } from "../../core/lots/seed-yield.ts";
import { amountWords } from "../../core/lots/lot-words.ts";
import { foldedCode, freeCode } from "../../core/model/lot-code.ts";
import type { Lot, SeedAmount } from "../../core/model/plan.ts";
import type { Kind } from "../../core/kinds/crop.ts";
import { Dialog } from "../form/Dialog.tsx";
import { FormProblem } from "../form/Field.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { TextField } from "../form/TextField.tsx";
import { commit, useKept } from "../state/plan-actions.ts";
import { amountText, readAmount } from "../../core/lots/amount-text.ts";
import * as texts from "./words.ts";

interface SplitLotDialogProps {
  readonly id: string;
  readonly onClose: () => void;
}

/** Part of a lot into a packet of its own, with a code of its own. */
export function SplitLotDialog({ id, onClose }: SplitLotDialogProps) {
  const { plan, book } = useKept();
  const shelf = lotBook(plan.lots);
  const lot = shelf.lot(id);
  const kind = book.kind(plan.varieties.find((each) => each.id === lot?.variety)?.kind ?? "");
  const [part, setPart] = useState<SeedAmount | undefined>(undefined);
  const [code, setCode] = useState(() => (lot ? freeCode(`${lot.code}-a`, shelf.codes) : ""));
  const [problem, setProblem] = useState<string | null>(null);
  if (!lot) return null;
  const split = () => {
    const same = part && sameUnit(part, lot, kind);
    const refusal = splitRefusal(lot, part, same, code, shelf.codes);
    setProblem(refusal);
    if (refusal !== null || !same) return;
    commit(splitLot(lot.id, same, code.trim()));
    onClose();
  };
  return (
    <Dialog title={texts.splitCode(lot.code)} onClose={onClose}>
      <form className="fields" noValidate onSubmit={onFormSubmit(split)}>
        <p>{texts.holdsPartKeepsTests(lot.code, amountWords(lot.amount))}</p>
        <TextField
          label={texts.splitOff}
          value={amountText(part)}
          placeholder={lot.amount?.unit === "seeds" ? texts.seeds : "2 g"}
          onApply={(text) => {
            const read = readAmount(text);
            if (!read.ok) return read.reason;
            setPart(read.amount);
            setProblem(null);
            return null;
          }}
        />
        <TextField
          label={texts.codeOfThePart}
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
            {texts.splitIt}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

/** The part in the unit of its lot, by seeds in a gram; undefined where they are not known. */
function sameUnit(part: SeedAmount, lot: Lot, kind: Kind | undefined): SeedAmount | undefined {
  if (!lot.amount || lot.amount.unit === part.unit) return part;
  const perGram = seedsPerGram(lot, kind);
  const { unit } = lot.amount;
  const value = unit === "g" ? inGrams(part, perGram) : inSeeds(part, perGram);
  return value === undefined ? undefined : { unit, value };
}

function splitRefusal(
  lot: Lot,
  part: SeedAmount | undefined,
  same: SeedAmount | undefined,
  code: string,
  codes: ReadonlySet<string>,
): string | null {
  if (!lot.amount) return texts.amountNotKnown(lot.code);
  if (!part || part.value === 0) return texts.typePart;
  if (!same) return texts.seedsPerGramNotKnown;
  if (same.value > lot.amount.value) {
    return texts.holdsOnly(lot.code, amountWords(lot.amount));
  }
  if (code.trim() === "") return texts.typePartCode;
  return codes.has(foldedCode(code)) ? texts.codeOfAnother(code.trim()) : null;
}
