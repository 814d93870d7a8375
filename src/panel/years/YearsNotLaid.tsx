import { setYears } from "../../core/renewal/years-edits.ts";
import type { PlanYears } from "../../core/renewal/years-of-plan.ts";
import { notWords } from "../../core/renewal/years-words.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { commit } from "../state/plan-actions.ts";
import { yearsPageWords as words } from "./years-page-words.ts";

/** Varieties that are not laid out, each with why, and how to leave one out or take it in again. */
export function YearsNotLaid({ years }: { readonly years: PlanYears }) {
  const leave = (id: string, isLeft: boolean, title: string) => {
    const others = [...years.settings.leftOut].filter((each) => each !== id);
    const leftOut = isLeft ? [...others, id] : others;
    commit(setYears({ leftOut: leftOut.length === 0 ? undefined : leftOut }, title));
  };
  const choices = [
    { value: "", label: words.pickOne },
    ...years.rows.map(({ variety }) => ({ value: variety.id, label: variety.name })),
  ];
  const nameOf = (id: string) =>
    years.rows.find(({ variety }) => variety.id === id)?.variety.name ?? "";
  return (
    <section aria-label={words.notLaid} className="years-not">
      <h3>
        {words.notLaid} <span className="soft">{years.not.length}</span>
      </h3>
      <ul className="plain-list">
        {years.not.map(({ variety, why }) => (
          <li key={variety.id}>
            <bdi>{variety.name}</bdi>: {notWords(why)}{" "}
            {why === "left out" && (
              <button
                type="button"
                className="act"
                aria-label={words.undo.layOutAgain(variety.name)}
                onClick={() => leave(variety.id, false, words.undo.layOutAgain(variety.name))}
              >
                {words.layOutAgain}
              </button>
            )}
          </li>
        ))}
      </ul>
      <ChoiceField
        label={words.leaveOut}
        value=""
        choices={choices}
        onPick={(id) => {
          if (id !== "") leave(id, true, words.undo.leaveOut(nameOf(id)));
        }}
      />
    </section>
  );
}
