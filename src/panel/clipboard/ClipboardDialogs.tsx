import { useId, useState } from "react";
import { Dialog } from "../form/Dialog.tsx";
import { viewNow } from "../state/view-state.ts";
import { pasteText } from "./clipboard-actions.ts";
import * as texts from "./words.ts";

interface PasteDialogProps {
  /** Why the clipboard would not do, or null when the text was asked for. */
  readonly reason: string | null;
  readonly onClose: () => void;
}

/** Pasting from a text area, where the browser keeps the clipboard from the program. */
export function PasteDialog({ reason, onClose }: PasteDialogProps) {
  const [text, setText] = useState("");
  const [refusal, setRefusal] = useState(reason);
  const id = useId();
  const paste = () => {
    const problem = pasteText(text);
    if (problem !== null) setRefusal(problem);
    // A question about kinds has taken this dialog's place.
    else if (viewNow().dialog?.name === "paste-text") onClose();
  };
  return (
    <Dialog title={texts.pasteFromAText} onClose={onClose}>
      <div className="fields">
        <p id={`${id}-hint`}>{texts.pasteHint}</p>
        <textarea
          className="wide"
          rows={6}
          aria-label={texts.copiedText}
          aria-describedby={`${id}-hint`}
          spellCheck={false}
          value={text}
          onChange={(event) => setText(event.target.value)}
        />
        {refusal !== null && (
          <p className="field-reason" role="alert">
            {refusal}
          </p>
        )}
        <p className="dialog-actions">
          <button type="button" className="primary" onClick={paste}>
            {texts.pasteIntoThisLayout}
          </button>
        </p>
      </div>
    </Dialog>
  );
}

interface CopiedTextDialogProps {
  readonly text: string;
  readonly onClose: () => void;
}

/** The text to copy by hand, where the browser keeps the clipboard from the program. */
export function CopiedTextDialog({ text, onClose }: CopiedTextDialogProps) {
  return (
    <Dialog title={texts.copyThisText} onClose={onClose}>
      <div className="fields">
        <p>{texts.clipboardWriteRefused}</p>
        <textarea
          className="wide"
          rows={6}
          readOnly
          aria-label={texts.textToCopy}
          value={text}
          onFocus={(event) => event.currentTarget.select()}
        />
      </div>
    </Dialog>
  );
}
