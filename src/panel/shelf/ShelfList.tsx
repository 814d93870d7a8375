import { type KeyboardEvent, type MouseEvent, memo, useEffect, useMemo } from "react";
import { standardOf } from "../../core/lots/ageing.ts";
import { ageWords } from "../../core/lots/age-words.ts";
import { bandWords } from "../../core/lots/band-words.ts";
import { amountWords } from "../../core/lots/lot-words.ts";
import { inSeeds, seedsPerGram } from "../../core/lots/seed-yield.ts";
import { useVisibleLines } from "../form/use-visible-lines.ts";
import { viewNow } from "../state/view-state.ts";
import { seedsWords } from "../../core/lots/amount-text.ts";
import { LifeCurve } from "../lots/LifeCurve.tsx";
import { afterKey, afterPress, afterRange } from "./list-keys.ts";
import { lotsNow, useLots } from "../state/lots-state.ts";
import type { ShelfRow } from "./shelf-rows.ts";
import * as texts from "./words.ts";

/** Height of every row; the styles have the same. */
const ROW_PX = 64;
const SMALL_CURVE = { width: 120, height: 40 } as const;

interface ShelfListProps {
  readonly rows: readonly ShelfRow[];
  /** Seeds the plantings on screen take, by the lot's id. */
  readonly need: ReadonlyMap<string, number>;
  readonly day: number;
}

/** One stop of the Tab key; arrows go from lot to lot. Only the lines in view are drawn. */
export function ShelfList({ rows, need, day }: ShelfListProps) {
  const { ref, onScroll, from, to } = useVisibleLines(ROW_PX);
  const picked = useLots((state) => state.picked);
  const active = useLots((state) => state.active);
  const ids = useMemo(() => rows.map(({ lot }) => lot.id), [rows]);
  const activeAt = active === null ? -1 : ids.indexOf(active);
  const pickedIds = useMemo(() => new Set(picked), [picked]);
  useEffect(() => {
    const list = ref.current;
    if (!list || activeAt < 0) return;
    const top = activeAt * ROW_PX;
    if (top < list.scrollTop) list.scrollTo({ top });
    else if (top + ROW_PX > list.scrollTop + list.clientHeight) {
      list.scrollTo({ top: top + ROW_PX - list.clientHeight });
    }
  }, [activeAt, ref]);
  const { onKey, onPress } = picking(ids);
  const drawn = drawnRows(rows, from, to, activeAt);
  return (
    <div
      ref={ref}
      className="shelf-list"
      role="listbox"
      aria-label={texts.lotsOnTheShelf}
      aria-multiselectable="true"
      aria-activedescendant={activeAt < 0 ? undefined : `lot-line-${active ?? ""}`}
      tabIndex={0}
      onScroll={onScroll}
      onKeyDown={onKey}
      onClick={onPress}
      onFocus={() => {
        const [first] = ids;
        if (activeAt < 0 && first !== undefined) lotsNow().pick(lotsNow().picked, first);
      }}
    >
      {rows.length === 0 && <p className="region-empty">{texts.noLotLike}</p>}
      <div role="presentation" style={{ height: `${rows.length * ROW_PX}px` }}>
        {drawn.map(({ row, index }) => (
          <ShelfLine
            key={row.lot.id}
            row={row}
            index={index}
            count={rows.length}
            need={need.get(row.lot.id) ?? 0}
            day={day}
            isPicked={pickedIds.has(row.lot.id)}
            isActive={index === activeAt}
          />
        ))}
      </div>
    </div>
  );
}

/** What keys and presses in the list pick. */
function picking(ids: readonly string[]) {
  const onKey = (event: KeyboardEvent) => {
    if (event.key === "Enter") {
      viewNow().toggleDrawer("particulars");
      return;
    }
    const isCommand = event.ctrlKey || event.metaKey;
    const next = afterKey(ids, lotsNow(), { key: event.key, isCommand, isShift: event.shiftKey });
    if (!next) return;
    event.preventDefault();
    event.stopPropagation();
    lotsNow().pick(next.picked, next.active);
  };
  const onPress = (event: MouseEvent) => {
    const target = event.target instanceof Element ? event.target : null;
    const id = target?.closest<HTMLElement>("[data-line]")?.dataset["line"];
    if (id === undefined) return;
    const now = lotsNow();
    const isBox = target?.closest(".shelf-box") !== null;
    const next = event.shiftKey
      ? afterRange(ids, now, id)
      : event.ctrlKey || event.metaKey || isBox
        ? afterPress(now, id)
        : { picked: [id], active: id };
    now.pick(next.picked, next.active);
  };
  return { onKey, onPress };
}

/** Those in view, and the one the keys are on wherever it lies: the list points to it. */
function drawnRows(rows: readonly ShelfRow[], from: number, to: number, activeAt: number) {
  const drawn = rows.slice(from, to).map((row, at) => ({ row, index: from + at }));
  const active = rows[activeAt];
  if (active && (activeAt < from || activeAt >= to)) drawn.push({ row: active, index: activeAt });
  return drawn;
}

interface ShelfLineProps {
  readonly row: ShelfRow;
  readonly index: number;
  readonly count: number;
  /** Seeds. */
  readonly need: number;
  readonly day: number;
  readonly isPicked: boolean;
  readonly isActive: boolean;
}

const ShelfLine = memo(function ShelfLine(props: ShelfLineProps) {
  const { row, index, count, need, day, isPicked, isActive } = props;
  const { lot, variety, kind, place, estimate } = row;
  const standard = kind ? standardOf(kind) : 0;
  return (
    <div
      id={`lot-line-${lot.id}`}
      className={`shelf-line${isActive ? " active" : ""}`}
      role="option"
      aria-selected={isPicked}
      aria-setsize={count}
      aria-posinset={index + 1}
      tabIndex={-1}
      data-line={lot.id}
      style={{ top: `${index * ROW_PX}px` }}
    >
      <span className="shelf-box" aria-hidden="true">
        {isPicked ? "✓" : ""}
      </span>
      <span className="shelf-what">
        <span className="code">{lot.code}</span>
        <bdi className="shelf-variety">{variety?.name ?? texts.unknown}</bdi>
        <span className="soft">
          {kind?.name ?? ""}
          {lot.treated === true && <b className="caution-text"> · {texts.treated}</b>}
          {row.isCrossed && <b className="caution-text"> · {texts.mayHaveCrossed}</b>}
        </span>
      </span>
      <span className="shelf-age soft">
        <span>{ageWords(lot, day)}</span>
        <span>{place?.name ?? texts.placeNotKnown}</span>
      </span>
      <AmountCell row={row} need={need} />
      <LifeCell row={row} day={day} />
      <span className="shelf-curve">
        <LifeCurve
          lot={lot}
          estimate={estimate}
          standard={standard}
          today={day}
          box={SMALL_CURVE}
        />
      </span>
    </div>
  );
});

function AmountCell({
  row: { lot, kind },
  need,
}: {
  readonly row: ShelfRow;
  readonly need: number;
}) {
  if (lot.state !== "in stock") return <span className="shelf-amount soft">{lot.state}</span>;
  const seeds = inSeeds(lot.amount, seedsPerGram(lot, kind));
  const isShort = seeds !== undefined && seeds < need;
  const share = seeds === undefined ? null : seeds === 0 ? 1 : Math.min(1, need / seeds);
  return (
    <span className="shelf-amount">
      <span>{amountWords(lot.amount)}</span>
      {need > 0 && (
        <>
          <span className={isShort ? "caution-text" : "soft"}>
            {isShort ? "! " : ""}
            {texts.needs(seedsWords(need, lot, kind))}
          </span>
          {share !== null && (
            <span className="need-bar" aria-hidden="true">
              <span style={{ width: `${share * 100}%` }} />
            </span>
          )}
        </>
      )}
    </span>
  );
}

function LifeCell({
  row: { kind, estimate },
  day,
}: {
  readonly row: ShelfRow;
  readonly day: number;
}) {
  if (!estimate || !kind)
    return <span className="shelf-life soft">{texts.germinationNotKnown}</span>;
  const band = estimate.at(Math.max(day, estimate.startDay));
  const standard = standardOf(kind);
  const [least, most] = band;
  const verdict =
    most < standard ? `✕ ${texts.isUnder}` : least < standard ? `! ${texts.mayBeUnder}` : "";
  return (
    <span className="shelf-life">
      <span>{bandWords(band)}</span>
      <span className="soft">{estimate.from === "test" ? texts.tested : texts.notTested}</span>
      {verdict !== "" && (
        <span className={most < standard ? "conflict-text" : "caution-text"}>{verdict}</span>
      )}
    </span>
  );
}
