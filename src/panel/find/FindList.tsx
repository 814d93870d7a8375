import { type RefObject, useDeferredValue, useMemo, useState } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { type Match, findObjects } from "./find-objects.ts";
import { ListBox, type ListLine } from "../form/ListBox.tsx";
import { stepOf } from "../form/popup.ts";
import { planNow, windowNow } from "../state/plan-actions.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";
import * as texts from "./dialog-words.ts";

interface FindListProps {
  readonly query: string;
  readonly field: RefObject<HTMLInputElement | null>;
}

/** Selects a match and brings it into view, in its own layout. */
function show({ id, layoutId, name, elsewhere }: Match, count: string): void {
  const before = planNow();
  if (layoutId !== null && layoutId !== before.layoutId) before.showLayout(layoutId);
  const now = windowNow();
  now.select([id]);
  if (viewNow().view === "compare") viewNow().showSheet();
  now.bringIntoView([id]);
  // Once the tables show which row is selected.
  setTimeout(() => document.querySelector("tr.selected")?.scrollIntoView({ block: "center" }));
  now.announce(
    elsewhere === null
      ? texts.foundHere(count, name)
      : texts.foundElsewhere(count, name, elsewhere),
  );
}

/** The matches under the field: arrows and Enter step through them, a press goes to one. */
export function FindList({ query, field }: FindListProps) {
  const plan = useDeferredValue(useShownPlan());
  const book = usePlanStore((state) => state.book);
  // Matches in the layout on screen go first; showing one elsewhere must not reorder the list.
  const [layoutId] = useState(() => planNow().layoutId);
  const matches = useMemo(
    () => findObjects(plan, book, layoutId, query),
    [plan, book, layoutId, query],
  );
  const [place, setPlace] = useState<{ readonly query: string; readonly at: number } | null>(null);
  const at = place?.query === query ? place.at : -1;
  const { length } = matches;
  const goTo = (next: number) => {
    const match = matches[next];
    if (!match) return;
    setPlace({ query, at: next });
    show(match, `${next + 1} of ${length}`);
  };
  return (
    <div className="find-results">
      <p className="region-note" role="status">
        {length === 0 ? texts.nothingIsCalledThat : countText(at, length)}
      </p>
      <ListBox
        field={field}
        id="find-list"
        label={texts.matches}
        className="find-list"
        lines={matches.map(lineOf)}
        at={at}
        onMove={goTo}
        onPick={goTo}
        onEnter={(isShift) => goTo(stepOf(isShift ? "ArrowUp" : "ArrowDown", at, length) ?? -1)}
      />
    </div>
  );
}

function lineOf({ layoutId, id, name, about, elsewhere }: Match): ListLine {
  return {
    key: `${layoutId ?? ""} ${id}`,
    className: "find-line",
    content: (
      <>
        <span className="code">{name}</span> <span className="soft">{about}</span>
        {elsewhere !== null && <span className="find-where">{texts.inLayout(elsewhere)}</span>}
      </>
    ),
  };
}

function countText(at: number, length: number): string {
  return at < 0 ? texts.matchesFound(length) : texts.matchOf(at + 1, length);
}
