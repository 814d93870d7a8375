/** Which lines of a long list lie in view, so that only those are drawn. */
import { type RefObject, useCallback, useEffect, useRef, useState } from "react";

/** Lines drawn beyond each edge, so that a scroll shows no gap. */
const BEYOND = 8;

interface VisibleLines {
  readonly ref: RefObject<HTMLDivElement | null>;
  readonly onScroll: () => void;
  /** Index of the first line to draw, and of the first one not to draw. */
  readonly from: number;
  readonly to: number;
  /** The `data-line` of the line that holds the focus, or null. */
  readonly focused: string | null;
}

/** @param linePx height of every line */
export function useVisibleLines(linePx: number): VisibleLines {
  const ref = useRef<HTMLDivElement>(null);
  const [span, setSpan] = useState({ from: 0, to: 3 * BEYOND });
  const look = useCallback(() => {
    const element = ref.current;
    if (!element) return;
    const top = Math.floor(element.scrollTop / linePx);
    const from = Math.max(0, top - BEYOND);
    const to = top + Math.ceil(element.clientHeight / linePx) + BEYOND;
    setSpan((before) => (before.from === from && before.to === to ? before : { from, to }));
  }, [linePx]);
  const [focused, setFocused] = useState<string | null>(null);
  useEffect(() => {
    const element = ref.current;
    if (!element) return;
    const enter = ({ target }: FocusEvent) => {
      const line = target instanceof Element ? target.closest<HTMLElement>("[data-line]") : null;
      setFocused(line?.dataset["line"] ?? null);
    };
    const leave = () => setFocused(null);
    const observer = new ResizeObserver(look);
    observer.observe(element);
    element.addEventListener("focusin", enter);
    element.addEventListener("focusout", leave);
    return () => {
      observer.disconnect();
      element.removeEventListener("focusin", enter);
      element.removeEventListener("focusout", leave);
    };
  }, [look]);
  return { ref, onScroll: look, ...span, focused };
}
