import { changePlan } from "../../core/edits/object-edits.ts";
import { USUAL_PATTERN, patternParts, patternProblem } from "../../core/lots/code-pattern.ts";
import { TextField } from "../form/TextField.tsx";
import { commit, useKept } from "../state/plan-actions.ts";

/** How codes of new lots are made; it is the plan's. */
export function CodePatternField() {
  const { plan } = useKept();
  return (
    <details>
      <summary>How codes are made</summary>
      <TextField
        label="Pattern"
        value={plan.lotCodePattern ?? USUAL_PATTERN}
        isWide
        hint={`Parts in braces: ${patternParts.map((part) => `{${part}}`).join(" ")}. Names are shortened to their first letters, {yy} is the year in two figures, {number} runs on.`}
        onApply={(text) => {
          const problem = patternProblem(text);
          if (problem !== null) return problem;
          commit(changePlan({ lotCodePattern: text.trim() }, "How codes of lots are made"));
          return null;
        }}
      />
    </details>
  );
}
