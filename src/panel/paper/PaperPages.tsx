import { useMemo, useState } from "react";
import type { PrintId } from "../../core/files/print-list.ts";
import type { PaperMade, ShownPart } from "../../store/threads/paper-job.ts";
import { paperWords } from "./paper-words.ts";
import type { LaidOut } from "./use-pages.ts";

type ShownPage = ShownPart["pages"][number];

interface PaperPagesProps {
  /** Those ticked, in order. */
  readonly parts: readonly PrintId[];
  readonly pages: LaidOut;
}

/** The pages as they will be printed, one at a time, and what to look at before. */
export function PaperPages({ parts, pages: { state, ask, stop } }: PaperPagesProps) {
  return (
    <section className="paper-pages" aria-label={paperWords.pages}>
      {ask && (
        <p className="dialog-actions">
          <button type="button" onClick={ask}>
            {paperWords.count}
          </button>
        </p>
      )}
      <div role="status">
        {state.kind === "making" && (
          <>
            <p>{paperWords.counting}</p>
            <progress
              aria-label={paperWords.counted}
              max={1}
              value={state.total === 0 ? undefined : state.done / state.total}
            />
          </>
        )}
        {state.kind === "failed" && (
          <p className="field-reason">{paperWords.notCounted(state.reason)}</p>
        )}
        {state.kind === "made" && <Remarks parts={parts} made={state.made} />}
      </div>
      {state.kind === "making" && (
        <p className="dialog-actions">
          <button type="button" onClick={stop}>
            {paperWords.stopCounting}
          </button>
        </p>
      )}
      {state.kind === "made" && <PageTurner parts={parts} made={state.made} />}
    </section>
  );
}

interface MadeProps {
  readonly parts: readonly PrintId[];
  readonly made: PaperMade;
}

function Remarks({ parts, made }: MadeProps) {
  const own = made.parts.filter(({ id }) => parts.includes(id)).flatMap((part) => part.remarks);
  const remarks = [...new Set([...made.remarks, ...own])];
  if (parts.length === 0) return <p>{paperWords.nothing}</p>;
  if (remarks.length === 0) return <p>{paperWords.clear}</p>;
  return (
    <>
      <p>{paperWords.before}</p>
      <ul className="paper-remarks">
        {remarks.map((words) => (
          <li key={words}>{/[.!?]$/.test(words) ? words : `${words}.`}</li>
        ))}
      </ul>
    </>
  );
}

function PageTurner({ parts, made }: MadeProps) {
  const [wanted, setWanted] = useState(0);
  const pages = parts.flatMap((id) => made.parts.find((part) => part.id === id)?.pages ?? []);
  const place = Math.min(wanted, pages.length - 1);
  const page = pages[place];
  if (!page) return null;
  return (
    <>
      <PagePicture page={page} />
      <p className="dialog-actions">
        <button type="button" disabled={place === 0} onClick={() => setWanted(place - 1)}>
          {paperWords.pageBefore}
        </button>
        <span role="status">{paperWords.place(page.name, place + 1, pages.length)}</span>
        <button
          type="button"
          disabled={place === pages.length - 1}
          onClick={() => setWanted(place + 1)}
        >
          {paperWords.pageNext}
        </button>
      </p>
    </>
  );
}

function PagePicture({ page }: { readonly page: ShownPage }) {
  const url = useMemo(
    () => `data:image/svg+xml;charset=utf-8,${encodeURIComponent(page.svg)}`,
    [page],
  );
  return <img className="paper-page" src={url} alt={page.name} />;
}
