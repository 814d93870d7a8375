import { memo } from "react";
import type { Severity } from "../../core/checks/finding.ts";
import { windowNow } from "../state/plan-actions.ts";
import { WaysOutButton } from "./FindingLine.tsx";
import { useFindingsState } from "./findings-state.ts";
import * as texts from "./words.ts";

interface FindingGroupLineProps {
  readonly id: string;
  readonly severity: Severity;
  readonly sign: string;
  readonly word: string;
  readonly title: string;
  readonly count: number;
  readonly isUnfolded: boolean;
  /** What its findings are about, ids with spaces between. */
  readonly subjects: string;
  /** The worst of them, if ways out are looked for; empty where they are not. */
  readonly worstId: string;
  readonly worstTitle: string;
}

/** Many findings of one cause, in one line; unfolded, they stand below it. */
export const FindingGroupLine = memo(function FindingGroupLine(props: FindingGroupLineProps) {
  const { id, severity, title, isUnfolded, worstId } = props;
  return (
    <li className={`finding group ${severity}`}>
      <div className="finding-line" data-row>
        <h3>
          <button
            type="button"
            className="finding-open"
            data-stop
            aria-expanded={isUnfolded}
            onClick={() => useFindingsState.getState().toggleGroup(id)}
          >
            <span className="sign" aria-hidden="true">
              {props.sign}
            </span>
            <span className="finding-title">
              <span className="visually-hidden">{props.word}: </span>
              <span className="finding-many">{props.count} x</span> {title}
            </span>
          </button>
        </h3>
        {worstId !== "" ? (
          <WaysOutButton id={worstId} title={props.worstTitle} />
        ) : (
          <button
            type="button"
            className="act"
            data-stop
            aria-label={texts.selectAll(title)}
            onClick={() => selectAll(props.subjects.split(" "))}
          >
            {texts.selectAll2}
          </button>
        )}
      </div>
    </li>
  );
});

/** What one typed date or figure may mend at once is selected together. */
function selectAll(subjects: readonly string[]): void {
  windowNow().select(subjects);
  windowNow().keepInView(subjects);
}
