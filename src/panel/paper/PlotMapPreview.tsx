import { useMemo, useState } from "react";
import { useMaking } from "../form/use-making.ts";
import type { PlotMapChoice } from "./make-plot-map.ts";
import { type PlotPreview, type PreviewPage, makePlotPreview } from "./make-plot-preview.ts";

/** The pages as they will be printed, one at a time, and what to look at before. */
export function PlotMapPreview({ choice }: { readonly choice: PlotMapChoice }) {
  const { state, start, cancel } = useMaking<PlotPreview>();
  const make = () => start((onProgress, signal) => makePlotPreview(choice, onProgress, signal));
  return (
    <section className="plot-preview" aria-label="Pages">
      {state.kind !== "made" && (
        <p className="dialog-actions">
          <button type="button" disabled={state.kind === "making"} onClick={() => void make()}>
            Show the pages
          </button>
          {state.kind === "making" && (
            <button type="button" onClick={cancel}>
              Stop drawing
            </button>
          )}
        </p>
      )}
      <div role="status">
        {state.kind === "making" && (
          <>
            <p>Drawing the pages ...</p>
            {state.total > 0 ? (
              <progress aria-label="Sheets drawn" value={state.done} max={state.total} />
            ) : (
              <progress aria-label="Getting the pages ready" />
            )}
          </>
        )}
        {state.kind === "failed" && (
          <p className="field-reason">The pages were not drawn: {state.reason}</p>
        )}
        {state.kind === "made" && <ProblemList problems={state.made.problems} />}
      </div>
      {state.kind === "made" && <PageTurner pages={state.made.pages} />}
    </section>
  );
}

function ProblemList({ problems }: { readonly problems: readonly string[] }) {
  if (problems.length === 0) return <p>Nothing stands in the way of printing.</p>;
  return (
    <>
      <p>Before printing:</p>
      <ul style={{ margin: 0, paddingLeft: "1.4em" }}>
        {problems.map((problem) => (
          <li key={problem}>{problem}</li>
        ))}
      </ul>
    </>
  );
}

function PageTurner({ pages }: { readonly pages: readonly PreviewPage[] }) {
  const [place, setPlace] = useState(0);
  const page = pages[place];
  if (!page) return null;
  return (
    <>
      <PagePicture page={page} />
      <p className="dialog-actions">
        <button type="button" disabled={place === 0} onClick={() => setPlace(place - 1)}>
          Page before
        </button>
        <span role="status">
          {page.name}, {place + 1} of {pages.length}
        </span>
        <button
          type="button"
          disabled={place === pages.length - 1}
          onClick={() => setPlace(place + 1)}
        >
          Next page
        </button>
      </p>
    </>
  );
}

function PagePicture({ page }: { readonly page: PreviewPage }) {
  const url = useMemo(
    () => `data:image/svg+xml;charset=utf-8,${encodeURIComponent(page.svg)}`,
    [page],
  );
  return (
    <img
      src={url}
      alt={page.name}
      style={{ display: "block", width: "100%", border: "1px solid currentColor" }}
    />
  );
}
