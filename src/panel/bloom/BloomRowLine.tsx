import { memo } from "react";
import type { Hatch } from "../../core/page/hatch.ts";
import { BloomGrip } from "./BloomGrip.tsx";
import { HatchRect } from "../state/HatchSwatch.tsx";
import { windowNow } from "../state/plan-actions.ts";
import { usePreferences } from "../state/preferences.ts";

interface BloomRowLineProps {
  readonly id: string;
  readonly code: string;
  readonly name: string;
  /** The row for those who do not see it. */
  readonly words: string;
  readonly hatch: Hatch | undefined;
  readonly isSelected: boolean;
  /** On what the window rests. */
  readonly basis: string;
  /** Windows as `start,width` in percent; several with spaces between. */
  readonly likely: string;
  readonly outer: string;
  readonly overlaps: string;
  readonly otherOverlaps: string;
  /** `sown 28 May`; empty where no start moves the bloom. */
  readonly startText: string;
  readonly start: number;
  readonly earliest: number;
  readonly latest: number;
  readonly flower: number;
  readonly axisDays: number;
}

function place(span: string): { readonly x: string; readonly width: string } {
  const [start = "0", width = "0"] = span.split(",");
  return { x: `${start}%`, width: `${width}%` };
}

/** One planting's windows. */
export const BloomRowLine = memo(function BloomRowLine(props: BloomRowLineProps) {
  const { id, code, name, words, hatch, isSelected, likely, outer, overlaps, startText } = props;
  const theme = usePreferences((state) => state.theme);
  const bar = place(likely);
  return (
    <>
      <button
        type="button"
        className="bloom-code"
        aria-pressed={isSelected}
        aria-label={words}
        title={`${code} ${name}`}
        onClick={() => windowNow().select([id])}
      >
        {code} <span className="bloom-name">{name}</span>
      </button>
      <div className="bloom-track">
        <svg className="bloom-bars" width="100%" height="22" aria-hidden="true" focusable="false">
          <rect className="bloom-outer" {...place(outer)} y={4.5} height={11} />
          <HatchRect hatch={hatch} theme={theme} {...bar} y={4.5} height={11} />
          <OverlapBars spans={props.otherOverlaps} opacity={0.5} />
          <OverlapBars spans={overlaps} opacity={1} />
          <BasisText basis={props.basis} outer={outer} />
        </svg>
        {startText !== "" && (
          <BloomGrip
            id={id}
            name={`${code} ${name}`}
            startText={startText}
            words={words}
            start={props.start}
            earliest={props.earliest}
            latest={props.latest}
            flower={props.flower}
            axisDays={props.axisDays}
            left={bar.x}
            width={bar.width}
          />
        )}
      </div>
    </>
  );
});

/** Per cent of the track after which the word stands before the bar. */
const LATE_PERCENT = 78;

/** On what the window rests, beside its bar. */
function BasisText({ basis, outer }: { readonly basis: string; readonly outer: string }) {
  const [start = 0, width = 0] = outer.split(",").map(Number);
  const end = start + width;
  const isBefore = end > LATE_PERCENT && start > 100 - LATE_PERCENT;
  const isWithin = end > LATE_PERCENT && !isBefore;
  return (
    <text
      className="basis-words"
      x={`${isBefore ? start : end}%`}
      dx={isBefore || isWithin ? -4 : 4}
      y={13.5}
      textAnchor={isBefore || isWithin ? "end" : "start"}
    >
      {basis}
    </text>
  );
}

/** Days open together with a conflicting stand: barred, so that it is not colour alone. */
function OverlapBars({ spans, opacity }: { readonly spans: string; readonly opacity: number }) {
  if (spans === "") return null;
  return spans
    .split(" ")
    .map((span) => (
      <rect
        key={span}
        className="bloom-overlap"
        fill="url(#overlap-ticks)"
        opacity={opacity}
        {...place(span)}
        y={16}
        height={5}
      />
    ));
}
