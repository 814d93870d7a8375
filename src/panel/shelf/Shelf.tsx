import { useDeferredValue, useMemo } from "react";
import { sowingRows } from "../../core/lots/sowing.ts";
import { useKept } from "../state/plan-actions.ts";
import {
  type ShelfSort,
  type StateShown,
  lotsNow,
  shelfSorts,
  statesShown,
  useLots,
} from "../state/lots-state.ts";
import { ShelfList } from "./ShelfList.tsx";
import {
  foundRows,
  needOfLots,
  shelfRows,
  sortWords,
  sortedRows,
  statesShownWords,
} from "./shelf-rows.ts";
import { today } from "../state/today.ts";
import { usePruned } from "../state/use-pruned.ts";
import * as texts from "./words.ts";

/** What a filter hides is no longer picked. */
function keepPicked(shown: ReadonlySet<string>): void {
  const { picked, active, pick } = lotsNow();
  const kept = picked.filter((id) => shown.has(id));
  if (kept.length < picked.length) {
    pick(kept, active !== null && shown.has(active) ? active : (kept.at(-1) ?? null));
  }
}

/** All lots as one list: found by any word, sorted, several picked at once. */
export function Shelf() {
  const { plan, layout, book } = useKept();
  const query = useDeferredValue(useLots((state) => state.query));
  const sort = useLots((state) => state.sort);
  const stateShown = useLots((state) => state.stateShown);
  const day = today();
  const rows = useMemo(() => shelfRows(plan, book), [plan, book]);
  const need = useMemo(() => needOfLots(sowingRows(plan, layout, book)), [plan, layout, book]);
  const ordered = useMemo(() => sortedRows(rows, sort, need, day), [rows, sort, need, day]);
  const found = useMemo(() => foundRows(ordered, query, stateShown), [ordered, query, stateShown]);
  const shown = useMemo(() => new Set(found.map(({ lot }) => lot.id)), [found]);
  usePruned(`${stateShown} ${query}`, shown, keepPicked);
  if (plan.lots.length === 0) {
    return <p className="region-empty lots-empty">{texts.seedYouStandsHere}</p>;
  }
  return (
    <>
      <ShelfBar found={found.length} all={plan.lots.length} />
      <ShelfList rows={found} need={need} day={day} />
    </>
  );
}

function ShelfBar({ found, all }: { readonly found: number; readonly all: number }) {
  const query = useLots((state) => state.query);
  const sort = useLots((state) => state.sort);
  const stateShown = useLots((state) => state.stateShown);
  return (
    <div className="lots-bar" role="search" aria-label={texts.lotsHeading}>
      <input
        type="search"
        aria-label={texts.findLotsCodeVariety}
        placeholder={texts.findLots}
        autoComplete="off"
        spellCheck={false}
        data-draft={query === "" ? "none" : "typed"}
        value={query}
        onChange={(event) => lotsNow().find(event.target.value)}
        onKeyDown={(event) => {
          if (event.key !== "ArrowDown" && event.key !== "Enter") return;
          event.preventDefault();
          document.querySelector<HTMLElement>(".shelf-list")?.focus();
        }}
      />
      <label>
        {texts.sortBy}{" "}
        <select
          value={sort}
          onChange={(event) => lotsNow().sortBy(event.target.value as ShelfSort)}
        >
          {shelfSorts.map((each) => (
            <option key={each} value={each}>
              {sortWords[each]}
            </option>
          ))}
        </select>
      </label>
      <label>
        {texts.show}{" "}
        <select
          value={stateShown}
          onChange={(event) => lotsNow().showStates(event.target.value as StateShown)}
        >
          {statesShown.map((each) => (
            <option key={each} value={each}>
              {statesShownWords[each]}
            </option>
          ))}
        </select>
      </label>
      <p className="region-note" role="status">
        {found === all ? texts.lotsAll(all) : texts.ofLots(found, all)}
      </p>
    </div>
  );
}
