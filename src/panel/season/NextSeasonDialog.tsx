import { useEffect, useMemo, useState } from "react";
import { nextSeason } from "../../core/seasons/next-season.ts";
import { type KeptSeason, nextSeasonFaults } from "../../core/seasons/next-season-faults.ts";
import {
  type NextSeasonChoices,
  chosenFates,
  offeredChoices,
} from "../../core/seasons/season-choices.ts";
import type { Plan } from "../../core/model/plan.ts";
import { beginSeason, keptSeasons } from "../../store/files/next-season-plan.ts";
import { newPlanId } from "../../store/keeping/plan-copy.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { useKept, windowNow } from "../state/plan-actions.ts";
import { today } from "../state/today.ts";
import { NextSeasonFaults } from "./NextSeasonFaults.tsx";
import { NextSeasonNeighbours } from "./NextSeasonNeighbours.tsx";
import { NextSeasonPlots } from "./NextSeasonPlots.tsx";
import { NextSeasonSeed } from "./NextSeasonSeed.tsx";
import { NextSeasonTitle } from "./NextSeasonTitle.tsx";
import { ThisSeasonFile } from "./ThisSeasonFile.tsx";
import { stillRunning, takenAlong } from "../../core/seasons/next-season-words.ts";
import * as texts from "./words.ts";
import "./next-season.css";

/** What goes into the plan of the season after: shown, and to be changed, before it is made. */
export function NextSeasonDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan, layout } = useKept();
  const [choices, setChoices] = useState(() =>
    offeredChoices(plan, { id: newPlanId(), on: today(), open: layout.id }),
  );
  const kept = useKeptSeasons();
  const [fault, setFault] = useState<string | null>(null);
  const plots = useMemo(() => chosenFates(plan, choices), [plan, choices]);
  const next = useMemo(() => nextSeason(plan, choices), [plan, choices]);
  const faults = useMemo(() => nextSeasonFaults(plan, choices, kept ?? []), [plan, choices, kept]);
  const set = (change: Partial<NextSeasonChoices>) => {
    setChoices((before) => ({ ...before, ...change }));
    return null;
  };
  const make = async () => {
    if (faults.length > 0 || kept === null) return;
    const begun = await beginSeason(next);
    if (begun.how === "faulty") setFault(begun.fault);
    if (begun.how !== "opened") return;
    onClose();
    windowNow().announce(texts.nextIsOpen(next.title, plan.title));
  };
  const running = stillRunning(plan, choices.on);
  return (
    <Dialog title={texts.theSeasonAfter(plan.season.name)} onClose={onClose} isWide>
      <form className="fields next-season" noValidate onSubmit={onFormSubmit(() => void make())}>
        {running !== "" && <p className="soft">{running}</p>}
        <NextSeasonTitle choices={choices} onSet={set} />
        <ComesAlong plan={plan} next={next} choices={choices} onSet={set} />
        <NextSeasonPlots plan={plan} plots={plots} choices={choices} onSet={set} />
        <NextSeasonNeighbours plan={plan} choices={choices} onSet={set} />
        <NextSeasonSeed plan={plan} next={next} plots={plots} choices={choices} onSet={set} />
        <ThisSeasonFile plan={plan} />
        <NextSeasonFaults plan={plan} faults={faults} fault={fault} onOpened={onClose} />
        <p className="dialog-actions">
          <button type="submit" className="primary" disabled={faults.length > 0 || kept === null}>
            {texts.makePlanSeason(choices.season.name)}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

interface ComesAlongProps {
  readonly plan: Plan;
  readonly next: Plan;
  readonly choices: NextSeasonChoices;
  readonly onSet: (change: Partial<NextSeasonChoices>) => null;
}

/** What is taken as it is, and of which layout. */
function ComesAlong({ plan, next, choices, onSet }: ComesAlongProps) {
  return (
    <section aria-label={texts.comesAlong}>
      <h3>{texts.comesAlong}</h3>
      {plan.layouts.length > 1 && (
        <ChoiceField
          label={texts.layoutGrown}
          value={choices.layout}
          choices={plan.layouts.map(({ id, name }) => ({ value: id, label: name }))}
          onPick={(layout) => onSet({ layout, fates: new Map(), wentToSeed: new Map() })}
          hint={texts.bedsPlotsTakenOthers}
        />
      )}
      <ul className="plain-list">
        {takenAlong(plan, next).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

/** The seasons of the plans kept in this browser; null while they are being looked for. */
function useKeptSeasons(): readonly KeptSeason[] | null {
  const [kept, setKept] = useState<readonly KeptSeason[] | null>(null);
  useEffect(() => {
    let isGone = false;
    const look = async () => {
      // Without storage nothing is kept.
      const found = await keptSeasons().catch(() => []);
      if (!isGone) setKept(found);
    };
    void look();
    return () => {
      isGone = true;
    };
  }, []);
  return kept;
}
