import { changePlan } from "../../core/edits/object-edits.ts";
import { USUAL_PATTERN, patternParts, patternProblem } from "../../core/lots/code-pattern.ts";
import { TextField } from "../form/TextField.tsx";
import { commit, useKept } from "../state/plan-actions.ts";
import * as texts from "./words.ts";

/** How codes of new lots are made; it is the plan's. */
export function CodePatternField() {
  const { plan } = useKept();
  return (
    <details>
      <summary>{texts.howCodesAreMade}</summary>
      <TextField
        label={texts.pattern}
        value={plan.lotCodePattern ?? USUAL_PATTERN}
        isWide
        hint={texts.partsBracesNamesShortened(patternParts.map((part) => `{${part}}`).join(" "))}
        onApply={(text) => {
          const problem = patternProblem(text);
          if (problem !== null) return problem;
          commit(changePlan({ lotCodePattern: text.trim() }, texts.changeCodePattern));
          return null;
        }}
      />
    </details>
  );
}
