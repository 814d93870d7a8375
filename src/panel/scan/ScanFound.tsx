import type { LabelPlots } from "../../core/labels/label-plots.ts";
import type { LabelTarget } from "../../core/labels/read-label.ts";
import type { Planting } from "../../core/model/plan.ts";
import { planNow } from "../state/plan-actions.ts";
import { lineDialog } from "../generations/dialogs.ts";
import { goOn, openLot, openPlot } from "./scan-openings.ts";
import * as texts from "./words.ts";

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
        <p className="field-reason">{texts.notPlanNorAny(missing.join(", "))}</p>
      )}
      {planting && !plots.isOfPlot && (
        <p className="caution-text">{texts.notSownLotPacket(planting.code)}</p>
      )}
      <p className="dialog-actions">
        {lots.map(({ id, code }) => (
          <button key={id} type="button" onClick={() => openLot(id, onClose)}>
            {texts.openLot(code)}
          </button>
        ))}
        {lots.map(({ id, code, variety }) => (
          <button
            key={id}
            type="button"
            onClick={() => lineDialog.open({ varietyId: variety, lotId: id })}
          >
            {texts.lineOf(code)}
          </button>
        ))}
        {plot && (
          <button type="button" onClick={() => turnTo(plot.id, openPlot)}>
            {texts.show}
            {planting ? texts.plot : texts.bed} {plot.code}
            {other && texts.inTheLayout(other.name)}
          </button>
        )}
        {planting && (
          <button type="button" onClick={() => turnTo(planting.id, goOn)}>
            {texts.walkTo(planting.code)}
          </button>
        )}
        <WhereSown plots={plots.sown.filter(({ id }) => id !== planting?.id)} onClose={onClose} />
        <button type="button" className="quiet" onClick={onAgain}>
          {texts.scanAgain}
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
      {texts.walkSown(code)}
    </button>
  ));
}
