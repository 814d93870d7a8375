import { type KeyboardEvent, memo } from "react";
import { cancelShift, endShift, nudgeStart } from "./bar-shift.ts";
import { windowNow } from "../state/plan-actions.ts";
import { useBarDrag } from "./use-bar-drag.ts";
import { useChosenFirst } from "./use-chosen-first.ts";
import * as texts from "./words.ts";

interface BloomGripProps {
  readonly id: string;
  /** The planting's code and variety. */
  readonly name: string;
  /** `sown 28 May`, and the row in words. */
  readonly startText: string;
  readonly words: string;
  /** Start, its limits and the likely first flower, day numbers. */
  readonly start: number;
  readonly earliest: number;
  readonly latest: number;
  readonly flower: number;
  /** Days over the width of the axis. */
  readonly axisDays: number;
  readonly left: string;
  readonly width: string;
}

const KEY_DAYS: ReadonlyMap<string, number> = new Map([
  ["ArrowLeft", -1],
  ["ArrowDown", -1],
  ["ArrowRight", 1],
  ["ArrowUp", 1],
]);

/** The part of a bar that is dragged: to another first flower; by arrow keys, in days of sowing. */
export const BloomGrip = memo(function BloomGrip(props: BloomGripProps) {
  const { id, name, startText, words, left, width } = props;
  const drag = useBarDrag(id, props.flower, props.axisDays);
  const { isHeld, cancel } = drag;
  const handlers = useChosenFirst(id, drag);
  const pressKey = (event: KeyboardEvent) => {
    const days = KEY_DAYS.get(event.key);
    if (event.key === "Escape") {
      if (!cancel() && !cancelShift()) return;
    } else if (event.key === "Enter" || event.key === " ") windowNow().select([id]);
    else if (days === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    else nudgeStart(id, event.shiftKey ? days * 7 : days);
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <>
      <div
        role="slider"
        tabIndex={0}
        className="bloom-grip"
        aria-label={texts.startOf(name)}
        aria-valuemin={props.earliest}
        aria-valuemax={props.latest}
        aria-valuenow={props.start}
        aria-valuetext={words}
        title={texts.dragTitle(name, startText)}
        style={{ left, width }}
        {...handlers}
        onKeyDown={pressKey}
        onBlur={endShift}
      />
      {isHeld && (
        <output className="bloom-flag" style={{ left }}>
          {startText}
        </output>
      )}
    </>
  );
});
