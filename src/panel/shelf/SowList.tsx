import { useMemo } from "react";
import { type SowingRow, sowingRows } from "../../core/lots/sowing.ts";
import { sowingDayWords } from "../../core/lots/lot-words.ts";
import { exportById } from "../../core/files/export-list.ts";
import { makeFile } from "../form/make-file.ts";
import { useMaking } from "../form/use-making.ts";
import { useKept, windowNow } from "../state/plan-actions.ts";
import { viewNow } from "../state/view-state.ts";
import { sownFromDialog } from "./commands.ts";
import { useRovingRows } from "../state/roving-rows.ts";
import { SowingRules } from "./SowingRules.tsx";
import { sowingCautions, sowingWords } from "./sowing-words.ts";
import * as texts from "./words.ts";

/** What to sow for each planting of the layout on screen, in order of the day. */
export function SowList() {
  const { plan, layout, book } = useKept();
  const rows = useMemo(() => sowingRows(plan, layout, book), [plan, layout, book]);
  const roving = useRovingRows();
  return (
    <div className="lots-scroll">
      <SowingRules />
      {rows.length === 0 ? (
        <p className="region-empty">{texts.nothingSownLayoutYet}</p>
      ) : (
        <>
          <SowingFiles />
          <ul className="plain-list list-rows" aria-label={texts.toSow} {...roving}>
            {rows.map((row) => (
              <SowLine key={row.planting.id} row={row} />
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

function SowingFiles() {
  const { state, start } = useMaking<string>();
  const save = (id: "sowing-list" | "sowing-csv") =>
    void start(async () => {
      const made = await makeFile(exportById(id), { hasMark: id === "sowing-csv" });
      windowNow().announce(texts.downloadStarted);
      return made?.name ?? null;
    });
  return (
    <p className="lots-files">
      <button type="button" disabled={state.kind === "making"} onClick={() => save("sowing-list")}>
        {texts.sowingListAsPdf}
      </button>
      <button type="button" disabled={state.kind === "making"} onClick={() => save("sowing-csv")}>
        {texts.sowingListAsCsv}
      </button>
      {state.kind === "failed" && <span className="field-reason">{state.reason}</span>}
    </p>
  );
}

function SowLine({ row }: { readonly row: SowingRow }) {
  const { planting, variety, kind } = row;
  const show = () => {
    windowNow().select([planting.id]);
    windowNow().bringIntoView([planting.id]);
    viewNow().showSheet();
  };
  return (
    <li className="list-row" data-row="">
      <p className="list-row-head">
        <span className="code">{planting.code}</span>{" "}
        <b>
          <bdi>{variety.name}</bdi>
        </b>{" "}
        <span className="soft">{kind.name}</span>
        <span>{sowingDayWords(row)}</span>
      </p>
      <p>{sowingWords(row)}</p>
      {sowingCautions(row).map((caution) => (
        <p key={caution} className="caution-text">
          ! {caution}
        </p>
      ))}
      <div className="list-row-actions">
        <button
          type="button"
          aria-label={texts.chooseLotsFor(planting.code)}
          onClick={() => sownFromDialog.open({ plantingId: planting.id })}
        >
          {texts.chooseLots}
        </button>
        <button
          type="button"
          className="link"
          aria-label={texts.showOnTheSheet(planting.code)}
          onClick={show}
        >
          {texts.showOnTheSheet2}
        </button>
      </div>
    </li>
  );
}
