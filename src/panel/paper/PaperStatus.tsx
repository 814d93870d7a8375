import type { Making } from "../form/use-making.ts";
import { paperWords } from "./paper-words.ts";

/** How far the PDFs are, or what became of them. */
export function PaperStatus({ progress }: { readonly progress: Making<readonly string[]> }) {
  return (
    <div role="status">
      {progress.kind === "making" && (
        <>
          <p>{paperWords.making}</p>
          <progress
            aria-label={paperWords.made}
            max={1}
            value={progress.total === 0 ? undefined : progress.done / progress.total}
          />
        </>
      )}
      {progress.kind === "failed" && (
        <p className="field-reason">{paperWords.failed(progress.reason)}</p>
      )}
      {progress.kind === "made" && <p>{paperWords.done(progress.made)}</p>}
    </div>
  );
}
