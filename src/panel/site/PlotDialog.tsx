import { useState } from "react";
import { changePlan } from "../../core/edits/object-edits.ts";
import { outlineArea, outlineOf } from "../../core/geometry/outline.ts";
import { formatArea } from "../../core/model/length.ts";
import { DayField } from "../form/DayField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { TurnField } from "../form/NumberField.tsx";
import { TextField } from "../form/TextField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { onFormSubmit } from "../form/use-form.ts";
import { cornerList } from "../outlines/commands.ts";
import { runCommand } from "../commands/command.ts";
import { siteClimate } from "../season/commands.ts";
import { commit, planNow, windowNow } from "../state/plan-actions.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { type TypedPlot, plotOf, plotChange, plotProblem, positionOf } from "./plot-form.ts";
import { plotWords as words } from "./plot-words.ts";
import { drawEdge } from "./site-edge.ts";

/** The first facts of a plot, in the order they are asked: ground, place, frosts, climate. */
export function PlotDialog({ onClose }: { readonly onClose: () => void }) {
  const { site } = useShownPlan();
  const [draft, setDraft] = useState(() => plotOf(site));
  const [problem, setProblem] = useState<string | null>(null);
  const set = (change: Partial<TypedPlot>) => {
    setProblem(null);
    setDraft((before) => ({ ...before, ...change }));
    return null;
  };
  const apply = (): boolean => {
    const refusal = plotProblem(draft);
    setProblem(refusal);
    if (refusal !== null) return false;
    const { plan } = planNow();
    commit(changePlan(plotChange(plan, draft), words.edit));
    return true;
  };
  const send = onFormSubmit(() => {
    if (!apply()) return;
    onClose();
    windowNow().bringIntoView("all");
  });
  return (
    <Dialog title={words.title} onClose={onClose}>
      <form className="fields" noValidate onSubmit={send}>
        <p className="soft">{words.about}</p>
        <TextField
          label={words.name}
          isWide
          value={draft.name}
          onApply={(name) =>
            nameProblem(name, { isNeeded: words.nameNeeded }) ?? set({ name: name.trim() })
          }
        />
        <GroundFields typed={draft} onSet={set} onLeave={apply} />
        <WhereFields typed={draft} onSet={set} />
        {problem !== null && (
          <p className="field-reason" role="alert">
            {problem}
          </p>
        )}
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {words.apply}
          </button>
          <button
            type="button"
            onClick={() => {
              if (apply()) runCommand(siteClimate);
            }}
          >
            {words.thenClimate}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

interface FieldsProps {
  readonly typed: TypedPlot;
  readonly onSet: (change: Partial<TypedPlot>) => null;
}

interface GroundFieldsProps extends FieldsProps {
  /** Keeps what was typed before another way to the outline is taken; false when it cannot be kept. */
  readonly onLeave: () => boolean;
}

function GroundFields({ typed, onSet, onLeave }: GroundFieldsProps) {
  const { site, units } = useShownPlan();
  const isOther = site.outline !== undefined && typed.acrossM === undefined;
  return (
    <>
      <div className="field-pair">
        <LengthField
          label={words.across}
          value={typed.acrossM}
          isSize
          onApply={(acrossM) => onSet({ acrossM })}
          onClear={() => onSet({ acrossM: undefined })}
        />
        <LengthField
          label={words.up}
          value={typed.upM}
          isSize
          onApply={(upM) => onSet({ upM })}
          onClear={() => onSet({ upM: undefined })}
        />
      </div>
      <p className="field-hint">
        {isOther && site.outline
          ? words.drawnHint(formatArea(outlineArea(outlineOf(site.outline)), units))
          : words.sizeHint}
      </p>
      <p>
        {words.shaped}{" "}
        <button type="button" className="act" onClick={() => onLeave() && drawEdge()}>
          {words.draw}
        </button>{" "}
        <button
          type="button"
          className="act"
          onClick={() => onLeave() && cornerList.open({ target: "site" })}
        >
          {words.type}
        </button>
      </p>
    </>
  );
}

function WhereFields({ typed, onSet }: FieldsProps) {
  const { position } = typed;
  const setPosition = (text: string) => {
    const read = positionOf(text);
    return read.ok ? onSet({ position: read.position }) : read.reason;
  };
  return (
    <>
      <TextField
        label={words.position}
        value={position ? `${position.latitude}, ${position.longitude}` : ""}
        placeholder={words.notSet}
        hint={words.positionHint}
        onApply={setPosition}
      />
      <TurnField
        label={words.bearing}
        hint={words.bearingHint}
        value={typed.upBearingDeg}
        onApply={(upBearingDeg) => void onSet({ upBearingDeg })}
      />
      <div className="field-pair">
        <DayField
          label={words.lastFrost}
          value={typed.lastSpringFrost}
          onApply={(lastSpringFrost) => onSet({ lastSpringFrost })}
        />
        <DayField
          label={words.firstFrost}
          value={typed.firstAutumnFrost}
          placeholder={words.autumnPlaceholder}
          onApply={(firstAutumnFrost) => onSet({ firstAutumnFrost })}
        />
      </div>
    </>
  );
}
