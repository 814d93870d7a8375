import { useState } from "react";
import { clearDiagnostics, useDiagnostics } from "../../store/keeping/diagnostics.ts";
import { diagnosticsText } from "./diagnostics-words.ts";
import { Dialog } from "../form/Dialog.tsx";
import { downloadBytes } from "../form/download.ts";
import * as texts from "./dialog-words.ts";
import "./kept.css";

/** The log of what went wrong: to read, to copy into a letter, to clear. It stays on the device. */
export function DiagnosticsDialog({ onClose }: { readonly onClose: () => void }) {
  const entries = useDiagnostics((state) => state.entries);
  const [said, setSaid] = useState("");
  const text = diagnosticsText(entries);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setSaid(texts.copied);
    } catch {
      setSaid(texts.copyByHand);
    }
  };
  return (
    <Dialog title={texts.whatWentWrong} onClose={onClose} isWide>
      <p>{texts.noticesFaultsProgramBrowser}</p>
      {entries.length === 0 ? (
        <p className="region-empty">{texts.nothingBeenWrittenDown}</p>
      ) : (
        // A long log is scrolled with the keys.
        <pre className="diagnostics" tabIndex={0} aria-label={texts.entries}>
          {text}
        </pre>
      )}
      <p className="dialog-actions">
        <button type="button" onClick={() => void copy()} disabled={entries.length === 0}>
          {texts.copy}
        </button>
        <button
          type="button"
          disabled={entries.length === 0}
          onClick={() =>
            downloadBytes(new TextEncoder().encode(text), "wideberth-log.txt", "text/plain")
          }
        >
          {texts.saveAsAFile}
        </button>
        <button type="button" className="quiet" onClick={clearDiagnostics}>
          {texts.clear}
        </button>
        <span role="status">{said}</span>
      </p>
    </Dialog>
  );
}
