import { changeLots, removeLots } from "../../core/edits/lot-edits.ts";
import { amountWords } from "../../core/lots/lot-words.ts";
import type { Lot } from "../../core/model/plan.ts";
import { commit } from "../state/plan-actions.ts";
import { endLotsDialog, mixLotsDialog, moveLotsDialog } from "./dialogs.ts";
import { lotsNow } from "../state/lots-state.ts";
import * as texts from "./words.ts";

/** Codes named at most. */
const MOST_NAMED = 12;

/** What can be done with several lots at once. */
export function SeveralLots({ lots }: { readonly lots: readonly Lot[] }) {
  const ids = lots.map(({ id }) => id);
  const isOneVariety = new Set(lots.map(({ variety }) => variety)).size === 1;
  const many = texts.lotCount(lots.length);
  const treat = (treated: boolean) =>
    commit(
      changeLots(
        ids,
        treated ? { treated } : { treated, treatedWith: undefined },
        treated ? texts.markTreated(many) : texts.markUntreated(many),
      ),
    );
  return (
    <div className="fields">
      <h3>{many}</h3>
      <p className="code">
        {lots
          .slice(0, MOST_NAMED)
          .map(({ code }) => code)
          .join(", ")}
        {lots.length > MOST_NAMED && texts.andMore(lots.length - MOST_NAMED)}
      </p>
      <p>{sumWords(lots)}</p>
      <p className="offers">
        <button type="button" onClick={() => moveLotsDialog.open({ ids })}>
          {texts.moveToAPlace}
        </button>
        <button type="button" disabled={!isOneVariety} onClick={() => mixLotsDialog.open({ ids })}>
          {texts.mixIntoOneLot}
        </button>
        <button type="button" onClick={() => endLotsDialog.open({ ids, as: "used up" })}>
          {texts.usedUpButton}
        </button>
        <button type="button" onClick={() => endLotsDialog.open({ ids, as: "discarded" })}>
          {texts.thrownAwayButton}
        </button>
        <button type="button" onClick={() => treat(true)}>
          {texts.theyAreTreated}
        </button>
        <button type="button" onClick={() => treat(false)}>
          {texts.theyAreUntreated}
        </button>
        <button
          type="button"
          onClick={() => {
            commit(removeLots(ids, texts.deleteNamed(many)));
            lotsNow().pick([], null);
          }}
        >
          {texts.deleteWord}
        </button>
      </p>
      {!isOneVariety && <p className="field-hint">{texts.onlyLotsOneVariety}</p>}
    </div>
  );
}

function sumWords(lots: readonly Lot[]): string {
  const sum = (unit: "g" | "seeds") =>
    lots.reduce((total, { amount }) => total + (amount?.unit === unit ? amount.value : 0), 0);
  const uncounted = lots.filter(({ amount }) => amount === undefined).length;
  const parts = (["g", "seeds"] as const)
    .filter((unit) => lots.some(({ amount }) => amount?.unit === unit))
    .map((unit) => amountWords({ unit, value: sum(unit) }));
  if (uncounted > 0) parts.push(texts.notCounted(uncounted));
  return texts.inAll(parts);
}
