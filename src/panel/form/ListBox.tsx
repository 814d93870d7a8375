/**
 * The list under a search field: the focus stays in the field, whose keys walk the list; a press
 * picks a line. The field has the role `combobox` and names the list by `aria-controls`.
 */
import { type ReactNode, type RefObject, useEffect, useRef } from "react";
import { stepOf } from "./popup.ts";

export interface ListLine {
  readonly key: string;
  readonly content: ReactNode;
  readonly className: string;
  readonly isDisabled?: boolean;
}

interface ListBoxProps {
  readonly field: RefObject<HTMLInputElement | null>;
  readonly id: string;
  readonly label: string;
  readonly className: string;
  readonly lines: readonly ListLine[];
  /** Index of the current line; -1: none yet. */
  readonly at: number;
  /** A key leads to another line. */
  readonly onMove: (to: number) => void;
  /** A line is pressed. */
  readonly onPick: (index: number) => void;
  /** Enter in the field. */
  readonly onEnter: (isShift: boolean) => void;
}

export function ListBox(props: ListBoxProps) {
  const { id, label, className, lines, at, onPick } = props;
  const list = useRef<HTMLDivElement>(null);
  useFieldKeys(props);
  useEffect(() => {
    list.current?.children[at]?.scrollIntoView({ block: "nearest" });
  }, [at]);
  return (
    <div ref={list} id={id} className={className} role="listbox" aria-label={label}>
      {lines.map((line, index) => (
        <div
          key={line.key}
          id={lineId(id, index)}
          role="option"
          tabIndex={-1}
          aria-selected={index === at}
          aria-disabled={line.isDisabled}
          className={line.className}
          onClick={() => onPick(index)}
          onKeyDown={(event) => {
            if (event.key === "Enter") onPick(index);
          }}
        >
          {line.content}
        </div>
      ))}
    </div>
  );
}

function lineId(list: string, index: number): string {
  return `${list}-${index}`;
}

/** Listens on the field itself, which may stand in a part that was loaded before the list. */
function useFieldKeys({ field, id, lines, at, onMove, onEnter }: ListBoxProps): void {
  const { length } = lines;
  useEffect(() => {
    const input = field.current;
    if (!input) return;
    if (at >= 0 && at < length) input.setAttribute("aria-activedescendant", lineId(id, at));
    const press = (event: KeyboardEvent) => {
      // Home and End belong to the text that is typed.
      if (length === 0 || event.isComposing || event.key === "Home" || event.key === "End") return;
      const isEnter = event.key === "Enter";
      const next = stepOf(event.key, at, length);
      if (!isEnter && next === null) return;
      event.preventDefault();
      if (isEnter) onEnter(event.shiftKey);
      else if (next !== null) onMove(next);
    };
    input.addEventListener("keydown", press);
    return () => {
      input.removeEventListener("keydown", press);
      input.removeAttribute("aria-activedescendant");
    };
  }, [field, id, length, at, onMove, onEnter]);
}
