import { changeLots, removeLots } from "../../core/edits/lot-edits.ts";
import { lotBook } from "../../core/lots/lot-book.ts";
import type { Layout, Lot, Plan } from "../../core/model/plan.ts";
import { commit, useKept, windowNow } from "../state/plan-actions.ts";
import { viewNow } from "../state/view-state.ts";
import { lineDialog } from "../generations/dialogs.ts";
import { endLotsDialog, splitLotDialog } from "./dialogs.ts";
import { lotsNow } from "../state/lots-state.ts";
import * as texts from "./words.ts";

/** What is sown from it, what it is part of, and what can be done with it. */
export function LotUses({ lot }: { readonly lot: Lot }) {
  const { plan, layout } = useKept();
  const plantings = plantingsOf(lot, plan, layout);
  const parents = (lot.partOf ?? []).flatMap((id) => lotBook(plan.lots).lot(id) ?? []);
  const parts = plan.lots.filter(({ partOf }) => partOf?.includes(lot.id) === true);
  const show = () => {
    const ids = plantings.map(({ id }) => id);
    windowNow().select(ids);
    windowNow().bringIntoView(ids);
    viewNow().showSheet();
  };
  return (
    <>
      <h4>{texts.whatBecomesOfIt}</h4>
      <p>
        {plantings.length === 0
          ? texts.nothingLayoutSown
          : texts.sownIn(plantings.map(({ code }) => code).join(", "))}
        {plantings.length > 0 && (
          <button type="button" className="link" onClick={show}>
            {texts.showOnTheSheet}
          </button>
        )}
      </p>
      <p>
        <button
          type="button"
          onClick={() => lineDialog.open({ varietyId: lot.variety, lotId: lot.id })}
        >
          {texts.lineThroughYears}
        </button>
      </p>
      <LotLinks label={texts.madeOf} lots={parents} />
      <LotLinks label={texts.inItWentTo} lots={parts} />
      <StateLine lot={lot} />
    </>
  );
}

function LotLinks({ label, lots }: { readonly label: string; readonly lots: readonly Lot[] }) {
  if (lots.length === 0) return null;
  return (
    <p>
      {label}{" "}
      {lots.map(({ id, code }) => (
        <button key={id} type="button" className="link code" onClick={() => lotsNow().openLot(id)}>
          {code}
        </button>
      ))}
    </p>
  );
}

function StateLine({ lot }: { readonly lot: Lot }) {
  if (lot.state !== "in stock") {
    return (
      <>
        <p>
          <b>{lot.state === "discarded" ? texts.thrownAwayButton : texts.usedUpButton}</b>
          {lot.discardedBecause === undefined ? "" : `: ${lot.discardedBecause}`}.
        </p>
        <p className="offers">
          <button
            type="button"
            onClick={() =>
              commit(
                changeLots(
                  [lot.id],
                  { state: "in stock", discardedBecause: undefined },
                  texts.backInStock(lot.code),
                ),
              )
            }
          >
            {texts.stockAgain}
          </button>
          <DeleteButton lot={lot} />
        </p>
      </>
    );
  }
  return (
    <>
      <p className="offers">
        <button type="button" onClick={() => splitLotDialog.open({ id: lot.id })}>
          {texts.split}
        </button>
        <button type="button" onClick={() => endLotsDialog.open({ ids: [lot.id], as: "used up" })}>
          {texts.usedUpButton}
        </button>
        <button
          type="button"
          onClick={() => endLotsDialog.open({ ids: [lot.id], as: "discarded" })}
        >
          {texts.thrownAwayButton}
        </button>
        <DeleteButton lot={lot} />
      </p>
      <p className="field-hint">{texts.sellPassSeedYou}</p>
    </>
  );
}

function DeleteButton({ lot }: { readonly lot: Lot }) {
  const remove = () => {
    commit(removeLots([lot.id], texts.deleteLot(lot.code)));
    lotsNow().pick([], null);
  };
  return (
    <button type="button" onClick={remove}>
      {texts.deleteWord}
    </button>
  );
}

/** Plantings of a layout that name a lot, or whose variety does and which name none. */
function plantingsOf(lot: Lot, plan: Plan, layout: Layout) {
  const named = new Map(plan.varieties.map(({ id, lots }) => [id, lots]));
  return layout.plantings.filter(({ lots, variety }) =>
    (lots ?? named.get(variety))?.includes(lot.id),
  );
}
