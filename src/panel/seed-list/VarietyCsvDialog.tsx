import { useCallback } from "react";
import { putVarieties } from "../../core/edits/variety-list.ts";
import {
  type AcceptedRow,
  type VarietyList,
  readVarietiesCsv,
} from "../../core/exchange/read-varieties-csv.ts";
import type { Kind } from "../../core/kinds/crop.ts";
import { CsvDialog } from "../csv/CsvDialog.tsx";
import { CsvPreview } from "../csv/CsvPreview.tsx";
import { rowsToTake } from "../csv/csv-words.ts";
import { useKept } from "../state/plan-actions.ts";
import { rowEffect, takeWords } from "./csv-words.ts";
import * as texts from "./dialog-words.ts";
import { Sentence } from "../state/Sentence.tsx";

/** The seed list out to a spreadsheet and back. */
export function VarietyCsvDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan, book } = useKept();
  const read = useCallback(
    (text: string, fileName: string) => readVarietiesCsv(text, fileName, plan, book),
    [plan, book],
  );
  return (
    <CsvDialog
      title={texts.seedListAsCsv}
      out={{
        format: "varieties",
        words: texts.rowForEach(plan.varieties.length),
        isEmpty: plan.varieties.length === 0,
      }}
      hint={
        <>
          <Sentence
            words={texts.headingsNeeded}
            parts={{ name: <i>{texts.nameHeading}</i>, kind: <i>{texts.kindHeading}</i> }}
          />
        </>
      }
      sample={texts.varietySample}
      expected={texts.varietyList}
      read={read}
      Preview={Preview}
      taking={taking}
      leaveWords={texts.cancel}
      onClose={onClose}
    />
  );
}

function Preview({ list }: { readonly list: VarietyList }) {
  const { book } = useKept();
  const cellsOf = ({ variety, ...row }: AcceptedRow) => [
    <bdi key="name">{variety.name}</bdi>,
    <KindNamed key="kind" kind={book.kind(variety.kind)} />,
    variety.wantedPlants,
    rowEffect(row),
  ];
  return (
    <CsvPreview
      list={list}
      nameHead={texts.nameColumn}
      heads={[texts.nameColumn, texts.kindColumn, texts.plantsColumn, texts.effectColumn]}
      cellsOf={cellsOf}
    />
  );
}

/** With its botanical name: what crosses goes by that, and common names mean several. */
function KindNamed({ kind }: { readonly kind: Kind | undefined }) {
  return (
    <>
      {kind?.name} <i className="soft">{kind?.botanicalName}</i>
    </>
  );
}

function taking({ accepted, newLots }: VarietyList) {
  const varieties = rowsToTake(accepted).map(({ variety }) => variety);
  if (varieties.length === 0) return null;
  return {
    words: takeWords(varieties.length),
    edit: (title: string) => putVarieties(varieties, title, newLots),
  };
}
