import {
  type ReactNode,
  createContext,
  useContext,
  useEffect,
  useId,
  useRef,
  useState,
} from "react";

/** Closes the menu an item is in; the focus goes back to its button. */
const CloseMenu = createContext<() => void>(() => undefined);

interface MenuProps {
  readonly label: string;
  readonly children: ReactNode;
}

/** A button that opens a short list of buttons; closes on a pick, Escape or a press elsewhere. */
export function Menu({ label, children }: MenuProps) {
  const [isOpen, setOpen] = useState(false);
  const ref = useRef<HTMLDivElement>(null);
  const id = useId();

  const close = () => {
    setOpen(false);
    ref.current?.querySelector("button")?.focus();
  };

  useEffect(() => {
    if (!isOpen) return;
    const closeOutside = (event: Event) => {
      if (event.target instanceof Node && !ref.current?.contains(event.target)) setOpen(false);
    };
    const closeOnEscape = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      event.stopPropagation();
      setOpen(false);
      ref.current?.querySelector("button")?.focus();
    };
    document.addEventListener("pointerdown", closeOutside, true);
    document.addEventListener("focusin", closeOutside);
    document.addEventListener("keydown", closeOnEscape, true);
    return () => {
      document.removeEventListener("pointerdown", closeOutside, true);
      document.removeEventListener("focusin", closeOutside);
      document.removeEventListener("keydown", closeOnEscape, true);
    };
  }, [isOpen]);

  return (
    <div className="menu" ref={ref}>
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
        <CloseMenu value={close}>{children}</CloseMenu>
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
