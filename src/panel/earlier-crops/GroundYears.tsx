import { groundHistory, marksOn } from "../../core/ground/ground-history.ts";
import type { Bed } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { earlierCrops } from "./commands.ts";
import { NOTHING_KNOWN, grewWords, markWords, seedAndSource } from "./ground-history-words.ts";
import * as texts from "./words.ts";

/** The years of a bed: what stands and stood on it, and diseases seen there. */
export function GroundYears({ bed }: { readonly bed: Bed }) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const book = usePlanStore((state) => state.book);
  const rows = groundHistory(plan, layout, bed.outline, book);
  const marks = marksOn(plan, bed.outline);
  return (
    <>
      <h4>{texts.itsYears}</h4>
      {rows.length === 0 ? (
        <p className="soft">{NOTHING_KNOWN}</p>
      ) : (
        <div className="table-scroll" role="region" tabIndex={0} aria-label={texts.yearsOfTheBed}>
          <table>
            <thead>
              <tr>
                <th scope="col">{texts.yearField}</th>
                <th scope="col">{texts.grew}</th>
                <th scope="col">{texts.wentToSeed}</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={row.id}>
                  <td>{row.year}</td>
                  <td>
                    {row.code !== "" && <span className="code">{row.code} </span>}
                    {grewWords(row)}
                  </td>
                  <td>{seedAndSource(row)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {marks.map((mark) => (
        <p key={mark.id} className="caution-text">
          ! {markWords(mark)}
        </p>
      ))}
      <p className="field-hint">
        <CommandButton of={earlierCrops} className="link">
          {texts.earlierCrops}
        </CommandButton>
        {texts.hasThemAll}
      </p>
    </>
  );
}
