import { Suspense, lazy, memo, useState } from "react";
import type { Severity } from "../../core/checks/finding.ts";
import { AcceptForm } from "./AcceptForm.tsx";
import { YearsButton } from "./YearsButton.tsx";
import { viewNow } from "../state/view-state.ts";
import { planNow, windowNow } from "../state/plan-actions.ts";
import { figuresDialog } from "../figures/commands.ts";

// Tries many dates: only when they are asked for.
const StaggerOffers = lazy(async () => {
  const { StaggerOffers: Loaded } = await import("./StaggerOffers.tsx");
  return { default: Loaded };
});

interface FindingCardProps {
  readonly id: string;
  readonly severity: Severity;
  readonly sign: string;
  readonly word: string;
  readonly title: string;
  readonly text: string;
  /** Ids with spaces between. */
  readonly subjects: string;
  /** Whether other sowing dates could clear it. */
  readonly hasDates: boolean;
  /** Whether the years of the site's record may make a difference to the two. */
  readonly hasYears: boolean;
  readonly isOpen: boolean;
  /** Id of the seed parent whose figures the finding rests on; null where it rests on none. */
  readonly figuresOf: string | null;
  /** Opens the ways out of the finding; null where there are none to look for. */
  readonly onWaysOut: ((id: string) => void) | null;
}

/** One finding. Only texts and numbers come in, so that a drag redraws the cards that change. */
export const FindingCard = memo(function FindingCard(props: FindingCardProps) {
  const { id, severity, sign, word, title, text, isOpen } = props;
  const [isAccepting, setAccepting] = useState(false);
  const [isDating, setDating] = useState(false);
  const show = () => {
    const ids = props.subjects.split(" ");
    windowNow().select(ids);
    windowNow().showFinding(id);
    viewNow().showSheet();
    windowNow().bringIntoView(ids);
  };
  return (
    <li className={`finding ${severity}`} aria-current={isOpen ? "true" : undefined}>
      <h3>
        <span className="sign" aria-hidden="true">
          {sign}
        </span>
        <span className="visually-hidden">{word}: </span>
        {title}
      </h3>
      <p>{text}</p>
      <p className="finding-actions">
        <button type="button" className="link" aria-label={`Show: ${title}`} onClick={show}>
          Show
        </button>
        {props.onWaysOut && (
          <button
            type="button"
            className="link"
            aria-label={`Ways out: ${title}`}
            onClick={() => props.onWaysOut?.(id)}
          >
            Ways out
          </button>
        )}
        {props.figuresOf !== null && <FiguresLink standId={props.figuresOf} title={title} />}
        {props.hasDates && (
          <button
            type="button"
            className="link"
            aria-expanded={isDating}
            aria-label={`Sowing dates: ${title}`}
            onClick={() => setDating(!isDating)}
          >
            Sowing dates
          </button>
        )}
        <button
          type="button"
          className="link"
          aria-expanded={isAccepting}
          aria-label={`Accept: ${title}`}
          onClick={() => setAccepting(!isAccepting)}
        >
          Accept
        </button>
      </p>
      {props.hasYears && (
        <div className="finding-years">
          <YearsButton subjects={props.subjects} about={title} />
        </div>
      )}
      {isDating && (
        <Suspense fallback={<p role="status">Looking for dates ...</p>}>
          <StaggerOffers subjects={props.subjects} />
        </Suspense>
      )}
      {isAccepting && (
        <AcceptForm
          findingId={id}
          className="accept-form"
          label="Why this is acceptable"
          submitLabel="Accept"
          onCancel={() => setAccepting(false)}
        />
      )}
    </li>
  );
});

/** To the figures behind a finding, where another one can be picked. */
function FiguresLink({ standId, title }: { readonly standId: string; readonly title: string }) {
  const open = () => {
    const stand = planNow().result.standById.get(standId);
    if (!stand) return;
    const varietyId = stand.variety?.id ?? null;
    figuresDialog.open({ kindId: stand.kind.id, varietyId });
  };
  return (
    <button type="button" className="link" aria-label={`Figures: ${title}`} onClick={open}>
      Figures
    </button>
  );
}
