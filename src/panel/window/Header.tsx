import {
  type KeyboardEvent,
  type MouseEvent,
  type RefObject,
  useEffect,
  useRef,
  useState,
} from "react";
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

/** Whether the head is unfolded, and what folds it again: a pick, Escape, a press beside it. */
function useFolding(
  headRef: RefObject<HTMLElement | null>,
  foldRef: RefObject<HTMLButtonElement | null>,
) {
  const [isUnfolded, setUnfolded] = useState(false);
  // What was picked, or lies beside it, wants the window to itself: the unfolded head goes back.
  useEffect(() => {
    if (!isUnfolded) return undefined;
    const foldBeside = ({ target }: Event) => {
      if (target instanceof Node && !headRef.current?.contains(target)) setUnfolded(false);
    };
    document.addEventListener("pointerdown", foldBeside, true);
    return () => document.removeEventListener("pointerdown", foldBeside, true);
  }, [isUnfolded, headRef]);
  const fold = () => {
    setUnfolded(false);
    foldRef.current?.focus();
  };
  return {
    isUnfolded,
    setUnfolded,
    // After the item's own press: folding takes the focus, which closes the menu, and an item that
    // is gone is not picked any more.
    foldOnPick: ({ target }: MouseEvent) => {
      if (!isUnfolded || !(target instanceof Element)) return;
      if (target.closest(".menu-item, .plan-facts, .primary")) fold();
    },
    foldOnEscape: ({ key }: KeyboardEvent) => {
      if (isUnfolded && key === "Escape") fold();
    },
  };
}

/** Title, facts, layouts, history, saving. On a narrow screen all but the title folds away. */
export function Header() {
  const headRef = useRef<HTMLElement>(null);
  const foldRef = useRef<HTMLButtonElement>(null);
  const { isUnfolded, setUnfolded, foldOnPick, foldOnEscape } = useFolding(headRef, foldRef);
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
        onKeyDown={foldOnEscape}
      >
        {texts.headMenu}
      </button>
      <div
        className="plan-head-more"
        id="plan-head-more"
        role="presentation"
        onClick={foldOnPick}
        onKeyDown={foldOnEscape}
      >
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
