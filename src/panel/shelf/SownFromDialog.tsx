import { useState } from "react";
import type { Edit } from "../../core/edits/edit.ts";
import { sowFrom } from "../../core/edits/sown-lots.ts";
import { ageWords } from "../../core/lots/age-words.ts";
import { bandWords } from "../../core/lots/band-words.ts";
import { estimateOf } from "../../core/lots/estimate.ts";
import { lotBook, lotsToSow } from "../../core/lots/lot-book.ts";
import { amountWords } from "../../core/lots/lot-words.ts";
import { bestFirst, sowingRows } from "../../core/lots/sowing.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import type { Kind } from "../../core/kinds/crop.ts";
import type { Lot, Plan } from "../../core/model/plan.ts";
import { Dialog } from "../form/Dialog.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { commit, useKept } from "../state/plan-actions.ts";
import { newLotDialog } from "../lots/commands.ts";
import { useRovingRows } from "../state/roving-rows.ts";
import { sowingCautions, sowingWords } from "./sowing-words.ts";
import * as texts from "./words.ts";

interface SownFromDialogProps {
  readonly plantingId: string;
  readonly onClose: () => void;
}

/** Which lots a planting is sown from, in order of use; none chosen: those of its variety. */
export function SownFromDialog({ plantingId, onClose }: SownFromDialogProps) {
  const { plan, layout, book } = useKept();
  const planting = layout.plantings.find(({ id }) => id === plantingId);
  const variety = plan.varieties.find(({ id }) => id === planting?.variety);
  const kind = book.kind(variety?.kind ?? "");
  // Those chosen at first stay in the list when they are unticked, so that it can be taken back.
  const [atFirst] = useState<readonly string[]>(() =>
    planting ? lotsToSow(plan, planting, undefined).map(({ id }) => id) : [],
  );
  const [chosen, setChosen] = useState(atFirst);
  const roving = useRovingRows();
  if (!planting || !variety) return null;
  const day = planting.start?.date ?? plan.season.first;
  const listed = listedLots(plan, variety.id, kind, day, atFirst);
  const edit = sowFrom(
    layout.id,
    [plantingId],
    chosen,
    texts.sowFrom(planting.code, codes(chosen, plan)),
  );
  const keep = () => {
    commit(edit);
    onClose();
  };
  return (
    <Dialog title={texts.lotsFor(planting.code)} onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={onFormSubmit(keep)}>
        <p>
          <bdi>{variety.name}</bdi>
          {texts.likeliestComeUpFirst}
          {listed.length === 0 && ` ${texts.noLotOnShelf}`}
        </p>
        <ul className="plain-list list-rows" aria-label={texts.lotsHeading} {...roving}>
          {listed.map((lot) => (
            <LotChoice
              key={lot.id}
              lot={lot}
              kind={kind}
              day={day}
              place={chosen.indexOf(lot.id)}
              isStranger={lot.variety !== variety.id}
              onSet={(isOn) =>
                setChosen((before) =>
                  isOn ? [...before, lot.id] : before.filter((id) => id !== lot.id),
                )
              }
            />
          ))}
        </ul>
        <WhatIsSown edit={edit} plantingId={plantingId} />
        <SownFromActions varietyId={variety.id} />
      </form>
    </Dialog>
  );
}

function SownFromActions({ varietyId }: { readonly varietyId: string }) {
  return (
    <p className="dialog-actions">
      <button type="submit" className="primary">
        {texts.sowFromThese}
      </button>
      <button type="button" onClick={() => newLotDialog.open({ varietyId })}>
        {texts.addALot}
      </button>
    </p>
  );
}

/** What would be sown, once the choice is kept. */
function WhatIsSown({ edit, plantingId }: { readonly edit: Edit; readonly plantingId: string }) {
  const { plan, layout, book } = useKept();
  const next = edit.apply(plan);
  const rows = sowingRows(next, layoutOf(next, layout.id), book);
  const row = rows.find(({ planting: { id } }) => id === plantingId);
  if (!row) return null;
  return (
    <p role="status">
      {sowingWords(row)}
      {sowingCautions(row).map((caution) => (
        <b key={caution} className="caution-text">
          {" "}
          ! {caution}
        </b>
      ))}
    </p>
  );
}

/** Lots of the variety, the likeliest to come up first, then others that were chosen before. */
function listedLots(
  plan: Plan,
  varietyId: string,
  kind: Kind | undefined,
  day: number,
  before: readonly string[],
): readonly Lot[] {
  const shelf = lotBook(plan.lots);
  const own = shelf.ofVariety(varietyId);
  const best = kind ? bestFirst(own, kind, plan, day) : own;
  const others = before.flatMap((id) => shelf.lot(id) ?? []).filter((lot) => !best.includes(lot));
  return [...best, ...others];
}

function codes(ids: readonly string[], plan: Plan): string {
  const shelf = lotBook(plan.lots);
  return ids.length === 0
    ? texts.whatIsBest
    : ids.map((id) => shelf.lot(id)?.code ?? "").join(", ");
}

interface LotChoiceProps {
  readonly lot: Lot;
  readonly kind: Kind | undefined;
  /** Day it is sown. */
  readonly day: number;
  /** Its place among the chosen; -1: not chosen. */
  readonly place: number;
  readonly isStranger: boolean;
  readonly onSet: (isOn: boolean) => void;
}

function LotChoice({ lot, kind, day, place, isStranger, onSet }: LotChoiceProps) {
  const { plan } = useKept();
  const estimate = kind ? estimateOf(lot, kind, plan.storagePlaces) : null;
  return (
    <li className="list-row" data-row="">
      <label className="check-field">
        <input
          type="checkbox"
          checked={place >= 0}
          onChange={(event) => onSet(event.target.checked)}
        />
        <span>
          <span className="code">{lot.code}</span> {place >= 0 && <b>{place + 1}.</b>}{" "}
          <span className="soft">
            {ageWords(lot, day)}; {amountWords(lot.amount)};{" "}
            {estimate
              ? texts.whenSown(bandWords(estimate.at(Math.max(day, estimate.startDay))))
              : texts.germinationNotKnown}
          </span>
          {isStranger && <b className="caution-text">! {texts.ofAnotherVariety}</b>}
          {lot.state !== "in stock" && (
            <b className="caution-text"> ! {texts.stateNames[lot.state]}</b>
          )}
          {lot.treated === true && <b className="caution-text">! {texts.treated}</b>}
        </span>
      </label>
    </li>
  );
}
