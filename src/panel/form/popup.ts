/** What every list that comes up has in common: how it is left, and the keys inside it. */
import { type KeyboardEvent, type RefObject, useEffect } from "react";

/** Closes something that is up when a press or the focus goes elsewhere. */
export function useCloseOutside(
  ref: RefObject<HTMLElement | null>,
  isOpen: boolean,
  close: () => void,
): void {
  useEffect(() => {
    if (!isOpen) return;
    const leave = ({ target }: Event) => {
      if (target instanceof Node && !ref.current?.contains(target)) close();
    };
    document.addEventListener("pointerdown", leave, true);
    document.addEventListener("focusin", leave);
    return () => {
      document.removeEventListener("pointerdown", leave, true);
      document.removeEventListener("focusin", leave);
    };
  }, [ref, isOpen, close]);
}

/** Arrows, Home, End and first letters move the focus among the items of a menu. */
export function moveAmong(event: KeyboardEvent, items: readonly HTMLElement[]): void {
  const { key } = event;
  const at = items.findIndex((item) => item === document.activeElement);
  const next = stepOf(key, at, items.length);
  if (next !== null) {
    event.preventDefault();
    items[next]?.focus();
    return;
  }
  if (key.length !== 1 || event.ctrlKey || event.metaKey || key === " ") return;
  const order = [...items.slice(at + 1), ...items.slice(0, at + 1)];
  const begins = (item: HTMLElement) =>
    item.textContent.toLowerCase().startsWith(key.toLowerCase());
  order.find(begins)?.focus();
}

/** So many entries further with the keys for pages. */
const PAGE = 8;

/**
 * Where a key leads in a list: arrows go round its ends, pages stop there; null for other keys.
 * `stepOf("ArrowUp", 0, 5)` is 4. At -1 nothing is current yet.
 */
export function stepOf(key: string, at: number, length: number): number | null {
  if (length === 0) return null;
  switch (key) {
    case "ArrowDown":
      return (at + 1) % length;
    case "ArrowUp":
      return at <= 0 ? length - 1 : at - 1;
    case "PageDown":
      return Math.min(at + PAGE, length - 1);
    case "PageUp":
      return Math.max(at - PAGE, 0);
    case "Home":
      return 0;
    case "End":
      return length - 1;
    default:
      return null;
  }
}
