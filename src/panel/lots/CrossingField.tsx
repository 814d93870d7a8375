import { crossedLots } from "../../core/generations/crossed-lots.ts";
import { mayHaveCrossed } from "../../core/lots/lot-book.ts";
import type { Lot } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { useKept } from "../state/plan-actions.ts";
import type { LotChanges } from "./lot-change.ts";
import * as texts from "./words.ts";

interface CrossingFieldProps {
  readonly lot: Lot;
  readonly onChange: (changes: LotChanges, title: (code: string) => string) => string | null;
}

/** Whether crosses may be in a lot: by its record, or as the grower says. */
export function CrossingField({ lot, onChange }: CrossingFieldProps) {
  const { plan } = useKept();
  const { mayHaveCrossed: said, ...unsaid } = lot;
  const byRecord = mayHaveCrossed(unsaid) ? texts.notKeptApart : texts.nothingKnown;
  const crossed = crossedLots(plan.lots).get(lot.id) ?? [];
  return (
    <>
      <ChoiceField
        label={texts.crossing}
        value={said === undefined ? "record" : said ? "may" : "true"}
        choices={[
          { value: "record", label: texts.byItsRecord(byRecord) },
          { value: "may", label: texts.mayHaveCrossed },
          { value: "true", label: texts.lookedThrough },
        ]}
        onPick={(picked) =>
          void onChange(
            { mayHaveCrossed: picked === "record" ? undefined : picked === "may" },
            texts.changeCrossing,
          )
        }
      />
      {crossed.length > 0 && (
        <p className="caution-text">{texts.crossesMayBeIn(crossed.join(", "))}</p>
      )}
    </>
  );
}
