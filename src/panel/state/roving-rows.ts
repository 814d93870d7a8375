/** A list with one stop of the Tab key: arrows go from row to row and along a row. */
import { type FocusEvent, type KeyboardEvent, useCallback, useEffect, useRef } from "react";

const STOP = "button, select, input, a[href]";

/**
 * What a list needs for it. Rows are marked with `data-row`; what can be pressed in them are the
 * stops. Up and Down, Home and End go to the like stop of another row, Left and Right along the row.
 */
export function useRovingRows() {
  const ref = useRef<HTMLUListElement>(null);
  // After each draw: exactly one stop can be reached with Tab.
  useEffect(() => {
    const stops = stopsOf(ref.current);
    const current = stops.find(({ tabIndex }) => tabIndex === 0) ?? stops[0];
    for (const stop of stops) stop.tabIndex = stop === current ? 0 : -1;
  });
  const onFocus = useCallback((event: FocusEvent<HTMLUListElement>) => {
    for (const stop of stopsOf(ref.current)) stop.tabIndex = stop === event.target ? 0 : -1;
  }, []);
  const onKeyDown = useCallback((event: KeyboardEvent<HTMLUListElement>) => {
    const to = event.target instanceof HTMLElement ? stopAfter(event.key, event.target) : null;
    if (!to) return;
    event.preventDefault();
    to.focus();
  }, []);
  return { ref, onFocus, onKeyDown };
}

function stopsOf(within: Element | null): readonly HTMLElement[] {
  return within ? [...within.querySelectorAll<HTMLElement>(STOP)].filter(isUsable) : [];
}

function isUsable(element: HTMLElement): boolean {
  return !element.matches(":disabled");
}

function stopAfter(key: string, from: HTMLElement): HTMLElement | null {
  const row = from.closest("[data-row]");
  const list = row?.parentElement;
  if (!row || !list) return null;
  const along = stopsOf(row);
  const at = along.indexOf(from);
  if (key === "ArrowRight") return along[at + 1] ?? null;
  if (key === "ArrowLeft") return along[at - 1] ?? null;
  const rows = [...list.querySelectorAll("[data-row]")].filter((each) => stopsOf(each).length > 0);
  const place = rows.indexOf(row);
  const to = new Map([
    ["ArrowDown", place + 1],
    ["ArrowUp", place - 1],
    ["Home", 0],
    ["End", rows.length - 1],
  ]).get(key);
  const stops = stopsOf((to === undefined ? null : rows[to]) ?? null);
  return stops[Math.min(at, stops.length - 1)] ?? null;
}
