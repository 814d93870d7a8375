import { type ReactNode, useId, useLayoutEffect, useRef } from "react";
import * as texts from "./words.ts";

const FIELDS = ":is(input, select, textarea):not(:disabled, [type=hidden], [type=file])";

/** To the first field, so that one can type; on a touch screen to the heading, for a keyboard would come up. */
function focusFirst(dialog: HTMLDialogElement | null): void {
  const isTouched = matchMedia("(pointer: coarse)").matches;
  const field = isTouched ? null : dialog?.querySelector<HTMLElement>(FIELDS);
  (field ?? dialog?.querySelector<HTMLElement>("h2"))?.focus();
}

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly isWide?: boolean;
  /** Leaves the sheet in sight, for what it shows there before it is made. */
  readonly isAside?: boolean;
}

/** The browser's own modal dialog: keeps the focus inside and gives it back where it came from. */
export function Dialog(props: DialogProps) {
  const { title, onClose, children, isWide = false, isAside = false } = props;
  const ref = useRef<HTMLDialogElement>(null);
  const headingId = useId();
  useLayoutEffect(() => {
    const dialog = ref.current;
    const origin = document.activeElement;
    dialog?.showModal();
    focusFirst(dialog);
    return () => {
      dialog?.close();
      if (origin instanceof HTMLElement && origin.isConnected) origin.focus();
    };
  }, []);
  return (
    <dialog
      ref={ref}
      className={`dialog${isWide ? " dialog-wide" : ""}${isAside ? " dialog-aside" : ""}`}
      aria-labelledby={headingId}
      onClose={() => {
        if (ref.current?.open === false) onClose();
      }}
    >
      <header className="dialog-head">
        <h2 id={headingId} tabIndex={-1}>
          {title}
        </h2>
        <button type="button" className="quiet" onClick={onClose}>
          {texts.close}
        </button>
      </header>
      {children}
    </dialog>
  );
}
