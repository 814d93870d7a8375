import { useState } from "react";
import { arrangedLayout } from "../../core/arrange/arranged-layout.ts";
import { shortVarieties } from "../../core/arrange/missing-plantings.ts";
import type { ArrangeProgress } from "../../store/threads/arrange-worker.ts";
import { ArrangeAnswered, type KeptMoves } from "./ArrangeAnswered.tsx";
import { conflictWords, lockedWords } from "./arrange-words.ts";
import { Dialog } from "../form/Dialog.tsx";
import { CountField } from "../form/NumberField.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { commit, planNow, windowNow } from "../state/plan-actions.ts";
import { useArranging } from "./use-arranging.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";
import { freeLayoutName } from "../../core/edits/layout-edits.ts";
import * as texts from "./words.ts";

/** Longest time that can be asked for, seconds. */
const MOST_SECONDS = 600;
const USUAL_SECONDS = 15;

interface Settings {
  readonly seconds: number;
  readonly seed: number;
  /** Also places what the seed list still wants. */
  readonly doesPlace: boolean;
}

/** Looks for a layout with fewer conflicts; it comes as a new one and leaves this one as it is. */
export function ArrangeDialog({ onClose }: { readonly onClose: () => void }) {
  const layout = useShownLayout();
  const { stage, start, stop, reset } = useArranging();
  const [settings, setSettings] = useState<Settings>({
    seconds: USUAL_SECONDS,
    seed: 1,
    doesPlace: false,
  });
  const keep = ({ moved, added, after }: KeptMoves) => {
    const { id, name } = freeLayoutName(planNow().plan);
    commit(arrangedLayout(layout.id, id, name, moved, added));
    planNow().showLayout(id);
    viewNow().showSheet();
    windowNow().announce(texts.layoutIsShown(name, conflictWords(after.conflicts)));
    onClose();
  };
  const another = () => {
    setSettings({ ...settings, seed: settings.seed + 1 });
    reset();
  };
  return (
    <Dialog title={texts.arrangeForMe(layout.name)} onClose={onClose}>
      {(stage.kind === "ready" || stage.kind === "failed") && (
        <SettingsForm
          settings={settings}
          onSet={setSettings}
          onStart={() => start({ plan: planNow().plan, layoutId: layout.id, ...settings })}
        />
      )}
      {stage.kind === "failed" && <p role="alert">{stage.reason}</p>}
      {stage.kind === "running" && (
        <Running progress={stage.progress} onStop={stop} onCancel={reset} />
      )}
      {stage.kind === "answered" && (
        <ArrangeAnswered
          answer={stage.answer}
          request={{ plan: planNow().plan, layoutId: layout.id, seconds: settings.seconds }}
          onKeep={keep}
          onAnother={another}
        />
      )}
    </Dialog>
  );
}

interface SettingsFormProps {
  readonly settings: Settings;
  readonly onSet: (settings: Settings) => void;
  readonly onStart: () => void;
}

function SettingsForm({ settings, onSet, onStart }: SettingsFormProps) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const { plantings } = layout;
  const short = shortVarieties(plan, layout);
  const locked = plantings.filter((planting) => planting.locked === true);
  const setSeconds = (count = USUAL_SECONDS) =>
    onSet({ ...settings, seconds: Math.min(MOST_SECONDS, Math.max(1, count)) });
  return (
    <form className="fields" noValidate onSubmit={onFormSubmit(onStart)}>
      <p>{texts.arrangeHint}</p>
      <p>{lockedWords(locked.map(({ code }) => code))}</p>
      {short.length > 0 && (
        <label className="check-field">
          <input
            type="checkbox"
            checked={settings.doesPlace}
            onChange={(event) => onSet({ ...settings, doesPlace: event.target.checked })}
          />
          {texts.alsoPlace(
            short.map(({ variety, missing }) => `${variety.name} (${missing})`).join(", "),
          )}
        </label>
      )}
      <CountField label={texts.timeLimitSeconds} value={settings.seconds} onApply={setSeconds} />
      <CountField
        label={texts.startNumber}
        value={settings.seed}
        hint={texts.startNumberHint}
        onApply={(seed = 1) => onSet({ ...settings, seed })}
      />
      <p className="dialog-actions">
        <button type="submit" className="primary">
          {texts.arrange}
        </button>
      </p>
    </form>
  );
}

interface RunningProps {
  readonly progress: ArrangeProgress | null;
  readonly onStop: () => void;
  readonly onCancel: () => void;
}

function Running({ progress, onStop, onCancel }: RunningProps) {
  return (
    <div className="fields">
      <p role="status">
        {progress ? texts.bestSoFar(conflictWords(progress.conflicts)) : texts.looking}
      </p>
      <progress aria-label={texts.timeAndStepsUsed} max={1} value={progress?.share ?? 0} />
      <p className="dialog-actions">
        <button type="button" className="primary" onClick={onStop}>
          {texts.stopWithBest}
        </button>
        <button type="button" onClick={onCancel}>
          {texts.cancel}
        </button>
      </p>
    </div>
  );
}
