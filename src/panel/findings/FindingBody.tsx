import { Suspense, lazy, useState } from "react";
import { checkOf } from "../../core/checks/all-checks.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { YearsButton, mayTryYears } from "./YearsButton.tsx";
import { viewNow } from "../state/view-state.ts";
import { planNow, windowNow } from "../state/plan-actions.ts";
import { useShownResult } from "../state/use-shown-plan.ts";
import { figuresDialog } from "../figures/commands.ts";
import { AcceptForm } from "./AcceptForm.tsx";
import * as texts from "./dialog-words.ts";

// Tries many dates: only when they are asked for.
const StaggerOffers = lazy(async () => {
  const { StaggerOffers: Loaded } = await import("./StaggerOffers.tsx");
  return { default: Loaded };
});

interface FindingBodyProps {
  readonly id: string;
  readonly title: string;
  /** Its sentences. */
  readonly text: string;
}

/** The finding that is opened: its words in full, and what can be done from here. */
export function FindingBody({ id, title, text }: FindingBodyProps) {
  const result = useShownResult();
  const [isAccepting, setAccepting] = useState(false);
  const [isDating, setDating] = useState(false);
  // What stands in the ground is neither sown anew nor tried on other years' weather.
  const isGrown = usePlanStore(({ reading }) => reading !== null);
  const finding = result.findings.find((entry) => entry.id === id);
  if (!finding) return <p>{text}</p>;
  const check = checkOf(finding);
  const subjects = finding.subjects.join(" ");
  const figuresOf = check.figuresOf?.(finding) ?? null;
  const hasYears =
    !isGrown &&
    (check.pairsAtRisk !== undefined || finding.check === "unsure-time") &&
    mayTryYears(finding.subjects.map((subject) => result.standById.get(subject)));
  return (
    <div className="finding-body">
      <p>{text}</p>
      <p className="finding-actions">
        <LinkButton name={texts.show} title={title} onPress={() => show(finding.subjects)} />
        {figuresOf !== null && <FiguresLink standId={figuresOf} title={title} />}
        {check.hasWaysOut === true && !isGrown && (
          <LinkButton
            name={texts.sowingDates}
            title={title}
            isUnfolded={isDating}
            onPress={() => setDating(!isDating)}
          />
        )}
        {hasYears && <YearsButton subjects={subjects} about={title} />}
        <LinkButton
          name={texts.accept}
          title={title}
          isUnfolded={isAccepting}
          onPress={() => setAccepting(!isAccepting)}
        />
      </p>
      {isDating && (
        <Suspense fallback={<p role="status">{texts.lookingForDates}</p>}>
          <StaggerOffers subjects={subjects} />
        </Suspense>
      )}
      {isAccepting && (
        <AcceptForm
          findingId={id}
          className="accept-form"
          label={texts.whyThisIsAcceptable}
          submitLabel={texts.accept}
          isFocused
          onCancel={() => setAccepting(false)}
        />
      )}
    </div>
  );
}

/** Selects what a finding is about and brings it into view. */
function show(subjects: readonly string[]): void {
  windowNow().select(subjects);
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
  return <LinkButton name={texts.figures} title={title} onPress={open} />;
}
