import type { Making } from "../form/use-making.ts";
import type { MadePlotMap } from "./make-plot-map.ts";

/** How far the map is, or what became of it. */
export function PlotMapStatus({ progress }: { readonly progress: Making<MadePlotMap> }) {
  return (
    <div className="plot-map-status" role="status">
      <StatusText progress={progress} />
    </div>
  );
}

function StatusText({ progress }: { readonly progress: Making<MadePlotMap> }) {
  switch (progress.kind) {
    case "idle":
      return null;
    case "making":
      return (
        <>
          <p>Making the map ...</p>
          {progress.total > 0 ? (
            <progress aria-label="Sheets made" value={progress.done} max={progress.total} />
          ) : (
            <progress aria-label="Getting ready" />
          )}
        </>
      );
    case "failed":
      return <p className="field-reason">The map was not made: {progress.reason}</p>;
    case "made": {
      const { fileName, pages, unplacedLabels } = progress.made;
      return (
        <>
          <p>
            Made {fileName}, {pages === 1 ? "1 page" : `${pages} pages`}. Measure the check bar on
            the print before using it.
          </p>
          {unplacedLabels.length > 0 && (
            <p>No room on the map for: {unplacedLabels.join(", ")}. They stand in the plot list.</p>
          )}
        </>
      );
    }
  }
}
