import { codesText } from "../../core/lots/named-lots.ts";
import { lotBook } from "../../core/lots/lot-book.ts";
import type { Lot } from "../../core/model/plan.ts";
import { TextField } from "../form/TextField.tsx";
import { planNow, useKept } from "../state/plan-actions.ts";
import type { LotChanges } from "./lot-change.ts";
import { originWords as words } from "./origin-words.ts";

interface GrownFromFieldProps {
  readonly lot: Lot;
  readonly onChange: (changes: LotChanges, title: (code: string) => string) => string | null;
}

/** The lots a harvest was grown from, by their codes. */
export function GrownFromField({ lot, onChange }: GrownFromFieldProps) {
  const { plan } = useKept();
  const shelf = lotBook(plan.lots);
  const parents = (lot.grownFrom ?? []).flatMap((id) => shelf.lot(id) ?? []);
  return (
    <TextField
      label={words.parents}
      value={codesText(parents)}
      hint={words.parentsHint}
      onApply={(text) => {
        const book = lotBook(planNow().plan.lots);
        const codes = text.split(";").map((code) => code.trim());
        const typed = codes.filter((code) => code !== "");
        const missing = typed.find((code) => !book.ofCode(code));
        if (missing !== undefined) return words.unknownCode(missing);
        const ids = [...new Set(typed.flatMap((code) => book.ofCode(code)?.id ?? []))];
        return onChange({ grownFrom: ids.length === 0 ? undefined : ids }, words.changeParents);
      }}
    />
  );
}
