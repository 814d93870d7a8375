import { useId, useState } from "react";
import { Dialog } from "../form/Dialog.tsx";
import { viewNow } from "../state/view-state.ts";
import { pasteText } from "./clipboard-actions.ts";

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
    <Dialog title="Paste from a text" onClose={onClose}>
      <div className="fields">
        <p id={`${id}-hint`}>
          Beds, plantings and surroundings copied in a plan are text. Paste that text here, with
          Ctrl or Cmd + V or by pressing and holding.
        </p>
        <textarea
          className="wide"
          rows={6}
          aria-label="Copied text"
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
            Paste into this layout
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
    <Dialog title="Copy this text" onClose={onClose}>
      <div className="fields">
        <p>
          The browser does not let the program write to the clipboard. Copy this text by hand, then
          use Paste from a text.
        </p>
        <textarea
          className="wide"
          rows={6}
          readOnly
          aria-label="Text to copy"
          value={text}
          onFocus={(event) => event.currentTarget.select()}
        />
      </div>
    </Dialog>
  );
}
