import { useEffect, useRef, useState } from "react";
import { labelPlots } from "../../core/labels/label-plots.ts";
import { type LabelTarget, readLabel } from "../../core/labels/read-label.ts";
import { Dialog } from "../form/Dialog.tsx";
import { checkedNow, useKept } from "../state/plan-actions.ts";
import { ScanFound } from "./ScanFound.tsx";
import { goOn, openLot, openPlot } from "./scan-openings.ts";
import * as texts from "./words.ts";
import "./scan.css";

interface ScanDialogProps {
  /** On a walk a plot's code leads on to that plot. */
  readonly isForWalk: boolean;
  readonly onClose: () => void;
}

/** Reads the square code of a packet or stake, by camera or typed, and opens what it names. */
export function ScanDialog({ isForWalk, onClose }: ScanDialogProps) {
  const { plan, layout } = useKept();
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
    <Dialog title={texts.scanPacketStake} onClose={onClose}>
      <Camera onCode={take} isPaused={found !== null} />
      <TypedCode onCode={take} onType={() => setFound(null)} />
      {found && (
        <ScanFound
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

interface TypedCodeProps {
  readonly onCode: (text: string) => void;
  readonly onType: () => void;
}

function TypedCode({ onCode, onType }: TypedCodeProps) {
  const [text, setText] = useState("");
  return (
    <form
      className="fields scan-typed"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() !== "") onCode(text);
      }}
    >
      <div className="field">
        <label htmlFor="scan-code">{texts.orTypeTheCode}</label>
        <div className="field-control">
          <input
            id="scan-code"
            type="text"
            autoComplete="off"
            spellCheck={false}
            value={text}
            onChange={(event) => {
              setText(event.target.value);
              onType();
            }}
          />
          <button type="submit">{texts.open}</button>
        </div>
      </div>
    </form>
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
      if (!reader) return setFault(texts.readerNotLoaded);
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
        aria-label={texts.whatTheCameraSees}
      />
      <p className="field-hint">{texts.holdSquareCodePacket}</p>
    </>
  );
}
