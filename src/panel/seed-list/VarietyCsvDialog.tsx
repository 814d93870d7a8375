import { useId, useMemo, useState } from "react";
import { putVarieties } from "../../core/edits/variety-list.ts";
import { type VarietyList, readVarietiesCsv } from "../../core/exchange/read-varieties-csv.ts";
import { exportById } from "../../core/files/all-exports.ts";
import type { Read } from "../../core/model/problem.ts";
import { textOfFile } from "../../store/files/decode-file.ts";
import { CsvPreview } from "./CsvPreview.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { FileField, FileProblems } from "../form/FileField.tsx";
import { rowsToTake, takeWords } from "./csv-words.ts";
import { makeFile } from "../form/make-file.ts";
import { commit, useKept, windowNow } from "../state/plan-actions.ts";

interface CsvFile {
  readonly name: string;
  readonly text: Read<string>;
}

/** The seed list out to a spreadsheet and back. Nothing changes before the grower has seen it. */
export function VarietyCsvDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan, book } = useKept();
  const [file, setFile] = useState<CsvFile | null>(null);
  const read = useMemo(
    () =>
      file && (file.text.ok ? readVarietiesCsv(file.text.value, file.name, plan, book) : file.text),
    [file, plan, book],
  );
  const save = async () => {
    await makeFile(exportById("varieties"), { hasMark: true });
    windowNow().announce("Download started.");
  };
  return (
    <Dialog title="Seed list as CSV" onClose={onClose} isWide>
      <section className="csv-part">
        <h3>Out to a spreadsheet</h3>
        <p>One row for each of the {plan.varieties.length} varieties, with a heading row.</p>
        <p className="dialog-actions">
          <button type="button" disabled={plan.varieties.length === 0} onClick={() => void save()}>
            Save the list
          </button>
        </p>
      </section>
      <section className="csv-part">
        <h3>In from a spreadsheet</h3>
        <FilePicker onFile={setFile} />
        {file && read && <CsvOutcome fileName={file.name} read={read} onDone={onClose} />}
      </section>
    </Dialog>
  );
}

function FilePicker({ onFile }: { readonly onFile: (file: CsvFile) => void }) {
  const id = useId();
  const take = async (picked: File) => {
    onFile({ name: picked.name, text: await textOfFile(picked, "a list of varieties as CSV") });
  };
  return (
    <>
      <p id={`${id}-hint`}>
        Headings <i>name</i> and <i>kind</i> are needed. A row whose name and kind are in the seed
        list changes that variety, others are added; empty cells leave things as they are.
      </p>
      <p>
        <FileField
          label="CSV file"
          accept=".csv,.tsv,.txt,text/csv"
          describedBy={`${id}-hint`}
          onPick={(picked) => void take(picked)}
        />
      </p>
    </>
  );
}

interface CsvOutcomeProps {
  readonly fileName: string;
  readonly read: Read<VarietyList>;
  readonly onDone: () => void;
}

function CsvOutcome({ fileName, read, onDone }: CsvOutcomeProps) {
  if (!read.ok) return <FileProblems problems={read.problems} />;
  const rows = rowsToTake(read.value);
  const take = () => {
    const title = `${takeWords(rows.length)} from ${fileName}`;
    commit(
      putVarieties(
        rows.map(({ variety }) => variety),
        title,
        read.value.newLots,
      ),
    );
    onDone();
  };
  return (
    <>
      <CsvPreview list={read.value} />
      <p className="dialog-actions">
        <button type="button" className="primary" disabled={rows.length === 0} onClick={take}>
          {rows.length === 0 ? "Nothing to take" : takeWords(rows.length)}
        </button>
        <button type="button" onClick={onDone}>
          Leave the seed list as it is
        </button>
      </p>
    </>
  );
}
