import { useId, useState } from "react";
import * as texts from "./words.ts";

/** A table copied from elsewhere: months as rows or as columns. */
export function ClimatePaste({ onPaste }: { readonly onPaste: (text: string) => void }) {
  const id = useId();
  const [text, setText] = useState("");
  return (
    <details className="climate-paste">
      <summary>{texts.pasteATable}</summary>
      <label htmlFor={id}>{texts.twelveRowsLowestHighest}</label>
      <textarea id={id} rows={4} value={text} onChange={(event) => setText(event.target.value)} />
      <p>
        <button type="button" disabled={text.trim() === ""} onClick={() => onPaste(text)}>
          {texts.fillTheTable}
        </button>
      </p>
    </details>
  );
}
