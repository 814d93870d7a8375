import {
  type KeyboardEvent,
  type ReactNode,
  createContext,
  useCallback,
  useContext,
  useId,
  useRef,
  useState,
} from "react";
import { moveAmong, useCloseOutside } from "./popup.ts";

/** What the keys go through: items, and the boxes of a menu of switches. */
const ITEMS = ".menu-list :is(button, input):not(:disabled)";

/** Closes the menu an item is in; the focus goes back to its button. */
const CloseMenu = createContext<() => void>(() => undefined);

interface MenuProps {
  readonly label: string;
  readonly children: ReactNode;
}

/**
 * A button that opens a short list of buttons; closes on a pick, Escape or a press elsewhere. Its
 * items are there while it is open: closed, eighty of them would follow every edit unseen.
 */
export function Menu({ label, children }: MenuProps) {
  const [isOpen, setOpen] = useState(false);
  const ref = useRef<HTMLDivElement>(null);
  const id = useId();

  const putAway = useCallback(() => setOpen(false), []);
  const close = () => {
    putAway();
    ref.current?.querySelector("button")?.focus();
  };

  useCloseOutside(ref, isOpen, putAway);
  const press = (event: KeyboardEvent) => {
    if (!isOpen) return;
    if (event.key === "Escape") {
      event.stopPropagation();
      close();
    } else {
      const items = ref.current?.querySelectorAll<HTMLElement>(ITEMS) ?? [];
      moveAmong(event, [...items]);
    }
  };

  return (
    <div className="menu" ref={ref} role="presentation" onKeyDown={press}>
      <button
        type="button"
        className="menu-button"
        aria-expanded={isOpen}
        aria-controls={id}
        onClick={() => setOpen(!isOpen)}
      >
        {label}
      </button>
      <div id={id} className="menu-list" hidden={!isOpen}>
        {isOpen && <CloseMenu value={close}>{children}</CloseMenu>}
      </div>
    </div>
  );
}

interface MenuItemProps {
  readonly onPick: () => void;
  readonly children: ReactNode;
  readonly isDisabled?: boolean;
}

export function MenuItem({ onPick, children, isDisabled = false }: MenuItemProps) {
  const close = useContext(CloseMenu);
  const pick = () => {
    close();
    onPick();
  };
  return (
    <button type="button" className="menu-item" disabled={isDisabled} onClick={pick}>
      {children}
    </button>
  );
}
