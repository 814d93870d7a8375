import { type RefObject, memo, useDeferredValue, useEffect, useMemo, useRef } from "react";
import type { Hatch } from "../../core/page/hatch.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { HatchSwatch } from "../state/HatchSwatch.tsx";
import { type SeedListRow, seedListRows, seedListSummary } from "./seed-list-rows.ts";
import { useHatches } from "../state/use-hatches.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";
import { windowNow } from "../state/plan-actions.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { newVariety, placeDialog, varietyDialog, varietyList } from "./commands.ts";
import "./seed-list.css";

/** What a dragged variety is known by; the sheet takes it. */
const VARIETY_TYPE = "application/x-wideberth-variety";

export function SeedList() {
  // The list may lag behind a drag: the sheet comes first.
  const plan = useDeferredValue(useShownPlan());
  const layout = useDeferredValue(useShownLayout());
  const book = usePlanStore((state) => state.book);
  const hatchOf = useHatches(plan);
  const rows = useMemo(() => seedListRows(plan, layout, book), [plan, layout, book]);
  return (
    <section className="region seed-list" aria-labelledby="seed-list-heading">
      <header className="region-head">
        <h2 id="seed-list-heading" tabIndex={-1}>
          Seed list
        </h2>
        <p className="region-note">{seedListSummary(rows)}</p>
      </header>
      {rows.length === 0 ? (
        <p className="region-empty">
          The varieties to renew this season stand here, with the plants placed of those wanted.
        </p>
      ) : (
        <SeedListItems rows={rows} hatchOf={hatchOf} />
      )}
      <div className="region-foot">
        <CommandButton of={newVariety}>Add a variety</CommandButton>
        <CommandButton of={varietyList} className="quiet">
          Read or save as CSV
        </CommandButton>
      </div>
    </section>
  );
}

interface SeedListItemsProps {
  readonly rows: readonly SeedListRow[];
  readonly hatchOf: ReadonlyMap<string, Hatch>;
}

const SeedListItems = memo(function SeedListItems({ rows, hatchOf }: SeedListItemsProps) {
  const listRef = useRef<HTMLUListElement>(null);
  useVarietyDrag(listRef);
  return (
    <ul className="plain-list" ref={listRef}>
      {rows.map((row) => (
        <SeedListItem
          key={row.variety.id}
          id={row.variety.id}
          name={row.variety.name}
          kindText={row.kindText}
          placedText={row.placedText}
          reason={row.variety.reason ?? ""}
          isShort={row.isShort}
          plantingIds={row.plantingIds.join(" ")}
          hatch={hatchOf.get(row.kind?.group ?? "")}
        />
      ))}
    </ul>
  );
});

/** Rows carry their variety's id when they are dragged. One listener for the whole list. */
function useVarietyDrag(listRef: RefObject<HTMLUListElement | null>): void {
  useEffect(() => {
    const list = listRef.current;
    const start = (event: DragEvent) => {
      const row = event.target instanceof HTMLElement ? event.target : null;
      if (!event.dataTransfer || row?.dataset.variety === undefined) return;
      event.dataTransfer.setData(VARIETY_TYPE, row.dataset.variety);
      event.dataTransfer.effectAllowed = "copy";
    };
    list?.addEventListener("dragstart", start);
    return () => list?.removeEventListener("dragstart", start);
  }, [listRef]);
}

type SeedListItemProps = Pick<SeedListRow, "kindText" | "placedText" | "isShort"> & {
  readonly id: string;
  readonly name: string;
  /** Ids with spaces between: a row is drawn anew only when its text changes. */
  readonly plantingIds: string;
  /** Why it is grown out this season; empty: not said. */
  readonly reason: string;
  readonly hatch: Hatch | undefined;
};

const SeedListItem = memo(function SeedListItem(props: SeedListItemProps) {
  const { id, name, kindText, placedText, isShort, plantingIds, reason, hatch } = props;
  const showPlantings = () => {
    const ids = plantingIds.split(" ");
    windowNow().select(ids);
    windowNow().bringIntoView(ids);
    viewNow().showSheet();
  };
  return (
    <li className="seed-row" draggable data-variety={id}>
      <HatchSwatch hatch={hatch} />
      <p className="seed-name">
        <bdi>{name}</bdi>
      </p>
      <p className="seed-facts">
        <span>{kindText}</span>
        <span className={isShort ? "seed-placed short" : "seed-placed"}>{placedText}</span>
      </p>
      {reason !== "" && <p className="seed-reason">{reason}</p>}
      <div className="seed-actions">
        <button
          type="button"
          className="link"
          aria-label={`Place ${name} in a bed`}
          onClick={() => placeDialog.open({ varietyId: id, bedId: null })}
        >
          Place
        </button>
        {plantingIds !== "" && (
          <button
            type="button"
            className="link"
            aria-label={`Show plantings of ${name}`}
            onClick={showPlantings}
          >
            Show
          </button>
        )}
        <button
          type="button"
          className="link"
          aria-label={`Edit ${name}`}
          onClick={() => varietyDialog.open({ id })}
        >
          Edit
        </button>
      </div>
    </li>
  );
});
