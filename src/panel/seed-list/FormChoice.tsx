import { useId } from "react";
import { formatDistance } from "../../core/model/length.ts";
import type { Variety } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { varietyRequirement } from "../state/requirement-words.ts";
import * as texts from "./dialog-words.ts";

interface FormChoiceProps {
  readonly variety: Variety;
  readonly onPick: (form: string) => void;
}

/**
 * The flower form of a variety, where its kind has several: it may change the isolation distance
 * many times over, so each form shows the distance it brings, and what is assumed is said.
 */
export function FormChoice({ variety, onPick }: FormChoiceProps) {
  const plan = useShownPlan();
  const book = usePlanStore((state) => state.book);
  const name = useId();
  const forms = book.kind(variety.kind)?.forms ?? [];
  const [usual] = forms;
  if (!usual) return null;
  const { isolationM: _own, figure: _picked, ...asPublished } = variety;
  const distance = (form: string) => {
    const needs = varietyRequirement(plan, { ...asPublished, form }, book);
    return needs === null ? texts.noDistanceKnown : formatDistance(needs.metres, plan.units);
  };
  return (
    <fieldset className="kind-search">
      <legend>{texts.flowerForm}</legend>
      <ul className="plain-list kind-list">
        {forms.map((form) => (
          <li key={form.id}>
            <label>
              <input
                type="radio"
                name={name}
                checked={form.id === (variety.form ?? usual.id)}
                onChange={() => onPick(form.id)}
              />
              <span>
                {form.name} <span className="soft">{texts.keptApartBy(distance(form.id))}</span>
              </span>
            </label>
          </li>
        ))}
      </ul>
      {variety.form === undefined && (
        <p className="field-hint">{texts.takenUntilYouSay(usual.name)}</p>
      )}
    </fieldset>
  );
}
