import { Suspense, lazy, memo, useEffect, useRef } from "react";
import type { Severity } from "../../core/checks/finding.ts";
import { windowNow } from "../state/plan-actions.ts";
import { NEW_MARK, waysOutOf } from "./findings-words.ts";
import { useFindingsState } from "./findings-state.ts";
import * as said from "./words.ts";

// Only for the one that is opened.
const FindingBody = lazy(async () => ({
  default: (await import("./FindingBody.tsx")).FindingBody,
}));

interface FindingLineProps {
  readonly id: string;
  readonly severity: Severity;
  readonly sign: string;
  readonly word: string;
  readonly title: string;
  /** Its figures in a few characters; may be empty. */
  readonly figures: string;
  /** Whether the last change brought it. */
  readonly isNew: boolean;
  readonly isInGroup: boolean;
  readonly isOpen: boolean;
  /** In full; empty while it is not opened. */
  readonly text: string;
  /** Whether ways out of it are looked for when asked. */
  readonly hasWaysOut: boolean;
}

/** One finding, a line or two. Only texts come in, so that a drag redraws the lines that change. */
export const FindingLine = memo(function FindingLine(props: FindingLineProps) {
  const { id, severity, title, isOpen } = props;
  const ref = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (isOpen) ref.current?.scrollIntoView({ block: "nearest" });
  }, [isOpen]);
  return (
    <li
      ref={ref}
      className={`finding ${severity}${props.isInGroup ? " in-group" : ""}`}
      aria-current={isOpen ? "true" : undefined}
    >
      <div className="finding-line" data-row>
        <h3>
          <button
            type="button"
            className="finding-open"
            data-stop
            aria-expanded={isOpen}
            onClick={() => windowNow().showFinding(isOpen ? null : id)}
          >
            <span className="sign" aria-hidden="true">
              {props.sign}
            </span>
            <span className="finding-title">
              <span className="visually-hidden">{props.word}: </span>
              {title}{" "}
              {props.figures !== "" && <span className="finding-figures">{props.figures}</span>}
              {props.isNew && <span className="finding-new">{NEW_MARK}</span>}
            </span>
          </button>
        </h3>
        {props.hasWaysOut && <WaysOutButton id={id} title={title} />}
      </div>
      {isOpen && (
        <Suspense fallback={<p role="status">{said.loading}</p>}>
          <FindingBody id={id} title={title} text={props.text} />
        </Suspense>
      )}
    </li>
  );
});

interface WaysOutButtonProps {
  readonly id: string;
  readonly title: string;
}

export function WaysOutButton({ id, title }: WaysOutButtonProps) {
  const isAsked = useFindingsState(({ waysOutFor }) => waysOutFor === id);
  const ask = () => {
    windowNow().showFinding(id);
    useFindingsState.getState().askWaysOut(isAsked ? null : id);
  };
  return (
    <button
      type="button"
      className="link"
      data-stop
      aria-expanded={isAsked}
      aria-label={waysOutOf(title)}
      onClick={ask}
    >
      {said.waysOut}
    </button>
  );
}
