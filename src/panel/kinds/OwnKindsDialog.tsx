import { useState } from "react";
import { cropBook } from "../../core/kinds/crop-book.ts";
import { ownKindRefusal, removeOwnKind } from "../../core/edits/own-kind-edits.ts";
import { formatDistance } from "../../core/model/length.ts";
import type { OwnKind } from "../../core/model/plan.ts";
import { Dialog } from "../form/Dialog.tsx";
import { KindField } from "./KindField.tsx";
import { OwnKindDialog } from "./OwnKindDialog.tsx";
import { blankOwnKind, ownDistances, ownKindFrom } from "./own-kind-edit.ts";
import { commit } from "../state/plan-actions.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";
import "./kinds.css";

/** The kinds a plan brings along. They travel with its file. */
export function OwnKindsDialog({ onClose }: { readonly onClose: () => void }) {
  const plan = useShownPlan();
  const [editing, setEditing] = useState<OwnKind | null>(null);
  const [isSearching, setSearching] = useState(false);
  const beginFrom = (kindId: string) => {
    const kind = cropBook().kind(kindId);
    const own = plan.ownKinds.find(({ id }) => id === kindId);
    setSearching(false);
    if (own) setEditing(own);
    else if (kind) setEditing(ownKindFrom(kind));
  };
  return (
    <>
      <Dialog title={texts.ownKindsAndFigures} onClose={onClose} isWide>
        <p className="soft">{texts.kindsMissingHereYour}</p>
        <OwnKindList onEdit={setEditing} />
        {isSearching && <KindField kindId={undefined} onPick={beginFrom} />}
        <p className="dialog-actions">
          <button type="button" onClick={() => setEditing(blankOwnKind(plan, ""))}>
            {texts.addAKind}
          </button>
          <button
            type="button"
            aria-expanded={isSearching}
            onClick={() => setSearching(!isSearching)}
          >
            {texts.ownFiguresKnownKind}
          </button>
        </p>
      </Dialog>
      {editing && <OwnKindDialog start={editing} onClose={() => setEditing(null)} />}
    </>
  );
}

function OwnKindList({ onEdit }: { readonly onEdit: (own: OwnKind) => void }) {
  const plan = useShownPlan();
  const [refusal, setRefusal] = useState<string | null>(null);
  const remove = (own: OwnKind) => {
    const reason = ownKindRefusal(plan, own);
    setRefusal(reason);
    if (reason === null) commit(removeOwnKind(own));
  };
  if (plan.ownKinds.length === 0) return <p className="region-empty">{texts.noneYet}</p>;
  return (
    <>
      <ul className="plain-list own-kinds">
        {plan.ownKinds.map((own) => (
          <li key={own.id}>
            <p>
              <b>{own.name}</b>{" "}
              <span className="soft">
                {ownDistances(own, (metres) => formatDistance(metres, plan.units))}
                {cropBook().kind(own.id) && texts.placePublished}
              </span>
            </p>
            <button
              type="button"
              className="act"
              aria-label={texts.edit(own.name)}
              onClick={() => onEdit(own)}
            >
              {texts.edit2}
            </button>
            <button
              type="button"
              className="act"
              aria-label={texts.deleteWord(own.name)}
              onClick={() => remove(own)}
            >
              {texts.deleteWord2}
            </button>
          </li>
        ))}
      </ul>
      {refusal !== null && (
        <p className="field-reason" role="alert">
          {refusal}
        </p>
      )}
    </>
  );
}
