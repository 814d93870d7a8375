import { useMemo } from "react";
import type { WalkStop } from "../../core/fieldwork/walk-stops.ts";
import { shortDate } from "../../core/model/day.ts";
import type { Entry } from "../../core/model/plan.ts";
import { currentEntries, entriesUntil } from "../../core/record/current-entries.ts";
import { entryAsks } from "../../core/record/entry-fields.ts";
import { likelyEntries } from "../../core/record/likely-entries.ts";
import { plotRecord } from "../../core/record/plot-record.ts";
import { entryDialog } from "../record/dialogs.ts";
import { entryLabels } from "../record/record-words.ts";
import { writeDown } from "../record/write-down.ts";
import { windowNow } from "../state/plan-actions.ts";
import type { WalkNow } from "./use-walk.ts";
import type { WalkSheet } from "./walk-sheet.ts";
import { walkWords as words } from "./walk-words.ts";

interface EntryButtonsProps {
  readonly walk: WalkNow;
  readonly stop: WalkStop;
  /** The rarer ones rather than the likely ones. */
  readonly isAll: boolean;
  readonly onSheet: (sheet: WalkSheet) => void;
}

/** Happens once in a season: a second press asks whether the first was wrong. */
const ONCE: ReadonlySet<Entry["what"]> = new Set([
  "sown",
  "emerged",
  "first flower",
  "cut before bloom",
]);

/** What can be written down here, the likeliest first. */
export function EntryButtons({ walk, stop, isAll, onSheet }: EntryButtonsProps) {
  const { planned, on } = walk;
  const { entries } = planned.plan;
  const here = useMemo(
    () => entriesUntil(currentEntries(entries), stop.id, on),
    [entries, stop.id, on],
  );
  const stand = planned.result.standById.get(stop.id);
  if (!stand) return null;
  const record = plotRecord(here);
  const { first, more } = likelyEntries(stand, record, on);
  const press = (what: Entry["what"]) => {
    const known = here.findLast((entry) => entry.what === what);
    // What was over may flower again: that is written anew.
    const isAgain = what === "first flower" && record.lastFlower !== null;
    if (known && ONCE.has(what) && !isAgain) {
      const isOurs = stop.planting !== null;
      entryDialog.open({ of: stop.id, plot: stop.code, isOurs, wrong: known });
    } else if (entryAsks[what].isPress !== true) onSheet({ asks: what });
    else if (known?.on === on) windowNow().announce(words.alreadyToday(entryLabels[what]));
    else writeDown({ of: stop.id, on, what }, stop.code);
  };
  return (
    <div className="walk-buttons" role="group" aria-label={words.write}>
      {(isAll ? more : first).map((what) => (
        <EntryButton key={what} {...{ what, here, on }} onPress={() => press(what)} />
      ))}
    </div>
  );
}

interface EntryButtonProps {
  readonly what: Entry["what"];
  readonly here: readonly Entry[];
  readonly on: number;
  readonly onPress: () => void;
}

/** Says on which day it was last written down. */
function EntryButton({ what, here, on, onPress }: EntryButtonProps) {
  const known = here.findLast((entry) => entry.what === what);
  const isKnown = known !== undefined && (ONCE.has(what) || known.on === on);
  return (
    <button type="button" onClick={onPress}>
      {entryLabels[what]}
      {isKnown && <span className="walk-known">✓ {shortDate(known.on)}</span>}
    </button>
  );
}
