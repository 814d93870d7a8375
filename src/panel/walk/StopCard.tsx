import { useMemo } from "react";
import { severitySign, severityWord } from "../../core/checks/wording.ts";
import type { WalkStop } from "../../core/fieldwork/walk-stops.ts";
import { markName } from "../../core/ground/ground-diseases.ts";
import { marksOn } from "../../core/ground/ground-history.ts";
import { type PlotFacts, plotFacts } from "../../core/record/plot-facts.ts";
import { recordLines } from "../../core/record/record-lines.ts";
import { useFieldPerson } from "../../store/window/field-person.ts";
import { HarvestOffer } from "../grown/HarvestOffer.tsx";
import { entryDialog, whoDialog } from "../record/dialogs.ts";
import { useDoubts } from "../record/EntryList.tsx";
import { byWords, lineWords, struckWords } from "../record/record-words.ts";
import { DueJobs } from "./DueJobs.tsx";
import type { WalkNow } from "./use-walk.ts";
import type { WalkSheet } from "./walk-sheet.ts";
import { bloomWords, dayWords, plantsWords, startWords, walkWords as words } from "./walk-words.ts";

interface StopCardProps {
  readonly walk: WalkNow;
  readonly stop: WalkStop;
  readonly onAsk: (sheet: WalkSheet) => void;
}

/** What stands here, large; what is due; what was written down. */
export function StopCard({ walk, stop, onAsk }: StopCardProps) {
  const { grown, on } = walk;
  const facts = useMemo(() => plotFacts(grown, stop.id, on), [grown, stop.id, on]);
  if (!facts) return null;
  return (
    <>
      <StopHeading facts={facts} />
      <FactLines facts={facts} />
      <GroundLines walk={walk} stop={stop} />
      <DueJobs walk={walk} stop={stop} onAsk={onAsk} />
      <StopRecord walk={walk} stop={stop} />
      {stop.planting !== null && <HarvestOffer plantingId={stop.id} />}
      <WhoAsk />
    </>
  );
}

function StopHeading({ facts }: { readonly facts: PlotFacts }) {
  const { code, variety, kind, isOurs } = facts;
  return (
    <div aria-live="polite">
      <h3 className={isOurs ? "walk-code code" : "walk-code"}>{code}</h3>
      {variety !== null && <p className="walk-variety">{variety}</p>}
      {kind && (
        <p className="walk-kind">
          {kind.name} <i lang="la">{kind.botanicalName}</i>
        </p>
      )}
    </div>
  );
}

/** Conflicts that are named one by one. */
const CONFLICTS_SHOWN = 3;

/** Plants, start, bloom, and the worst the checks say; read only. */
export function FactLines({ facts }: { readonly facts: PlotFacts }) {
  const { worst } = facts;
  const start = [plantsWords(facts), startWords(facts)].filter((part) => part !== null);
  const bloom = bloomWords(facts);
  return (
    <>
      {start.length > 0 && <p>{start.join(". ")}.</p>}
      {bloom !== null && <p>{bloom}.</p>}
      {facts.isForSeed && <p className="walk-seed">{words.forSeed}</p>}
      {worst && (
        <p className={worst.severity === "conflict" ? "conflict-text" : "caution-text"}>
          <span aria-hidden="true">{severitySign[worst.severity]}</span>{" "}
          {severityWord[worst.severity]}: {worst.title}
        </p>
      )}
      {facts.conflicts.slice(1, CONFLICTS_SHOWN).map((title) => (
        <p key={title} className="conflict-text">
          <span aria-hidden="true">{severitySign.conflict}</span> {severityWord.conflict}: {title}
        </p>
      ))}
      {facts.conflicts.length > CONFLICTS_SHOWN && (
        <p>{words.moreConflicts(facts.conflicts.length - CONFLICTS_SHOWN)}</p>
      )}
    </>
  );
}

/** Diseases of the ground one stands on, whatever is planted there. */
function GroundLines({ walk, stop }: Pick<StopCardProps, "walk" | "stop">) {
  const { plan } = walk.planned;
  const { planting } = stop;
  const marks = useMemo(
    () => (planting === null ? [] : marksOn(plan, planting.outline)),
    [plan, planting],
  );
  return marks.map((mark) => (
    <p key={mark.id} className="caution-text">
      {words.marked(markName(mark), mark.seenOn)}
    </p>
  ));
}

/** Lines that are read before the rest is asked for. */
const LINES_SHOWN = 4;

function StopRecord({ walk, stop }: Pick<StopCardProps, "walk" | "stop">) {
  const { entries } = walk.planned.plan;
  const lines = useMemo(() => recordLines(entries, stop.id), [entries, stop.id]);
  const doubts = useDoubts();
  const isOurs = stop.planting !== null;
  return (
    <>
      <h4>{words.record}</h4>
      {lines.length === 0 && <p>{words.noRecord}</p>}
      <ul className="plain-list walk-record">
        {lines.slice(0, LINES_SHOWN).map(({ entry, struck }) => (
          <li key={entry.id}>
            <button
              type="button"
              disabled={struck !== null}
              onClick={() =>
                entryDialog.open({ of: stop.id, plot: stop.code, isOurs, wrong: entry })
              }
            >
              <span>
                {dayWords(entry.on)}: {struck ? <s>{lineWords(entry)}</s> : lineWords(entry)}
                {struck && ` (${struckWords(struck)})`}
                {byWords(entry) !== "" && `, ${byWords(entry)}`}
                {(doubts.get(entry.id) ?? []).map((doubt) => (
                  <span key={doubt} className="caution-text walk-doubt">
                    ! {doubt}
                  </span>
                ))}
              </span>
            </button>
          </li>
        ))}
      </ul>
      {lines.length > LINES_SHOWN && <p>{words.moreEntries(lines.length - LINES_SHOWN)}</p>}
    </>
  );
}

function WhoAsk() {
  const who = useFieldPerson((state) => state.who);
  if (who !== "") return null;
  return (
    <button type="button" className="walk-who" onClick={() => whoDialog.open()}>
      {words.whoAsk}
    </button>
  );
}
