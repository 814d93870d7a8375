import { useId, useState } from "react";
import { cropsOfPlan, takeOverCrops } from "../../core/edits/earlier-crops.ts";
import type { Plan } from "../../core/model/plan.ts";
import type { Read } from "../../core/model/problem.ts";
import { grownOf } from "../../core/seasons/crops-ahead.ts";
import { readPlanFile } from "../../store/files/plan-file.ts";
import { FileField, FileProblems } from "../form/FileField.tsx";
import { broughtWords, cropCount, seasonYear } from "./earlier-crop-words.ts";
import { commit, windowNow } from "../state/plan-actions.ts";
import { today } from "../state/today.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";

interface Picked {
  readonly name: string;
  readonly read: Read<Plan>;
}

/** Last season's plan file as earlier crops of this one. Nothing changes before it has been seen. */
export function EarlierCropsTakeOver() {
  const id = useId();
  const [picked, setPicked] = useState<Picked | null>(null);
  const take = async (file: File) => {
    const read = await readPlanFile(file);
    setPicked({
      name: file.name,
      read: read.ok ? { ok: true, value: read.value.plan } : read,
    });
  };
  return (
    <section className="csv-part">
      <h3>{texts.takeOverPlanFile}</h3>
      <p id={`${id}-hint`}>{texts.plotsEarlierSeasonBecome}</p>
      <p>
        <FileField
          label={texts.planFile}
          accept=".json,application/json"
          describedBy={`${id}-hint`}
          onPick={(file) => void take(file)}
        />
      </p>
      {picked && <TakeOverOutcome picked={picked} onDone={() => setPicked(null)} />}
    </section>
  );
}

interface TakeOverOutcomeProps {
  readonly picked: Picked;
  readonly onDone: () => void;
}

function TakeOverOutcome({ picked: { name, read }, onDone }: TakeOverOutcomeProps) {
  const plan = useShownPlan();
  if (!read.ok) return <FileProblems problems={read.problems} />;
  const brought = cropsOfPlan(read.value, plan, grownOf(read.value, today()));
  if (brought.year > seasonYear(plan)) {
    return (
      <p className="field-reason" role="alert">
        {texts.seasonLaterThanPlans(name, brought.year)}
      </p>
    );
  }
  const take = () => {
    const words = cropCount(brought.crops.length);
    commit(takeOverCrops(brought, texts.addFrom(words, name)));
    windowNow().announce(texts.addedFrom(words, name));
    onDone();
  };
  return (
    <>
      <div role="status">
        {broughtWords(brought, name).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <p className="dialog-actions">
        <button
          type="button"
          className="primary"
          disabled={brought.crops.length + brought.marks.length === 0}
          onClick={take}
        >
          {brought.crops.length + brought.marks.length === 0
            ? texts.nothingToAdd
            : texts.add(cropCount(brought.crops.length))}
        </button>
        <button type="button" onClick={onDone}>
          {texts.cancel}
        </button>
      </p>
    </>
  );
}
