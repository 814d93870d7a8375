import { type RefObject, useDeferredValue, useEffect, useMemo, useRef, useState } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { type Match, findObjects } from "./find-objects.ts";
import { stepOf } from "../form/popup.ts";
import { planNow, windowNow } from "../state/plan-actions.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";

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
  now.announce(`${count}: ${name}${elsewhere === null ? "" : `, in ${elsewhere}`}.`);
}

/** The matches under the field: arrows and Enter step through them, a press goes to one. */
export function FindList({ query, field }: FindListProps) {
  const plan = useDeferredValue(useShownPlan());
  const book = usePlanStore((state) => state.book);
  // Matches in the layout on screen go first; showing one elsewhere must not reorder the list.
  const [layoutId] = useState(() => planNow().layoutId);
  const list = useRef<HTMLDivElement>(null);
  const matches = useMemo(
    () => findObjects(plan, book, layoutId, query),
    [plan, book, layoutId, query],
  );
  const [place, setPlace] = useState<{ readonly query: string; readonly at: number } | null>(null);
  const at = place?.query === query ? place.at : -1;
  const { length } = matches;

  useEffect(() => {
    const input = field.current;
    if (!input) return;
    const goTo = (next: number) => {
      const match = matches[next];
      if (!match) return;
      setPlace({ query, at: next });
      show(match, `${next + 1} of ${length}`);
      input.setAttribute("aria-activedescendant", `find-${next}`);
      list.current?.children[next]?.scrollIntoView({ block: "nearest" });
    };
    const press = (event: KeyboardEvent) => {
      if (length === 0 || event.isComposing) return;
      // Home and End belong to the text that is typed.
      if (event.key === "Home" || event.key === "End") return;
      const isEnter = event.key === "Enter";
      const key = isEnter ? (event.shiftKey ? "ArrowUp" : "ArrowDown") : event.key;
      const next = stepOf(key, at, length);
      if (next === null) return;
      event.preventDefault();
      goTo(next);
    };
    input.addEventListener("keydown", press);
    return () => {
      input.removeEventListener("keydown", press);
      input.removeAttribute("aria-activedescendant");
    };
  }, [field, matches, length, at, query]);

  return (
    <div className="find-results">
      <p className="region-note" role="status">
        {length === 0 ? "Nothing is called that." : countText(at, length)}
      </p>
      <div ref={list} id="find-list" className="find-list" role="listbox" aria-label="Matches">
        {matches.map((match, index) => (
          <div
            key={`${match.layoutId ?? ""} ${match.id}`}
            id={`find-${index}`}
            role="option"
            tabIndex={-1}
            aria-selected={index === at}
            className="find-line"
            onClick={() => {
              setPlace({ query, at: index });
              show(match, `${index + 1} of ${length}`);
            }}
            onKeyDown={() => undefined}
          >
            <span className="code">{match.name}</span> <span className="soft">{match.about}</span>
            {match.elsewhere !== null && <span className="find-where">in {match.elsewhere}</span>}
          </div>
        ))}
      </div>
    </div>
  );
}

function countText(at: number, length: number): string {
  const found = length === 1 ? "1 match" : `${length} matches`;
  return at < 0 ? `${found}; Enter goes to the first` : `${at + 1} of ${found}`;
}
