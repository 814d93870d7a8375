import { type ComponentType, type ReactNode, useId, useMemo, useState } from "react";
import { exportById } from "../../core/files/export-list.ts";
import type { Edit } from "../../core/edits/edit.ts";
import type { Read } from "../../core/model/problem.ts";
import { textOfFile } from "../../store/files/decode-file.ts";
import { Dialog } from "../form/Dialog.tsx";
import { FileField, FileProblems } from "../form/FileField.tsx";
import { makeFile } from "../form/make-file.ts";
import { commit, windowNow } from "../state/plan-actions.ts";
import * as texts from "./words.ts";

interface CsvFile {
  readonly name: string;
  readonly text: Read<string>;
}

interface CsvDialogProps<List> {
  readonly title: string;
  /** What goes out, and whether there is any. */
  readonly out: {
    readonly format: Parameters<typeof exportById>[0];
    readonly words: string;
    readonly isEmpty: boolean;
  };
  /** What a list that comes in must have and what it does. */
  readonly hint: ReactNode;
  /** What the file should be, for one that is no text. */
  readonly expected: string;
  readonly read: (text: string, fileName: string) => Read<List>;
  /** What the list would do, row by row. */
  readonly Preview: ComponentType<{ readonly list: List }>;
  /** How many rows would change the plan, as `Add 3 lots`, and the change; null: none would. */
  readonly taking: (list: List) => {
    readonly words: string;
    readonly edit: (title: string) => Edit;
  } | null;
  readonly leaveWords: string;
  /** Lines somebody could type, shown where nothing is typed yet. */
  readonly sample: string;
  readonly onClose: () => void;
}

/** A list out to a spreadsheet and back. Nothing changes before the grower has seen it. */
export function CsvDialog<List>(props: CsvDialogProps<List>) {
  const { title, out, hint, expected, read, sample, onClose } = props;
  const [file, setFile] = useState<CsvFile | null>(null);
  const list = useMemo(
    () => file && (file.text.ok ? read(file.text.value, file.name) : file.text),
    [file, read],
  );
  const hintId = useId();
  const pasteId = useId();
  const paste = (value: string) =>
    setFile(value.trim() === "" ? null : { name: texts.pastedList, text: { ok: true, value } });
  const save = async () => {
    await makeFile(exportById(out.format), { hasMark: true });
    windowNow().announce(texts.downloadStarted);
  };
  const take = async (picked: File) =>
    setFile({ name: picked.name, text: await textOfFile(picked, expected) });
  return (
    <Dialog title={title} onClose={onClose} isWide>
      {!out.isEmpty && (
        <section className="csv-part">
          <h3>{texts.outToASpreadsheet}</h3>
          <p>{out.words}</p>
          <p className="dialog-actions">
            <button type="button" onClick={() => void save()}>
              {texts.saveTheList}
            </button>
          </p>
        </section>
      )}
      <section className="csv-part">
        <h3>{texts.inFromASpreadsheet}</h3>
        <p id={hintId}>{hint}</p>
        <p>
          <FileField
            label={texts.csvFile}
            accept=".csv,.tsv,.txt,text/csv"
            describedBy={hintId}
            onPick={(picked) => void take(picked)}
          />
        </p>
        <p>
          <label htmlFor={pasteId}>{texts.orPaste}</label>
          <textarea
            id={pasteId}
            rows={4}
            placeholder={sample}
            aria-describedby={hintId}
            spellCheck={false}
            onChange={(event) => paste(event.target.value)}
          />
        </p>
        {file && list && !list.ok && <FileProblems problems={list.problems} />}
        {file && list?.ok && <Outcome {...props} fileName={file.name} list={list.value} />}
      </section>
    </Dialog>
  );
}

function Outcome<List>({
  fileName,
  list,
  Preview,
  taking,
  leaveWords,
  onClose,
}: CsvDialogProps<List> & { readonly fileName: string; readonly list: List }) {
  const taken = taking(list);
  const take = () => {
    if (taken) commit(taken.edit(texts.takenFrom(taken.words, fileName)));
    onClose();
  };
  return (
    <>
      <Preview list={list} />
      <p className="dialog-actions">
        <button type="button" className="primary" disabled={taken === null} onClick={take}>
          {taken?.words ?? texts.nothingToAdd}
        </button>
        <button type="button" onClick={onClose}>
          {leaveWords}
        </button>
      </p>
    </>
  );
}
