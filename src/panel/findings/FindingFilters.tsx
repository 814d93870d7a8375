import type { Severity } from "../../core/checks/finding.ts";
import { severitySign } from "../../core/checks/wording.ts";
import { useCounted } from "../state/followed-plan.ts";
import { useShownResult } from "../state/use-shown-plan.ts";
import { countWord } from "../../core/words/deed-words.ts";
import { countOf, titlesFound } from "./finding-rows.ts";
import { useFindingsState } from "./findings-state.ts";
import * as texts from "./words.ts";

const SEVERITIES: readonly Severity[] = ["conflict", "caution", "unknown"];

/** Fewer findings than these are read, not filtered. */
const FILTERED_FROM = 8;

/** How many of each severity; a press leaves them out of the list. */
export function FindingCounts() {
  const isNone = useCounted(({ counts }) => SEVERITIES.every((severity) => counts[severity] === 0));
  return (
    <div className="region-note finding-counts" role="group" aria-label={texts.findingsCounted}>
      {isNone ? texts.none : SEVERITIES.map((each) => <CountButton key={each} severity={each} />)}
    </div>
  );
}

function CountButton({ severity }: { readonly severity: Severity }) {
  const count = useCounted(({ counts }) => counts[severity]);
  const isShown = useFindingsState(({ without }) => !without.has(severity));
  if (count === 0 && isShown) return null;
  return (
    <button
      type="button"
      className={`finding-count ${severity}`}
      aria-pressed={isShown}
      title={isShown ? texts.listPressLeaveThem : texts.leftOutList}
      onClick={() => useFindingsState.getState().toggleSeverity(severity)}
    >
      <span className="sign" aria-hidden="true">
        {severitySign[severity]}
      </span>{" "}
      {countWord(count, severity)}
    </button>
  );
}

/** Which check, and only what is about the selection: where there are many findings. */
export function FindingFilters() {
  const result = useShownResult();
  const check = useFindingsState((state) => state.check);
  const isSelectionOnly = useFindingsState((state) => state.isSelectionOnly);
  const showCheck = useFindingsState((state) => state.showCheck);
  const setSelectionOnly = useFindingsState((state) => state.setSelectionOnly);
  if (countOf(result) < FILTERED_FROM && check === null && !isSelectionOnly) return null;
  const titles = titlesFound(result);
  return (
    <div className="finding-filters">
      <select
        aria-label={texts.kindOfFinding}
        value={check ?? ""}
        onChange={({ target }) => showCheck(target.value === "" ? null : target.value)}
      >
        <option value="">{texts.allKindsOfFindings}</option>
        {[...titles].map(([name, title]) => (
          <option key={name} value={name}>
            {title}
          </option>
        ))}
        {check !== null && !titles.has(check) && <option value={check}>{texts.noneLeft}</option>}
      </select>
      <label className="check-field">
        <input
          type="checkbox"
          checked={isSelectionOnly}
          onChange={({ target }) => setSelectionOnly(target.checked)}
        />
        {texts.selectedOnly}
      </label>
    </div>
  );
}
