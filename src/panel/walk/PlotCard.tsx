import { useMemo } from "react";
import { checkAsGrown } from "../../core/record/as-grown.ts";
import { type PlotFacts, plotFacts } from "../../core/record/plot-facts.ts";
import type { Bed } from "../../core/model/plan.ts";
import { useKept, windowNow } from "../state/plan-actions.ts";
import { today } from "../state/today.ts";
import { viewNow } from "../state/view-state.ts";
import { walkTo } from "../state/walk-place.ts";
import { FactLines } from "./StopCard.tsx";
import { cardWords as words } from "./walk-words.ts";
import "./place.css";

/** What is here: the answer to a tap. It changes nothing; editing is behind a button. */
export function PlotCard({ id }: { readonly id: string }) {
  const kept = useKept();
  const { plan, layout } = kept;
  const on = today();
  const grown = useMemo(
    () => (plan.entries.length === 0 ? kept : checkAsGrown(plan, layout.id, on)),
    [kept, plan, layout, on],
  );
  const facts = useMemo(() => plotFacts(grown, id, on), [grown, id, on]);
  const bed = layout.beds.find((each) => each.id === id);
  if (!facts && !bed) return null;
  const isWalked = facts !== null && (facts.isOurs || facts.kind !== null);
  return (
    <section className="plot-card" aria-label={words.heading}>
      {facts && <CardFacts facts={facts} />}
      {bed && <CardBed bed={bed} />}
      <p className="plot-card-actions">
        <button type="button" onClick={() => windowNow().select([])}>
          {words.close}
        </button>
        {isWalked && (
          <button type="button" onClick={() => walkTo(id)}>
            {words.walk}
          </button>
        )}
        <button type="button" onClick={openParticulars}>
          {words.edit}
        </button>
      </p>
    </section>
  );
}

/** A drawer on a narrow screen; beside the sheet on a wide one, where it gets the focus. */
function openParticulars(): void {
  const { drawer, toggleDrawer } = viewNow();
  if (drawer !== "particulars") toggleDrawer("particulars");
  requestAnimationFrame(() => document.getElementById("particulars-heading")?.focus());
}

function CardFacts({ facts }: { readonly facts: PlotFacts }) {
  const { code, variety, kind, isOurs } = facts;
  const names = [variety, kind?.name].filter((name) => name !== null && name !== undefined);
  return (
    <>
      <h2>
        <span className={isOurs ? "code" : undefined}>{code}</span> {names.join(", ")}
      </h2>
      <FactLines facts={facts} />
    </>
  );
}

function CardBed({ bed }: { readonly bed: Bed }) {
  const { plan, layout } = useKept();
  const inside = layout.plantings.filter((planting) => planting.bed === bed.id);
  const nameOf = (variety: string) => plan.varieties.find(({ id }) => id === variety)?.name ?? "";
  return (
    <>
      <h2>
        {words.bed} <span className="code">{bed.code}</span>
      </h2>
      {inside.length === 0 && <p>{words.emptyBed}</p>}
      <p className="plot-card-plots">
        {inside.map(({ id, code, variety }) => (
          <button key={id} type="button" onClick={() => windowNow().select([id])}>
            <span className="code">{code}</span> {nameOf(variety)}
          </button>
        ))}
      </p>
    </>
  );
}
