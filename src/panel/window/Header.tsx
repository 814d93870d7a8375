import { useEffect, useRef, useState } from "react";
import { changePlan } from "../../core/edits/object-edits.ts";
import { HistoryButtons } from "./HistoryButtons.tsx";
import { LayoutTabs } from "../layouts/LayoutTabs.tsx";
import { PlanMenu } from "./PlanMenu.tsx";
import { SaveStateLine } from "../keeping/SaveStateLine.tsx";
import { commit } from "../state/plan-actions.ts";
import { themeChoices, usePreferences } from "../state/preferences.ts";
import { themeWords } from "./theme-words.ts";
import { useDraft } from "../form/use-draft.ts";
import { nameProblem } from "../form/name-problem.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { undo } from "../commands/edit-commands.ts";
import { paper } from "../paper/commands.ts";
import { planSettings } from "../site/commands.ts";
import "./header.css";
import * as texts from "./words.ts";
import { levelNames } from "../../core/words/level-words.ts";

/** Title, facts, layouts, history, saving. On a narrow screen all but the title folds away. */
export function Header() {
  const [isUnfolded, setUnfolded] = useState(false);
  const foldRef = useRef<HTMLButtonElement>(null);
  const headRef = useRef<HTMLElement>(null);
  // What was picked, or lies beside it, wants the window to itself: the unfolded head goes back.
  useEffect(() => {
    const head = headRef.current;
    if (!isUnfolded || !head) return;
    const fold = () => {
      setUnfolded(false);
      foldRef.current?.focus();
    };
    const foldOnPick = ({ target }: Event) => {
      if (target instanceof Element && target.closest(".menu-item, .plan-facts, .primary")) fold();
    };
    const foldBeside = ({ target }: Event) => {
      if (target instanceof Node && !head.contains(target)) setUnfolded(false);
    };
    const foldOnEscape = ({ key }: KeyboardEvent) => {
      if (key === "Escape") fold();
    };
    head.addEventListener("click", foldOnPick);
    head.addEventListener("keydown", foldOnEscape);
    document.addEventListener("pointerdown", foldBeside, true);
    return () => {
      head.removeEventListener("click", foldOnPick);
      head.removeEventListener("keydown", foldOnEscape);
      document.removeEventListener("pointerdown", foldBeside, true);
    };
  }, [isUnfolded]);
  return (
    <header ref={headRef} className={isUnfolded ? "plan-head unfolded" : "plan-head"}>
      <PlanTitle />
      <CommandButton of={undo} className="quiet undo-near">
        {undo.name}
      </CommandButton>
      <button
        ref={foldRef}
        type="button"
        className="fold-button"
        aria-expanded={isUnfolded}
        aria-controls="plan-head-more"
        onClick={() => setUnfolded(!isUnfolded)}
      >
        {texts.headMenu}
      </button>
      <div className="plan-head-more" id="plan-head-more">
        <PlanFacts />
        <LayoutTabs />
        <HistoryButtons />
        <span className="head-gap" />
        <SaveStateLine />
        <PlanMenu />
        <ThemeSwitch />
        <CommandButton of={paper} className="primary">
          {texts.paperButton}
        </CommandButton>
      </div>
    </header>
  );
}

function PlanTitle() {
  const plan = useShownPlan();
  const draft = useDraft<HTMLInputElement>(plan.title, (text) => {
    const title = text.trim();
    const problem = nameProblem(title, {
      isNeeded: texts.titleNeeded,
      tooLong: texts.titleTooLong,
    });
    if (problem !== null) return problem;
    commit(changePlan({ title }, texts.renamePlan(title)));
    return null;
  });
  return (
    <>
      <h1 className="visually-hidden">{plan.title}</h1>
      <div className="plan-title">
        <input
          {...draft.field}
          type="text"
          aria-label={texts.planTitle}
          aria-invalid={draft.reason !== null || undefined}
          aria-describedby={draft.reason === null ? undefined : "plan-title-reason"}
          autoComplete="off"
          spellCheck={false}
          value={draft.text}
          onChange={(event) => draft.type(event.target.value)}
        />
        {draft.reason !== null && (
          <p className="field-reason" id="plan-title-reason" role="alert">
            {draft.reason}
          </p>
        )}
      </div>
    </>
  );
}

/** Season, level and units; opens the settings. */
function PlanFacts() {
  const { season, level, units } = useShownPlan();
  const unitName = units === "m" ? texts.metres : texts.feet;
  return (
    <CommandButton of={planSettings} className="plan-facts" title={texts.planSettingsTitle}>
      {texts.planFacts(season.name, levelNames[level], unitName)}
      <span className="visually-hidden">{texts.opensPlanSettings}</span>
    </CommandButton>
  );
}

function ThemeSwitch() {
  const { themeChoice, chooseTheme } = usePreferences();
  return (
    <select
      className="theme-switch"
      aria-label={texts.theme}
      value={themeChoice}
      onChange={(event) => {
        const picked = themeChoices.find((choice) => choice === event.target.value);
        if (picked) chooseTheme(picked);
      }}
    >
      {themeChoices.map((choice) => (
        <option key={choice} value={choice}>
          {themeWords[choice]}
        </option>
      ))}
    </select>
  );
}
