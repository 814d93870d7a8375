import { useMemo } from "react";
import { lotBook } from "../../core/lots/lot-book.ts";
import { sowingRows } from "../../core/lots/sowing.ts";
import type { Planting } from "../../core/model/plan.ts";
import { useKept } from "../state/plan-actions.ts";
import { viewNow } from "../state/view-state.ts";
import { sownFromDialog } from "./commands.ts";
import { lotsNow } from "../state/lots-state.ts";
import { sowingCautions, sowingWords } from "./sowing-words.ts";
import * as texts from "./words.ts";

/** What to sow for one planting, and from which lots; for its particulars. */
export function SowingLine({ planting }: { readonly planting: Planting }) {
  const { plan, layout, book } = useKept();
  const rows = useMemo(() => sowingRows(plan, layout, book), [plan, layout, book]);
  const row = rows.find(({ planting: { id } }) => id === planting.id);
  if (lotBook(plan.lots).ofVariety(planting.variety).length === 0 && !planting.lots) return null;
  const lots = row?.lots ?? [];
  const open = (id: string) => {
    lotsNow().openLot(id);
    viewNow().showView("lots");
  };
  return (
    <div className="field">
      <span className="field-name">{texts.toSow}</span>
      <div className="field-control">
        <p>{row ? sowingWords(row) : texts.nothingRootsPlantsSecond}</p>
        {row &&
          sowingCautions(row).map((caution) => (
            <p key={caution} className="caution-text">
              ! {caution}
            </p>
          ))}
        <button
          type="button"
          className="act"
          onClick={() => sownFromDialog.open({ plantingId: planting.id })}
        >
          {texts.chooseLots}
        </button>
        {lots.slice(0, 4).map(({ id, code }) => (
          <button key={id} type="button" className="link" onClick={() => open(id)}>
            {texts.open(code)}
          </button>
        ))}
      </div>
    </div>
  );
}
