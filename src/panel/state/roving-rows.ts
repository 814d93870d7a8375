/** A list with one stop of the Tab key: arrows go from row to row and along a row. */
import { type FocusEvent, type KeyboardEvent, useCallback, useEffect, useRef } from "react";

const STOP = "button, select, input, a[href]";

/**
 * What a list needs for it. Rows are marked with `data-row`; what can be pressed in them are the
 * stops. Up and Down, Home and End go to the like stop of another row, Left and Right along the row.
 * @param stop which elements are stops, as a selector; others keep their own place for Tab
 */
export function useRovingRows(stop = STOP) {
  const ref = useRef<HTMLUListElement>(null);
  // After each draw: exactly one stop can be reached with Tab.
  useEffect(() => {
    if (isInOrder(ref.current, stop)) return;
    const stops = stopsOf(ref.current, stop);
    const current = stops.find(({ tabIndex }) => tabIndex === 0) ?? stops[0];
    for (const each of stops) reachByTab(each, each === current);
  });
  const onFocus = useCallback(
    (event: FocusEvent<HTMLUListElement>) => {
      if (!event.target.matches(stop)) return;
      for (const each of stopsOf(ref.current, stop)) reachByTab(each, each === event.target);
    },
    [stop],
  );
  const onKeyDown = useCallback(
    (event: KeyboardEvent<HTMLUListElement>) => {
      const { target, currentTarget } = event;
      if (!(target instanceof HTMLElement) || !target.matches(stop)) return;
      const to = stopAfter(event.key, target, currentTarget, stop);
      if (!to) return;
      event.preventDefault();
      to.focus();
    },
    [stop],
  );
  return { ref, onFocus, onKeyDown };
}

/** Whether one usable stop can be reached and no other is new: the browser tells sooner than a look at each. */
function isInOrder(list: Element | null, stop: string): boolean {
  const usable = `:is(${stop}):not(:disabled)`;
  return (
    list !== null &&
    list.querySelector(`${usable}:not([tabindex])`) === null &&
    list.querySelectorAll(`${usable}[tabindex="0"]`).length === 1
  );
}

/** Written only where it changes: a drag draws long lists again and again. */
function reachByTab(stop: HTMLElement, isReached: boolean): void {
  const tabIndex = isReached ? "0" : "-1";
  if (stop.getAttribute("tabindex") !== tabIndex) stop.setAttribute("tabindex", tabIndex);
}

function stopsOf(within: Element | null, stop: string): readonly HTMLElement[] {
  return within ? [...within.querySelectorAll<HTMLElement>(stop)].filter(isUsable) : [];
}

function isUsable(element: HTMLElement): boolean {
  return !element.matches(":disabled");
}

function stopAfter(
  key: string,
  from: HTMLElement,
  list: HTMLElement,
  stop: string,
): HTMLElement | null {
  const row = from.closest("[data-row]");
  if (!row) return null;
  const along = stopsOf(row, stop);
  const at = along.indexOf(from);
  if (key === "ArrowRight") return along[at + 1] ?? null;
  if (key === "ArrowLeft") return along[at - 1] ?? null;
  const rows = [...list.querySelectorAll("[data-row]")].filter(
    (each) => stopsOf(each, stop).length > 0,
  );
  const place = rows.indexOf(row);
  const to = new Map([
    ["ArrowDown", place + 1],
    ["ArrowUp", place - 1],
    ["Home", 0],
    ["End", rows.length - 1],
  ]).get(key);
  const stops = stopsOf((to === undefined ? null : rows[to]) ?? null, stop);
  return stops[Math.min(at, stops.length - 1)] ?? null;
}
