import { useMemo } from "react";
import { checkAsGrown } from "../../core/record/as-grown.ts";
import { plotFacts } from "../../core/record/plot-facts.ts";
import { useKept } from "../state/plan-actions.ts";
import { today } from "../state/today.ts";
import { FactLines } from "./StopCard.tsx";
import { cardWords as words } from "./walk-words.ts";
import "./place.css";

/** Before the fields of a plot on a small screen: what it is, its plants and dates, what is too near. */
export function PlotSummary({ id }: { readonly id: string }) {
  const kept = useKept();
  const { plan, layout } = kept;
  const on = today();
  const facts = useMemo(() => {
    const grown = plan.entries.length === 0 ? kept : checkAsGrown(plan, layout.id, on);
    return plotFacts(grown, id, on);
  }, [kept, plan, layout, on, id]);
  if (!facts) return null;
  const names = [facts.variety, facts.kind?.name].filter(
    (name) => name !== null && name !== undefined,
  );
  return (
    <div className="plot-summary" role="group" aria-label={words.heading}>
      {names.length > 0 && <p className="plot-summary-name">{names.join(", ")}</p>}
      <FactLines facts={facts} />
    </div>
  );
}
