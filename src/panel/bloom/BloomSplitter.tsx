import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import { LINE_PX, ROWS, useBloomHeight } from "./bloom-height.ts";
import { stripHeightWords } from "./command-words.ts";

/** The strip's upper edge: dragged, or moved by keys, row by row; a double press puts it back. */
export function BloomSplitter() {
  const { rows, setRows } = useBloomHeight();
  const drag = useRef<{ readonly fromPx: number; readonly rows: number } | null>(null);
  const press = (event: PointerEvent<HTMLElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    drag.current = { fromPx: event.clientY, rows };
  };
  const move = ({ clientY }: PointerEvent<HTMLElement>) => {
    const now = drag.current;
    if (now) setRows(now.rows + (now.fromPx - clientY) / LINE_PX);
  };
  const end = () => {
    drag.current = null;
  };
  const pressKey = (event: KeyboardEvent) => {
    const to = { ArrowUp: rows + 1, ArrowDown: rows - 1, Home: ROWS.least, End: ROWS.most };
    if (!Object.hasOwn(to, event.key) || event.ctrlKey || event.altKey || event.metaKey) return;
    setRows(to[event.key as keyof typeof to]);
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div
      role="separator"
      tabIndex={0}
      className="bloom-splitter"
      aria-orientation="horizontal"
      aria-label={stripHeightWords.label}
      aria-valuemin={ROWS.least}
      aria-valuemax={ROWS.most}
      aria-valuenow={rows}
      aria-valuetext={stripHeightWords.value(rows)}
      title={stripHeightWords.title}
      onPointerDown={press}
      onPointerMove={move}
      onPointerUp={end}
      onPointerCancel={end}
      onDoubleClick={() => setRows(ROWS.usual)}
      onKeyDown={pressKey}
    />
  );
}
