import { useEffect, useRef, useState } from "react";
import { type LabelPlots, labelPlots } from "../../core/labels/label-plots.ts";
import { type LabelTarget, readLabel } from "../../core/labels/read-label.ts";
import { Dialog } from "../form/Dialog.tsx";
import { checkedNow, planNow, useKept, windowNow } from "../state/plan-actions.ts";
import { viewNow } from "../state/view-state.ts";
import { lineDialog } from "../generations/dialogs.ts";
import { walkTo } from "../state/walk-place.ts";
import { lotsNow } from "../state/lots-state.ts";
import "./scan.css";

interface ScanDialogProps {
  /** On a walk a plot's code leads on to that plot. */
  readonly isForWalk: boolean;
  readonly onClose: () => void;
}

/** Reads the square code of a packet or stake, by camera or typed, and opens what it names. */
export function ScanDialog({ isForWalk, onClose }: ScanDialogProps) {
  const { plan, layout } = useKept();
  const [text, setText] = useState("");
  const [found, setFound] = useState<LabelTarget | null>(null);
  const take = (code: string) => {
    const kept = checkedNow();
    const target = readLabel(code, kept.plan, kept.layout);
    const [lot] = target.lots;
    const sheetId = target.planting?.id ?? target.bed?.id;
    const isOnScreen = target.layout?.id === kept.layout.id;
    const isWhole = target.missing.length === 0;
    const { isOfPlot } = labelPlots(target, kept.plan, kept.layout);
    // One thing named: it is opened at once. Several, or a plot of another layout: the person chooses.
    if (isForWalk) {
      if (target.planting && isOfPlot && isOnScreen && isWhole) goOn(target.planting.id, onClose);
      else setFound(target);
    } else if (target.lots.length === 1 && lot && sheetId === undefined && isWhole) {
      openLot(lot.id, onClose);
    } else if (target.lots.length === 0 && sheetId !== undefined && isOnScreen && isWhole) {
      openPlot(sheetId, onClose);
    } else setFound(target);
  };
  return (
    <Dialog title="Scan a packet or stake" onClose={onClose}>
      <Camera onCode={take} isPaused={found !== null} />
      <form
        className="fields scan-typed"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          if (text.trim() !== "") take(text);
        }}
      >
        <div className="field">
          <label htmlFor="scan-code">Or type the code</label>
          <div className="field-control">
            <input
              id="scan-code"
              type="text"
              autoComplete="off"
              spellCheck={false}
              value={text}
              onChange={(event) => {
                setText(event.target.value);
                setFound(null);
              }}
            />
            <button type="submit">Open</button>
          </div>
        </div>
      </form>
      {found && (
        <Found
          found={found}
          plots={labelPlots(found, plan, layout)}
          shownId={layout.id}
          onClose={onClose}
          onAgain={() => setFound(null)}
        />
      )}
    </Dialog>
  );
}

interface CameraProps {
  readonly onCode: (text: string) => void;
  readonly isPaused: boolean;
}

function Camera({ onCode, isPaused }: CameraProps) {
  const video = useRef<HTMLVideoElement>(null);
  const [fault, setFault] = useState<string | null>(null);
  const handler = useRef<(text: string) => void>(() => undefined);
  useEffect(() => {
    handler.current = isPaused ? () => undefined : onCode;
  });
  useEffect(() => {
    let isGone = false;
    let stop = () => undefined as void;
    const start = async () => {
      const reader = await import("./read-camera.ts").catch(() => null);
      if (!reader) return setFault("The reader could not be loaded. Type the code.");
      const element = video.current;
      if (isGone || !element) return;
      try {
        const camera = await reader.startCamera(element, (text) => handler.current(text));
        if (isGone) camera.stop();
        else ({ stop } = camera);
      } catch (error) {
        if (!isGone) setFault(reader.cameraFault(error));
      }
    };
    void start();
    return () => {
      isGone = true;
      stop();
    };
  }, []);
  if (fault !== null) {
    return (
      <p className="caution-text" role="status">
        {fault}
      </p>
    );
  }
  return (
    <>
      <video
        ref={video}
        className="scan-video"
        muted
        playsInline
        aria-label="What the camera sees"
      />
      <p className="field-hint">
        Hold the square code of a packet or stake before the camera. The picture stays in this
        browser.
      </p>
    </>
  );
}

function openLot(id: string, onClose: () => void): void {
  lotsNow().openLot(id);
  viewNow().showView("lots");
  onClose();
}

function goOn(id: string, onClose: () => void): void {
  walkTo(id);
  onClose();
}

function openPlot(id: string, onClose: () => void): void {
  windowNow().select([id]);
  windowNow().bringIntoView([id]);
  viewNow().showSheet();
  onClose();
}

interface FoundProps {
  readonly found: LabelTarget;
  readonly plots: LabelPlots;
  /** Id of the layout on screen. */
  readonly shownId: string;
  readonly onClose: () => void;
  readonly onAgain: () => void;
}

function Found({ found, plots, shownId, onClose, onAgain }: FoundProps) {
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
        {plots.sown
          .filter(({ id }) => id !== planting?.id)
          .map(({ id, code }) => (
            <button key={id} type="button" onClick={() => goOn(id, onClose)}>
              Walk to {code}, sown from it
            </button>
          ))}
        <button type="button" className="quiet" onClick={onAgain}>
          Scan again
        </button>
      </p>
    </div>
  );
}
