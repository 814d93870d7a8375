import { useEffect, useMemo, useState } from "react";
import type { Plan, Variety } from "../../core/model/plan.ts";
import {
  type SeenBeside,
  learned,
  seasonsTogether,
  seenBeside,
  seenInPlan,
  seenThisSeason,
  takeSeenDays,
} from "../../core/record/learning.ts";
import { listPlans, planStored } from "../../store/keeping/stored-plans.ts";
import { Dialog } from "../form/Dialog.tsx";
import { commit, useKept } from "../state/plan-actions.ts";
import { besideCells, effectLine, learnWords as words, seasonLine } from "./learn-words.ts";
import "./grown.css";

/** Predicted against seen, variety by variety, and one press that takes the days seen. */
export function LearnDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan, layout } = useKept();
  const rows = useMemo(() => seenBeside(plan, layout.id), [plan, layout.id]);
  const others = useOtherPlans(plan.id);
  const seen = plan.varieties.filter(
    ({ id, seen: held }) =>
      rows.some(({ planting }) => planting.variety === id) || (held ?? []).length > 0,
  );
  return (
    <Dialog title={words.title} onClose={onClose} isWide>
      <p>{words.lead}</p>
      <p className="field-hint">{words.heat}</p>
      {others === null && <p role="status">{words.looking}</p>}
      {seen.length === 0 && <p className="region-empty">{words.none}</p>}
      {seen.map((variety) => (
        <LearnVariety
          key={variety.id}
          variety={variety}
          rows={rows.filter(({ planting }) => planting.variety === variety.id)}
          others={others ?? []}
        />
      ))}
    </Dialog>
  );
}

/** The other plans kept in this browser; null while they are read. One that cannot be read is left out. */
function useOtherPlans(planId: string): readonly Plan[] | null {
  const [plans, setPlans] = useState<readonly Plan[] | null>(null);
  useEffect(() => {
    let isWanted = true;
    const look = async () => {
      const heads = (await listPlans()).filter((head) => head.planId !== planId);
      const found = await Promise.all(heads.map((head) => planStored(head).catch(() => null)));
      if (isWanted) setPlans(found.filter((plan) => plan !== null));
    };
    look().catch(() => {
      if (isWanted) setPlans([]);
    });
    return () => {
      isWanted = false;
    };
  }, [planId]);
  return plans;
}

interface LearnVarietyProps {
  readonly variety: Variety;
  readonly rows: readonly SeenBeside[];
  readonly others: readonly Plan[];
}

function LearnVariety({ variety, rows, others }: LearnVarietyProps) {
  const { plan, layout, book } = useKept();
  const made = useMemo(() => {
    const now = seenThisSeason(plan, layout.id, variety.id);
    const elsewhere = others.flatMap((other) => seenInPlan(other, variety));
    return learned(variety, seasonsTogether(elsewhere, variety.seen ?? [], now ? [now] : []), book);
  }, [plan, layout.id, variety, others, book]);
  const isTaken = JSON.stringify(made.variety) === JSON.stringify(variety);
  return (
    <section className="learn-variety" aria-label={variety.name}>
      <h3>
        <bdi>{variety.name}</bdi>
      </h3>
      {rows.length > 0 && <BesideTable rows={rows} />}
      {made.seasons.length === 0 ? (
        <p>{words.nothing}</p>
      ) : (
        <>
          <p>{words.seasons}</p>
          <ul>
            {made.seasons.map((season) => (
              <li key={season.season}>{seasonLine(season)}</li>
            ))}
          </ul>
          <p className="field-hint">{isTaken ? words.done : effectLine(made)}</p>
          <p className="offers">
            <button type="button" disabled={isTaken} onClick={() => commit(takeSeenDays(made))}>
              {made.isOwnRange ? words.take : words.keep}
              <span className="visually-hidden">: {variety.name}</span>
            </button>
          </p>
        </>
      )}
    </section>
  );
}

function BesideTable({ rows }: { readonly rows: readonly SeenBeside[] }) {
  return (
    <table className="isolation-sources">
      <thead>
        <tr>
          <th scope="col">{words.plot}</th>
          <th scope="col">{words.forecast}</th>
          <th scope="col">{words.seen}</th>
          <th scope="col">{words.off}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => {
          const [forecast, seen, off] = besideCells(row);
          return (
            <tr key={row.planting.id}>
              <th scope="row">{row.planting.code}</th>
              <td>{forecast}</td>
              <td>{seen}</td>
              <td>{off}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
