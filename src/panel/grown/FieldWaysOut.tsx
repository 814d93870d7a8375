import { useEffect, useId, useMemo, useRef } from "react";
import { describeFinding } from "../../core/checks/all-checks.ts";
import { wordingOf } from "../../core/checks/checked-layout.ts";
import { severityWord } from "../../core/checks/wording.ts";
import { type FieldRemedy, fieldRemedies } from "../../core/record/field-remedies.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { commit } from "../state/plan-actions.ts";
import { writeDownAll } from "../record/write-down.ts";
import { fieldEffect, grownWords as words } from "./grown-words.ts";
import "./grown.css";

interface FieldWaysOutProps {
  readonly findingId: string;
  readonly onClose: () => void;
  /** Called once something was done about it. */
  readonly onDone: () => void;
}

/** What can still be done about a finding on the day looked at; what was done is written down. */
export function FieldWaysOut({ findingId, onClose, onDone }: FieldWaysOutProps) {
  const headingId = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
    heading.current?.scrollIntoView({ block: "nearest" });
  }, []);
  const plan = usePlanStore((state) => state.plan);
  const grown = usePlanStore((state) => state.grown);
  const finding = grown?.result.findings.find(({ id }) => id === findingId);
  const remedies = useMemo(
    () =>
      grown?.grownOn !== undefined && finding
        ? fieldRemedies(plan, grown, finding, grown.grownOn)
        : [],
    [plan, grown, finding],
  );
  const take = (remedy: FieldRemedy) => {
    const { entries, edit } = remedy;
    if (edit) commit(edit);
    else if (grown) {
      const { nameOf } = wordingOf(grown);
      writeDownAll(entries.map((fields) => ({ fields, plot: nameOf(fields.of) })));
    }
    onDone();
  };
  return (
    <section className="ways-out" aria-labelledby={headingId}>
      <header className="region-head">
        <h3 id={headingId} ref={heading} tabIndex={-1}>
          {words.stillTitle(grown?.grownOn)}
        </h3>
        <button type="button" className="quiet" onClick={onClose}>
          {words.close}
        </button>
      </header>
      <p>{finding && grown ? describeFinding(finding, wordingOf(grown)).title : words.gone}</p>
      {finding && remedies.length === 0 && <p>{words.none}</p>}
      <ul className="plain-list">
        {remedies.map((remedy) => (
          <FieldWayOut
            key={remedy.title}
            remedy={remedy}
            brought={remedy.brings.map(
              (each) =>
                `${severityWord[each.severity]}: ${grown ? describeFinding(each, wordingOf(grown)).title : ""}`,
            )}
            onTake={() => take(remedy)}
          />
        ))}
      </ul>
    </section>
  );
}

interface FieldWayOutProps {
  readonly remedy: FieldRemedy;
  readonly brought: readonly string[];
  readonly onTake: () => void;
}

function FieldWayOut({ remedy, brought, onTake }: FieldWayOutProps) {
  const press = remedy.edit ? words.doIt : words.write;
  return (
    <li className="way-out">
      <p className="way-out-title">
        {remedy.title} <span className="way-out-effect">{fieldEffect(remedy)}</span>
      </p>
      <p className="way-out-notes">{remedy.notes.join(" ")}</p>
      {brought.length > 0 && (
        <ul className="way-out-notes plain-list">
          {brought.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      <p className="finding-actions">
        <button
          type="button"
          className="act"
          aria-label={`${press}: ${remedy.title}`}
          onClick={onTake}
        >
          {press}
        </button>
      </p>
    </li>
  );
}
