import type { SeedAmount, Variety } from "../../core/model/plan.ts";
import { NoteField, TextField } from "../form/TextField.tsx";
import { amountText, readAmount } from "../../core/lots/amount-text.ts";
import * as texts from "./dialog-words.ts";

type Changes = Partial<{ [Key in "reserve" | "wantedSeed" | "reason"]: Variety[Key] | undefined }>;

interface SeedWantedProps {
  readonly variety: Variety;
  readonly onSet: (changes: Changes) => null;
}

/** How much seed of it is to be harvested and kept, and why it is grown out. */
export function SeedWanted({ variety, onSet }: SeedWantedProps) {
  return (
    <>
      <AmountField
        label={texts.seedWanted}
        amount={variety.wantedSeed}
        hint={texts.cleanSeedSeasonRenew}
        onApply={(wantedSeed) => onSet({ wantedSeed })}
      />
      <AmountField
        label={texts.keptInReserve}
        amount={variety.reserve}
        hint={texts.leftShelfWhateverSown}
        onApply={(reserve) => onSet({ reserve })}
      />
      <NoteField
        label={texts.whyThisSeason}
        value={variety.reason ?? ""}
        onApply={(text) => void onSet({ reason: text === "" ? undefined : text })}
      />
    </>
  );
}

interface AmountFieldProps {
  readonly label: string;
  readonly amount: SeedAmount | undefined;
  readonly hint: string;
  readonly onApply: (amount: SeedAmount | undefined) => null;
}

function AmountField({ label, amount, hint, onApply }: AmountFieldProps) {
  return (
    <TextField
      label={label}
      value={amountText(amount)}
      placeholder={texts.suchAsGrams}
      hint={hint}
      onApply={(text) => {
        const read = readAmount(text);
        return read.ok ? onApply(read.amount) : read.reason;
      }}
    />
  );
}
