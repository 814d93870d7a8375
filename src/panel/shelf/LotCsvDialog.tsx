import { useCallback } from "react";
import type { Edit } from "../../core/edits/edit.ts";
import { putLots } from "../../core/edits/lot-edits.ts";
import { putStoragePlace } from "../../core/edits/storage-edits.ts";
import { type AcceptedLot, type LotList, readLotsCsv } from "../../core/exchange/read-lots-csv.ts";
import { amountWords } from "../../core/lots/lot-words.ts";
import { CsvDialog } from "../csv/CsvDialog.tsx";
import { CsvPreview } from "../csv/CsvPreview.tsx";
import { rowsToTake } from "../csv/csv-words.ts";
import { useKept } from "../state/plan-actions.ts";
import * as texts from "./words.ts";
import { Sentence } from "../state/Sentence.tsx";

/** The shelf out to a spreadsheet and back. */
export function LotCsvDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan, book } = useKept();
  const read = useCallback(
    (text: string, fileName: string) => readLotsCsv(text, fileName, plan, book),
    [plan, book],
  );
  return (
    <CsvDialog
      title={texts.seedLotsAsCsv}
      out={{
        format: "lots",
        words: texts.rowForEach(plan.lots.length),
        isEmpty: plan.lots.length === 0,
      }}
      hint={
        <>
          <Sentence
            words={texts.headingsNeeded}
            parts={{ code: <i>{texts.codeWord}</i>, variety: <i>{texts.variety}</i> }}
          />
        </>
      }
      sample={texts.lotSample}
      expected={texts.lotListFile}
      read={read}
      Preview={Preview}
      taking={taking}
      leaveWords={texts.cancel}
      onClose={onClose}
    />
  );
}

function Preview({ list }: { readonly list: LotList }) {
  const { plan } = useKept();
  const cellsOf = ({ lot, change }: AcceptedLot) => [
    <bdi key="code">{lot.code}</bdi>,
    <bdi key="variety">{plan.varieties.find(({ id }) => id === lot.variety)?.name}</bdi>,
    amountWords(lot.amount),
    texts.effects[change],
  ];
  return (
    <CsvPreview
      list={list}
      more={placesWords(list)}
      nameHead={texts.codeColumn}
      heads={[texts.codeColumn, texts.varietyColumn, texts.amountColumn, texts.effectColumn]}
      cellsOf={cellsOf}
    />
  );
}

function placesWords({ newPlaces }: LotList): string {
  if (newPlaces.length === 0) return "";
  return ` ${texts.newPlaces(newPlaces.map(({ name }) => name))}`;
}

/** New places and all lots that change, as one step. */
function taking({ accepted, newPlaces }: LotList) {
  const lots = rowsToTake(accepted).map(({ lot }) => lot);
  if (lots.length === 0) return null;
  return {
    words: texts.addLots(lots.length),
    edit: (title: string): Edit => {
      const steps = [...newPlaces.map(putStoragePlace), putLots(lots, title)];
      return { title, apply: (before) => steps.reduce((plan, step) => step.apply(plan), before) };
    },
  };
}
