import { useId, useState } from "react";

/** A table copied from elsewhere: months as rows or as columns. */
export function ClimatePaste({ onPaste }: { readonly onPaste: (text: string) => void }) {
  const id = useId();
  const [text, setText] = useState("");
  return (
    <details className="climate-paste">
      <summary>Paste a table</summary>
      <label htmlFor={id}>
        Twelve rows of lowest and highest, or two rows of twelve months; names and yearly means may
        stand beside.
      </label>
      <textarea id={id} rows={4} value={text} onChange={(event) => setText(event.target.value)} />
      <p>
        <button type="button" disabled={text.trim() === ""} onClick={() => onPaste(text)}>
          Fill the table
        </button>
      </p>
    </details>
  );
}
