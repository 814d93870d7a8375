import { useMemo, useState } from "react";
import { breedingOf } from "../../core/generations/breeding.ts";
import { lineBook } from "../../core/generations/line.ts";
import type { LineLot } from "../../core/generations/line-lot.ts";
import { plannedGrowings } from "../../core/generations/planned-growing.ts";
import { civilFromDay } from "../../core/model/day.ts";
import { Dialog } from "../form/Dialog.tsx";
import { lotsNow } from "../state/lots-state.ts";
import { useKept } from "../state/plan-actions.ts";
import { viewNow } from "../state/view-state.ts";
import { LineDrawing } from "./LineDrawing.tsx";
import { LineTable } from "./LineTable.tsx";
import { drawLine, lotsOfLine } from "./line-drawing.ts";
import { breedingWords, pastSentences, plannedSentences } from "./line-words.ts";
import * as texts from "./words.ts";
import "./generations.css";

interface LineDialogProps {
  readonly varietyId: string;
  /** The lot that is looked back from; null: the last of the line. */
  readonly lotId: string | null;
  readonly onClose: () => void;
}

/** The lots of a variety through the years, with plants, isolation and effective population at each step. */
export function LineDialog({ varietyId, lotId, onClose }: LineDialogProps) {
  const { plan, layout, book } = useKept();
  const [picked, setPicked] = useState(lotId);
  const variety = plan.varieties.find(({ id }) => id === varietyId);
  const kind = variety && book.kind(variety.kind);
  const { lots, planned, drawing, loops } = useMemo(() => {
    const lines = lineBook(plan, book);
    const all = lotsOfLine(lines.ofVariety(varietyId));
    const plans = plannedGrowings(plan, layout, varietyId, { lines, book });
    const year = civilFromDay(plan.season.first).year;
    const broken = plan.lots.filter(
      ({ id, variety: of }) => of === varietyId && lines.broken.has(id),
    );
    return {
      lots: all,
      planned: plans,
      drawing: drawLine(all, plans, year),
      loops: broken.length === 0 ? [] : lines.loops,
    };
  }, [plan, layout, book, varietyId]);
  const line = lots.find(({ lot }) => lot.id === picked) ?? lots.at(-1);
  return (
    <Dialog title={texts.lineOf(variety?.name ?? "")} isWide onClose={onClose}>
      {loops.map((loop) => (
        <p key={loop[0]?.id} className="caution-text" role="alert">
          {texts.ownForebear([...loop, loop[0]].map((lot) => lot?.code ?? ""))}
        </p>
      ))}
      {lots.length === 0 && planned.length === 0 ? (
        <p className="region-empty">{texts.noLotShelfNo}</p>
      ) : (
        <>
          <LineDrawing drawing={drawing} pickedId={line?.lot.id ?? null} onPick={setPicked} />
          {kind && <p className="field-hint">{breedingWords(breedingOf(kind), kind)}</p>}
          {line && <LinePast line={line} onOpen={onClose} />}
          {planned.length > 0 && (
            <>
              <h3>{texts.thisSeason}</h3>
              {planned.flatMap(plannedSentences).map((words) => (
                <p key={words}>{words}</p>
              ))}
            </>
          )}
          <LineTable
            lots={lots}
            planned={planned}
            pickedId={line?.lot.id ?? null}
            onPick={setPicked}
          />
        </>
      )}
    </Dialog>
  );
}

function LinePast({ line, onOpen }: { readonly line: LineLot; readonly onOpen: () => void }) {
  const { lot } = line;
  const open = () => {
    lotsNow().openLot(lot.id);
    viewNow().showView("lots");
    onOpen();
  };
  return (
    <section aria-label={texts.whatHasBehindIt(lot.code)}>
      <h3>
        {texts.what}
        <span className="code">{lot.code}</span>
        {texts.hasBehindIt}
      </h3>
      <ul className="line-past">
        {pastSentences(line).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      <p>
        <button type="button" onClick={open}>
          {texts.openLot(lot.code)}
        </button>
      </p>
    </section>
  );
}
