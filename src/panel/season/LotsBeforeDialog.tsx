import { useEffect, useMemo, useState } from "react";
import type { Plan } from "../../core/model/plan.ts";
import { problemText } from "../../core/model/problem.ts";
import { type LotsBrought, lotsFromBefore, takeLots } from "../../core/seasons/lots-from-before.ts";
import { keptPlan } from "../../store/files/next-season-plan.ts";
import { readPlanFile } from "../../store/files/plan-file.ts";
import { Dialog } from "../form/Dialog.tsx";
import { FileField } from "../form/FileField.tsx";
import { commit, useKept } from "../state/plan-actions.ts";
import { counted } from "../state/selected-objects.ts";
import { lotsBeforeWords } from "./lots-before-words.ts";
import * as texts from "./words.ts";

type CameFrom = NonNullable<Plan["cameFrom"]>;
/** `looking`: it is being looked for; `away`: it is not kept in this browser. */
type Before = "looking" | "away" | Plan;

/** Seed cleaned and tested after the step to this season: lots that only the plan before has. */
export function LotsBeforeDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan } = useKept();
  const { cameFrom } = plan;
  return (
    <Dialog title={texts.lotsSeasonBefore} onClose={onClose}>
      {cameFrom ? (
        <FromBefore plan={plan} cameFrom={cameFrom} onClose={onClose} />
      ) : (
        <p>{texts.planNotStartedSeason}</p>
      )}
    </Dialog>
  );
}

interface FromBeforeProps {
  readonly plan: Plan;
  readonly cameFrom: CameFrom;
  readonly onClose: () => void;
}

function FromBefore({ plan, cameFrom, onClose }: FromBeforeProps) {
  const [before, setBefore] = useState<Before>("looking");
  useEffect(() => {
    let isGone = false;
    const look = async () => {
      const found = await keptPlan(cameFrom.plan).catch(() => null);
      if (!isGone) setBefore(found ?? "away");
    };
    void look();
    return () => {
      isGone = true;
    };
  }, [cameFrom.plan]);
  if (before === "looking") return <p role="status">{texts.lookingAmongKeptPlans}</p>;
  if (before === "away") return <ChooseBefore cameFrom={cameFrom} onFound={setBefore} />;
  return <TakeThem plan={plan} before={before} onClose={onClose} />;
}

interface ChooseBeforeProps {
  readonly cameFrom: CameFrom;
  readonly onFound: (before: Plan) => void;
}

/** The plan before is in no storage here: its file is asked for, and no other is taken. */
function ChooseBefore({ cameFrom, onFound }: ChooseBeforeProps) {
  const [problems, setProblems] = useState<readonly string[]>([]);
  const name = cameFrom.title ?? cameFrom.plan;
  const take = async (file: File) => {
    const read = await readPlanFile(file);
    if (!read.ok) setProblems(read.problems.map(problemText));
    else if (read.value.plan.id === cameFrom.plan) onFound(read.value.plan);
    else setProblems([texts.otherPlan(file.name, read.value.plan.title, name)]);
  };
  return (
    <>
      <p>{texts.planStartedNotKept(name)}</p>
      <p>
        <FileField
          label={texts.planFile}
          accept=".json,application/json"
          onPick={(file) => void take(file)}
        />
      </p>
      {problems.map((problem) => (
        <p key={problem} className="field-reason" role="alert">
          {problem}
        </p>
      ))}
    </>
  );
}

interface TakeThemProps {
  readonly plan: Plan;
  readonly before: Plan;
  readonly onClose: () => void;
}

function TakeThem({ plan, before, onClose }: TakeThemProps) {
  const brought: LotsBrought = useMemo(() => lotsFromBefore(plan, before), [plan, before]);
  const words = lotsBeforeWords(brought, plan, before);
  const count = counted(brought.lots.length, "lot", "lots");
  const take = () => {
    commit(takeLots(brought, texts.addLotsOf(count, before.season.name)));
    onClose();
  };
  return (
    <>
      {words.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {brought.lots.length > 0 && (
        <p className="dialog-actions">
          <button type="button" className="primary" onClick={take}>
            {texts.add(count)}
          </button>
        </p>
      )}
    </>
  );
}
