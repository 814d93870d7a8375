import { Suspense, lazy, memo, useState } from "react";
import type { Severity } from "../../core/checks/finding.ts";
import { YearsButton } from "./YearsButton.tsx";
import { viewNow } from "../state/view-state.ts";
import { planNow, windowNow } from "../state/plan-actions.ts";
import { figuresDialog } from "../figures/commands.ts";

// Tries many dates: only when they are asked for.
const StaggerOffers = lazy(async () => {
  const { StaggerOffers: Loaded } = await import("./StaggerOffers.tsx");
  return { default: Loaded };
});

const AcceptForm = lazy(async () => ({
  default: (await import("./AcceptForm.tsx")).AcceptForm,
}));

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
        <LinkButton name="Show" title={title} onPress={() => show(id, props.subjects.split(" "))} />
        {props.onWaysOut && (
          <LinkButton name="Ways out" title={title} onPress={() => props.onWaysOut?.(id)} />
        )}
        {props.figuresOf !== null && <FiguresLink standId={props.figuresOf} title={title} />}
        {props.hasDates && (
          <LinkButton
            name="Sowing dates"
            title={title}
            isUnfolded={isDating}
            onPress={() => setDating(!isDating)}
          />
        )}
        <LinkButton
          name="Accept"
          title={title}
          isUnfolded={isAccepting}
          onPress={() => setAccepting(!isAccepting)}
        />
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
        <Suspense fallback={<p role="status">Loading the fields ...</p>}>
          <AcceptForm
            findingId={id}
            className="accept-form"
            label="Why this is acceptable"
            submitLabel="Accept"
            onCancel={() => setAccepting(false)}
          />
        </Suspense>
      )}
    </li>
  );
});

/** Opens the finding and brings what it is about into view. */
function show(id: string, subjects: readonly string[]): void {
  windowNow().select(subjects);
  windowNow().showFinding(id);
  viewNow().showSheet();
  windowNow().bringIntoView(subjects);
}

interface LinkButtonProps {
  readonly name: string;
  /** Of the finding, so that a screen reader tells one button from another. */
  readonly title: string;
  /** Left out for what unfolds nothing. */
  readonly isUnfolded?: boolean;
  readonly onPress: () => void;
}

function LinkButton({ name, title, isUnfolded, onPress }: LinkButtonProps) {
  return (
    <button
      type="button"
      className="link"
      aria-expanded={isUnfolded}
      aria-label={`${name}: ${title}`}
      onClick={onPress}
    >
      {name}
    </button>
  );
}

/** To the figures behind a finding, where another one can be picked. */
function FiguresLink({ standId, title }: { readonly standId: string; readonly title: string }) {
  const open = () => {
    const stand = planNow().result.standById.get(standId);
    if (!stand) return;
    const varietyId = stand.variety?.id ?? null;
    figuresDialog.open({ kindId: stand.kind.id, varietyId });
  };
  return <LinkButton name="Figures" title={title} onPress={open} />;
}
