import { useState } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { planNow } from "../state/plan-actions.ts";
import { walkWords as words } from "./walk-words.ts";

interface WalkBarProps {
  readonly hasPrevious: boolean;
  readonly hasNext: boolean;
  readonly isMore: boolean;
  readonly onStep: (by: number) => void;
  readonly onMore: () => void;
}

/** Always under the thumb: back, undo, more, next. */
export function WalkBar({ hasPrevious, hasNext, isMore, onStep, onMore }: WalkBarProps) {
  return (
    <nav className="walk-bar" aria-label={words.heading}>
      <button type="button" disabled={!hasPrevious} onClick={() => onStep(-1)}>
        <span aria-hidden="true">◀</span> {words.previous}
      </button>
      <UndoButton />
      <button type="button" aria-expanded={isMore} onClick={onMore}>
        {isMore ? words.less : words.more}
      </button>
      <button type="button" className="primary" disabled={!hasNext} onClick={() => onStep(1)}>
        {words.next} <span aria-hidden="true">▶</span>
      </button>
    </nav>
  );
}

/** Takes back what was written on this walk, and nothing of the winter's planning before it. */
function UndoButton() {
  const last = usePlanStore(({ past }) => past.at(-1));
  const [floor] = useState(() => planNow().past.at(-1));
  const canUndo = last !== undefined && last !== floor;
  return (
    <button
      type="button"
      disabled={!canUndo}
      aria-label={canUndo ? `${words.undo}: ${last.title}` : words.undo}
      onClick={() => planNow().undo()}
    >
      {words.undo}
    </button>
  );
}
