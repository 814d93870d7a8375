import {
  type RefObject,
  memo,
  useCallback,
  useDeferredValue,
  useEffect,
  useMemo,
  useState,
} from "react";
import type { Hatch } from "../../core/page/hatch.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useFirstPicture } from "../../store/window/first-picture.ts";
import { oneOf, stored } from "../../store/window/stored.ts";
import { SeedRow } from "./SeedRow.tsx";
import {
  type SeedListOrder,
  foundRows,
  inOrderOf,
  orderWords,
  seedListOrders,
} from "./seed-list-order.ts";
import { type SeedListRow, seedListRows, seedListSummary } from "./seed-list-rows.ts";
import { useHatches } from "../state/use-hatches.ts";
import { useRovingRows } from "../state/roving-rows.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { layOutSeedList } from "../arrange/commands.ts";
import { newVariety, varietyList } from "./commands.ts";
import * as texts from "./words.ts";
import "./seed-list.css";

/** Shorter lists are read, not searched. */
const SEARCHED_FROM = 9;

/** Rows shown before "show more": a collection of thousands must not keep the window waiting. */
const FIRST_ROWS = 200;

const storedOrder = stored("wideberth.seed-list-order", oneOf(seedListOrders));

/** What a dragged variety is known by; the sheet takes it. */
const VARIETY_TYPE = "application/x-wideberth-variety";

export function SeedList() {
  // The list may lag behind a drag: the sheet comes first.
  const plan = useDeferredValue(useShownPlan());
  const layout = useDeferredValue(useShownLayout());
  const book = usePlanStore((state) => state.book);
  const isPainted = useFirstPicture((state) => state.isPainted);
  const hatchOf = useHatches(plan);
  const [order, setOrder] = useState(storedOrder.load);
  const [typed, setTyped] = useState("");
  const rows = useMemo(() => seedListRows(plan, layout, book), [plan, layout, book]);
  const listed = useMemo(() => inOrderOf(foundRows(rows, typed), order), [rows, typed, order]);
  const pickOrder = useCallback((picked: SeedListOrder) => {
    storedOrder.save(picked);
    setOrder(picked);
  }, []);
  return (
    <section className="region seed-list" aria-labelledby="seed-list-heading">
      <header className="region-head">
        <h2 id="seed-list-heading" tabIndex={-1}>
          {texts.seedList}
        </h2>
        <p className="region-note">{seedListSummary(rows)}</p>
      </header>
      {rows.length === 0 && <p className="region-empty">{texts.varietiesRenewSeasonStand}</p>}
      {rows.length >= SEARCHED_FROM && (
        <SeedListTools typed={typed} order={order} onType={setTyped} onOrder={pickOrder} />
      )}
      {/* The sheet and its findings are painted first; the foot with the rows, or they would move it. */}
      {isPainted && (
        <>
          {rows.length > 0 && listed.length === 0 && (
            <p className="region-empty">{texts.noVarietyNameKind}</p>
          )}
          <SeedListItems rows={listed} hatchOf={hatchOf} />
          <SeedListFoot isShort={rows.some(({ isShort }) => isShort)} />
        </>
      )}
    </section>
  );
}

function SeedListFoot({ isShort }: { readonly isShort: boolean }) {
  return (
    <div className="region-foot">
      <CommandButton of={newVariety}>{texts.addAVariety}</CommandButton>
      <CommandButton of={varietyList} className="quiet">
        {texts.readSaveCsv}
      </CommandButton>
      {isShort && <CommandButton of={layOutSeedList} />}
    </div>
  );
}

interface SeedListToolsProps {
  readonly typed: string;
  readonly order: SeedListOrder;
  readonly onType: (typed: string) => void;
  readonly onOrder: (order: SeedListOrder) => void;
}

/** Drawn when it changes itself: a drag changes the rows and nothing here. */
const SeedListTools = memo(function SeedListTools(props: SeedListToolsProps) {
  const { typed, order, onType, onOrder } = props;
  return (
    <div className="seed-tools">
      <input
        type="search"
        aria-label={texts.varietyOrKind}
        placeholder={texts.find}
        value={typed}
        onChange={({ target }) => onType(target.value)}
      />
      <select
        aria-label={texts.orderSeedList}
        value={order}
        onChange={({ target }) => {
          const picked = seedListOrders.find((each) => each === target.value);
          if (picked) onOrder(picked);
        }}
      >
        {seedListOrders.map((each) => (
          <option key={each} value={each}>
            {orderWords[each]}
          </option>
        ))}
      </select>
    </div>
  );
});

interface SeedListItemsProps {
  readonly rows: readonly SeedListRow[];
  readonly hatchOf: ReadonlyMap<string, Hatch>;
}

const SeedListItems = memo(function SeedListItems({ rows, hatchOf }: SeedListItemsProps) {
  const roving = useRovingRows("[data-stop]");
  const [chosen, setChosen] = useState<string | null>(null);
  const [most, setMost] = useState(FIRST_ROWS);
  useVarietyDrag(roving.ref);
  const more = Math.min(FIRST_ROWS * 4, rows.length - most);
  return (
    <>
      <ul className="plain-list" {...roving}>
        {rows.slice(0, most).map((row) => (
          <SeedRow
            key={row.variety.id}
            id={row.variety.id}
            name={row.variety.name}
            kindText={row.kindText}
            placedText={row.placedText}
            reason={row.variety.reason ?? ""}
            hasLots={row.hasLots}
            isShort={row.isShort}
            isChosen={row.variety.id === chosen}
            onChoose={setChosen}
            plantingIds={row.plantingIds.join(" ")}
            hatch={hatchOf.get(row.kind?.group ?? "")}
          />
        ))}
      </ul>
      {more > 0 && (
        <button type="button" className="quiet" onClick={() => setMost(most + more)}>
          {texts.showMore(more)}
        </button>
      )}
    </>
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
