import { useId, useMemo, useState } from "react";
import type { Edit } from "../../core/edits/edit.ts";
import { putLots } from "../../core/edits/lot-edits.ts";
import { putStoragePlace } from "../../core/edits/storage-edits.ts";
import { type LotList, readLotsCsv } from "../../core/exchange/read-lots-csv.ts";
import { exportById } from "../../core/files/all-exports.ts";
import type { Read } from "../../core/model/problem.ts";
import { textOfFile } from "../../store/files/decode-file.ts";
import { Dialog } from "../form/Dialog.tsx";
import { FileField, FileProblems } from "../form/FileField.tsx";
import { makeFile } from "../form/make-file.ts";
import { commit, useKept, windowNow } from "../state/plan-actions.ts";
import { LotCsvPreview, lotsWords } from "./LotCsvPreview.tsx";

interface CsvFile {
  readonly name: string;
  readonly text: Read<string>;
}

/** The shelf out to a spreadsheet and back. Nothing changes before the grower has seen it. */
export function LotCsvDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan, book } = useKept();
  const [file, setFile] = useState<CsvFile | null>(null);
  const read = useMemo(
    () => file && (file.text.ok ? readLotsCsv(file.text.value, file.name, plan, book) : file.text),
    [file, plan, book],
  );
  const save = async () => {
    await makeFile(exportById("lots"), { hasMark: true });
    windowNow().announce("Download started.");
  };
  const hintId = useId();
  const take = async (picked: File) =>
    setFile({ name: picked.name, text: await textOfFile(picked, "a list of lots as CSV") });
  return (
    <Dialog title="Seed lots as CSV" onClose={onClose} isWide>
      <section className="csv-part">
        <h3>Out to a spreadsheet</h3>
        <p>One row for each of the {plan.lots.length} lots, with a heading row.</p>
        <p className="dialog-actions">
          <button type="button" disabled={plan.lots.length === 0} onClick={() => void save()}>
            Save the list
          </button>
        </p>
      </section>
      <section className="csv-part">
        <h3>In from a spreadsheet</h3>
        <p id={hintId}>
          Headings <i>code</i> and <i>variety</i> are needed. A row whose code is on the shelf
          changes that lot, others are added; empty cells leave things as they are.
        </p>
        <p>
          <FileField
            label="CSV file"
            accept=".csv,.tsv,.txt,text/csv"
            describedBy={hintId}
            onPick={(picked) => void take(picked)}
          />
        </p>
        {file && read && <Outcome fileName={file.name} read={read} onDone={onClose} />}
      </section>
    </Dialog>
  );
}

interface OutcomeProps {
  readonly fileName: string;
  readonly read: Read<LotList>;
  readonly onDone: () => void;
}

function Outcome({ fileName, read, onDone }: OutcomeProps) {
  if (!read.ok) return <FileProblems problems={read.problems} />;
  const list = read.value;
  const count = list.accepted.filter(({ change }) => change !== "same").length;
  const take = () => {
    commit(takeLots(list, `Take ${lotsWords(count)} from ${fileName}`));
    onDone();
  };
  return (
    <>
      <LotCsvPreview list={list} />
      <p className="dialog-actions">
        <button type="button" className="primary" disabled={count === 0} onClick={take}>
          {count === 0 ? "Nothing to take" : `Take ${lotsWords(count)}`}
        </button>
        <button type="button" onClick={onDone}>
          Leave the shelf as it is
        </button>
      </p>
    </>
  );
}

/** New places and all lots that change, as one step. */
function takeLots({ accepted, newPlaces }: LotList, title: string): Edit {
  const lots = accepted.filter(({ change }) => change !== "same").map(({ lot }) => lot);
  const steps = [...newPlaces.map(putStoragePlace), putLots(lots, title)];
  return { title, apply: (plan) => steps.reduce((before, step) => step.apply(before), plan) };
}
