import { useState } from "react";
import { removeGroundMark } from "../../core/edits/ground.ts";
import { markName } from "../../core/ground/ground-diseases.ts";
import type { GroundMark } from "../../core/model/plan.ts";
import { commit } from "../state/plan-actions.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { MarkForm } from "./MarkForm.tsx";
import { placeWords } from "./earlier-crop-words.ts";
import { markWords } from "./ground-history-words.ts";
import { MARKS_INTRO } from "./mark-words.ts";
import * as texts from "./words.ts";

type Editing = { readonly mark: GroundMark | null };

/** Diseases marked on the ground, each with its place; added, changed, taken away. */
export function MarkList() {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const [editing, setEditing] = useState<Editing | null>(null);
  return (
    <section className="csv-part">
      <h3>{texts.marksOnTheGround}</h3>
      <p>{MARKS_INTRO}</p>
      {plan.groundMarks.length > 0 && (
        <ul className="plain-list">
          {plan.groundMarks.map((mark) => {
            const place = placeWords(mark, layout, plan);
            return (
              <li key={mark.id}>
                ! {markWords(mark)}; {place}{" "}
                <button
                  type="button"
                  className="act"
                  aria-label={texts.changeTheMarkOn(markName(mark), place)}
                  onClick={() => setEditing({ mark })}
                >
                  {texts.change}
                </button>{" "}
                <button
                  type="button"
                  className="act"
                  aria-label={texts.deleteTheMarkOn(markName(mark), place)}
                  onClick={() =>
                    commit(removeGroundMark(mark.id, texts.deleteMark(markName(mark))))
                  }
                >
                  {texts.deleteWord}
                </button>
              </li>
            );
          })}
        </ul>
      )}
      <p className="dialog-actions">
        <button type="button" onClick={() => setEditing({ mark: null })}>
          {texts.markADisease}
        </button>
      </p>
      {editing && <MarkForm mark={editing.mark} onClose={() => setEditing(null)} />}
    </section>
  );
}
