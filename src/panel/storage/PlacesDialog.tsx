import { useState } from "react";
import {
  nextPlaceId,
  putStoragePlace,
  removeStoragePlace,
} from "../../core/edits/storage-edits.ts";
import { placeRules } from "../../core/lots/better-place.ts";
import { monthName } from "../../core/model/day.ts";
import type { StoragePlace } from "../../core/model/plan.ts";
import { Dialog } from "../form/Dialog.tsx";
import { commit, useKept } from "../state/plan-actions.ts";
import { PlaceForm } from "./PlaceForm.tsx";
import { useRovingRows } from "../state/roving-rows.ts";
import * as texts from "./words.ts";

/** Where seed is kept, and what the air there is like. */
export function PlacesDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan } = useKept();
  const [open, setOpen] = useState<StoragePlace | null>(null);
  const roving = useRovingRows();
  const isNew = open !== null && !plan.storagePlaces.some(({ id }) => id === open.id);
  return (
    <Dialog title={texts.storagePlaces} onClose={onClose} isWide>
      {open ? (
        <PlaceForm
          key={open.id}
          place={open}
          isNew={isNew}
          onKeep={(place) => {
            commit(putStoragePlace(place));
            setOpen(null);
          }}
          onLeave={() => setOpen(null)}
        />
      ) : (
        <>
          {plan.storagePlaces.length === 0 && <p>{texts.noneYetHowWarm}</p>}
          <ul className="plain-list list-rows" aria-label={texts.storagePlaces} {...roving}>
            {plan.storagePlaces.map((place) => (
              <PlaceLine key={place.id} place={place} onOpen={() => setOpen(place)} />
            ))}
          </ul>
          <p className="dialog-actions">
            <button
              type="button"
              className="primary"
              onClick={() => setOpen({ id: nextPlaceId(plan), name: "" })}
            >
              {texts.addAPlace}
            </button>
          </p>
          <p className="field-hint">{texts.dryCoolKeepsLongest}</p>
        </>
      )}
    </Dialog>
  );
}

interface PlaceLineProps {
  readonly place: StoragePlace;
  readonly onOpen: () => void;
}

function PlaceLine({ place, onOpen }: PlaceLineProps) {
  const { plan } = useKept();
  const count = plan.lots.filter(({ stored }) => stored?.at(-1)?.place === place.id).length;
  const { hundred } = placeRules(place);
  return (
    <li className="list-row" data-row="">
      <p className="list-row-head">
        <b>{place.name}</b>
        <span className="soft">{texts.lotCount(count)}</span>
      </p>
      <p>{conditionWords(place)}</p>
      {hundred && (
        <p className={hundred.keeps ? "clear-text" : "caution-text"}>
          {hundred.keeps ? "✓" : "!"}
          {texts.worstHundredRule(Math.round(hundred.sum))}
        </p>
      )}
      <div className="list-row-actions">
        <button type="button" aria-label={texts.change(place.name)} onClick={onOpen}>
          {texts.change2}
        </button>
        <button
          type="button"
          className="act"
          aria-label={texts.deleteWord(place.name)}
          onClick={() => commit(removeStoragePlace(place))}
        >
          {texts.deleteWord2}
        </button>
      </div>
    </li>
  );
}

/** `from Jan: 5 C, 40 % humidity; from Jul: 20 C, 60 % humidity`. */
function conditionWords({ conditions = [] }: StoragePlace): string {
  if (conditions.length === 0) {
    return texts.roomAssumed;
  }
  return conditions
    .map(({ fromMonth, temperatureC, humidityPct, moisturePct }) => {
      const said =
        humidityPct === undefined
          ? texts.sealedAt(temperatureC, moisturePct ?? 0)
          : texts.openAt(temperatureC, humidityPct);
      return conditions.length === 1 ? said : texts.fromMonth(monthName(fromMonth), said);
    })
    .join("; ");
}
