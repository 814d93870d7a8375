import type { LabelPlots } from "../../core/labels/label-plots.ts";
import type { LabelTarget } from "../../core/labels/read-label.ts";
import type { Planting } from "../../core/model/plan.ts";
import { planNow } from "../state/plan-actions.ts";
import { lineDialog } from "../generations/dialogs.ts";
import { goOn, openLot, openPlot } from "./scan-openings.ts";

interface FoundProps {
  readonly found: LabelTarget;
  readonly plots: LabelPlots;
  /** Id of the layout on screen. */
  readonly shownId: string;
  readonly onClose: () => void;
  readonly onAgain: () => void;
}

/** What a code names, where that is not opened at once. */
export function ScanFound({ found, plots, shownId, onClose, onAgain }: FoundProps) {
  const { lots, planting, bed, layout, missing } = found;
  const plot = planting ?? bed;
  const other = layout && layout.id !== shownId ? layout : null;
  const turnTo = (id: string, open: (id: string, onClose: () => void) => void) => {
    if (other) planNow().showLayout(other.id);
    open(id, onClose);
  };
  return (
    <div role="status">
      {missing.length > 0 && (
        <p className="field-reason">
          {missing.join(", ")}: not in this plan, nor in any of its layouts. The label may be of
          another plan or an earlier season: plots of other seasons bear the same codes.
        </p>
      )}
      {planting && !plots.isOfPlot && (
        <p className="caution-text">
          {planting.code} is not sown from that lot. A packet names the plot it was harvested from.
        </p>
      )}
      <p className="dialog-actions">
        {lots.map(({ id, code }) => (
          <button key={id} type="button" onClick={() => openLot(id, onClose)}>
            Open lot {code}
          </button>
        ))}
        {lots.map(({ id, code, variety }) => (
          <button
            key={id}
            type="button"
            onClick={() => lineDialog.open({ varietyId: variety, lotId: id })}
          >
            Line of {code}
          </button>
        ))}
        {plot && (
          <button type="button" onClick={() => turnTo(plot.id, openPlot)}>
            Show {planting ? "plot" : "bed"} {plot.code}
            {other && ` in the layout ${other.name}`}
          </button>
        )}
        {planting && (
          <button type="button" onClick={() => turnTo(planting.id, goOn)}>
            Walk to {planting.code}
          </button>
        )}
        <WhereSown plots={plots.sown.filter(({ id }) => id !== planting?.id)} onClose={onClose} />
        <button type="button" className="quiet" onClick={onAgain}>
          Scan again
        </button>
      </p>
    </div>
  );
}

interface WhereSownProps {
  readonly plots: readonly Planting[];
  readonly onClose: () => void;
}

function WhereSown({ plots, onClose }: WhereSownProps) {
  return plots.map(({ id, code }) => (
    <button key={id} type="button" onClick={() => goOn(id, onClose)}>
      Walk to {code}, sown from it
    </button>
  ));
}
