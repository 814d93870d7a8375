import { useEffect, useState } from "react";
import { type BloomRow, nextChange } from "./bloom-rows.ts";
import { windowNow } from "../state/plan-actions.ts";
import type { TimeAxis } from "./time-axis.ts";
import { useReducedMotion } from "./use-reduced-motion.ts";
import * as texts from "./words.ts";

/** Milliseconds a day stays on the sheet while the season runs. */
const DAY_MS = 120;

interface DayPlayProps {
  readonly axis: TimeAxis;
  readonly rows: readonly BloomRow[];
}

/** Lets the days run over the sheet; where less motion is asked for, one step to the next change. */
export function DayPlay({ axis, rows }: DayPlayProps) {
  const isStepping = useReducedMotion();
  return isStepping ? <StepButton axis={axis} rows={rows} /> : <PlayButton axis={axis} />;
}

function StepButton({ axis, rows }: DayPlayProps) {
  const step = () => {
    const { day, showDay } = windowNow();
    const next = nextChange(rows, day ?? axis.first - 1);
    showDay(next !== null && next <= axis.last ? next : axis.first);
  };
  return (
    <button type="button" className="act" aria-label={texts.stepTitle} onClick={step}>
      {texts.step}
    </button>
  );
}

function PlayButton({ axis }: { readonly axis: TimeAxis }) {
  const [isPlaying, setPlaying] = useState(false);
  const { first, last } = axis;
  useEffect(() => {
    if (!isPlaying) return;
    const timer = setInterval(() => {
      const { day, showDay } = windowNow();
      const next = day === null || day < first ? first : day + 1;
      if (next > last) setPlaying(false);
      else showDay(next);
    }, DAY_MS);
    return () => clearInterval(timer);
  }, [isPlaying, first, last]);
  const toggle = () => {
    const { day, showDay } = windowNow();
    if (!isPlaying && (day === null || day >= last)) showDay(first);
    setPlaying(!isPlaying);
  };
  return (
    <button
      type="button"
      className="act"
      aria-label={isPlaying ? texts.stopTheDays : texts.playTheDays}
      onClick={toggle}
    >
      {isPlaying ? texts.stop : texts.play}
    </button>
  );
}
