import type { ReactNode } from "react";
import type { Lot } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { DayField } from "../form/DayField.tsx";
import { TextField } from "../form/TextField.tsx";
import type { LotChanges } from "./lot-change.ts";
import { ValueField } from "../form/NumberField.tsx";
import { originWords as words } from "./origin-words.ts";
import * as texts from "./words.ts";

type Origin = NonNullable<Lot["from"]>;
type OriginChanges = { readonly [Key in keyof Origin]?: Origin[Key] | undefined };

const origins = [
  { value: "unknown", label: texts.notKnown },
  { value: "own", label: texts.ownHarvest },
  { value: "received", label: texts.received },
] as const;

interface LotOriginProps {
  readonly lot: Pick<Lot, "from">;
  readonly onChange: (changes: LotChanges, title: (code: string) => string) => string | null;
  /** The field of the lots it was grown from; a new lot has none yet. */
  readonly parents?: ReactNode;
}

/** Where the seed is from: a plot of one's own, or from whom. */
export function LotOrigin({ lot, onChange, parents }: LotOriginProps) {
  const { from } = lot;
  const set = (changes: OriginChanges) => {
    if (!from) return null;
    const merged = Object.entries({ ...from, ...changes }).filter(
      ([, value]) => value !== undefined,
    );
    return onChange({ from: Object.fromEntries(merged) as unknown as Origin }, texts.changeOrigin);
  };
  const text = (key: "plot" | "season" | "who") => (typed: string) =>
    set({ [key]: typed.trim() === "" ? undefined : typed.trim() });
  return (
    <>
      <ChoiceField
        label={texts.whereFrom}
        value={from?.what ?? "unknown"}
        choices={origins}
        onPick={(what) =>
          void onChange({ from: what === "unknown" ? undefined : { what } }, texts.changeOrigin)
        }
      />
      {from?.what === "own" && <OwnFields from={from} set={set} text={text} parents={parents} />}
      {from?.what === "received" && (
        <>
          <TextField label={texts.fromWhom} value={from.who ?? ""} isWide onApply={text("who")} />
          <DayField label={texts.on} value={from.on} onApply={(on) => set({ on })} />
        </>
      )}
    </>
  );
}

interface OwnFieldsProps {
  readonly from: Origin;
  readonly set: (changes: OriginChanges) => string | null;
  readonly text: (key: "plot" | "season") => (typed: string) => string | null;
  readonly parents: ReactNode;
}

/** Of an own harvest: the plot, and what the line of the variety is reckoned from. */
function OwnFields({ from, set, text, parents }: OwnFieldsProps) {
  return (
    <>
      <TextField label={texts.plot} value={from.plot ?? ""} onApply={text("plot")} />
      <TextField label={texts.season} value={from.season ?? ""} onApply={text("season")} />
      <ValueField
        label={texts.plantsSavedFrom}
        value={from.plants}
        hint={words.plantsHint}
        onApply={(plants) => set({ plants })}
      />
      <ValueField
        label={words.pollen}
        value={from.pollenPlants}
        hint={words.pollenHint}
        onApply={(pollenPlants) => set({ pollenPlants })}
      />
      <ChoiceField
        label={words.equal}
        value={from.equalSeed === undefined ? "unknown" : from.equalSeed ? "yes" : "no"}
        choices={words.equalChoices}
        onPick={(picked) =>
          void set({ equalSeed: picked === "unknown" ? undefined : picked === "yes" })
        }
      />
      {parents}
      <ValueField
        label={texts.cleanedSeedG}
        value={from.cleanedGrams}
        hint={texts.allThesePlantsGave}
        onApply={(cleanedGrams) => set({ cleanedGrams })}
      />
    </>
  );
}
