import { useId, useState } from "react";
import type { Trace } from "../../core/outlines/trace.ts";
import type { Read } from "../../core/model/problem.ts";
import { readOutlineFile } from "../../store/threads/outline-import.ts";
import { Dialog } from "../form/Dialog.tsx";
import { FileField, FileProblems } from "../form/FileField.tsx";
import { OutlineImportChoices } from "./OutlineImportChoices.tsx";
import * as texts from "./words.ts";

interface OutlineFile {
  readonly name: string;
  readonly read: Read<readonly Trace[]>;
}

/** Outlines walked with a receiver or drawn in a map program. Nothing changes before it is taken. */
export function OutlineImportDialog({ onClose }: { readonly onClose: () => void }) {
  const id = useId();
  const [file, setFile] = useState<OutlineFile | null>(null);
  const [isReading, setReading] = useState(false);
  const take = async (picked: File) => {
    setReading(true);
    setFile({ name: picked.name, read: await readOutlineFile(picked) });
    setReading(false);
  };
  return (
    <Dialog title={texts.outlinesGpsMapProgram} onClose={onClose} isWide>
      <section className="csv-part">
        <p id={`${id}-hint`}>{texts.gpxFileTracksRoutes}</p>
        <p>
          <FileField
            label={texts.gpxOrGeojsonFile}
            accept=".gpx,.geojson,.json,application/gpx+xml,application/geo+json"
            describedBy={`${id}-hint`}
            onPick={(picked) => void take(picked)}
          />
        </p>
        {isReading && <p role="status">{texts.reading}</p>}
        {!isReading && file && !file.read.ok && <FileProblems problems={file.read.problems} />}
        {!isReading && file?.read.ok === true && (
          <OutlineImportChoices fileName={file.name} traces={file.read.value} onDone={onClose} />
        )}
      </section>
    </Dialog>
  );
}
