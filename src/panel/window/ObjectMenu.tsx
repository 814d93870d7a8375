import { type KeyboardEvent, useLayoutEffect, useRef } from "react";
import { layoutOf } from "../../core/model/layouts.ts";
import { usePlanStore, type ObjectMenuRequest } from "../../store/plan/plan-store.ts";
import { type Command, runCommand, whyNot } from "../commands/command.ts";
import { commandById } from "./all-commands.ts";
import { hideChosenCommand, objectMenuIds, sheetMenuIds } from "./object-menu-items.ts";
import { keysOf } from "../commands/own-keys.ts";
import { planNow } from "../state/plan-actions.ts";
import { chordText } from "../commands/shortcuts.ts";
import { objectNames } from "../../core/model/object-names.ts";
import "./commands.css";

/** Kept between the menu and the edge of the window, pixels. */
const EDGE_PX = 8;

/** The menu of what is selected; of the empty sheet when nothing is. */
export function ObjectMenu({ request }: { readonly request: ObjectMenuRequest }) {
  const ref = useRef<HTMLDivElement>(null);
  const now = usePlanStore();
  const layout = layoutOf(now.shown, now.layoutId);
  const sections =
    request.ids.length === 0 ? sheetMenuIds : objectMenuIds(now.shown, layout, request.ids);
  const hide = hideChosenCommand(now.shown, layout, request.ids);
  const names = request.ids.length === 0 ? "Sheet" : objectNames(now.shown, layout, request.ids);

  useLayoutEffect(() => {
    const menu = ref.current;
    const origin = document.activeElement;
    if (!menu) return;
    const { width, height } = menu.getBoundingClientRect();
    const left = Math.min(request.xPx, innerWidth - width - EDGE_PX);
    const top = Math.min(request.yPx, innerHeight - height - EDGE_PX);
    menu.style.left = `${Math.max(EDGE_PX, left)}px`;
    menu.style.top = `${Math.max(EDGE_PX, top)}px`;
    menu.querySelector<HTMLElement>('[role="menuitem"]')?.focus();
    const closeOutside = (event: Event) => {
      if (event.target instanceof Node && menu.contains(event.target)) return;
      planNow().askObjectMenu(null);
    };
    document.addEventListener("pointerdown", closeOutside, true);
    window.addEventListener("blur", closeOutside);
    window.addEventListener("resize", closeOutside);
    return () => {
      document.removeEventListener("pointerdown", closeOutside, true);
      window.removeEventListener("blur", closeOutside);
      window.removeEventListener("resize", closeOutside);
      // Back to where it was asked from, unless a press elsewhere has taken the focus.
      const isLost =
        document.activeElement === document.body || menu.contains(document.activeElement);
      if (isLost && origin instanceof HTMLElement && origin.isConnected) origin.focus();
    };
  }, [request]);

  const pick = (command: Command) => {
    planNow().askObjectMenu(null);
    // Once the focus is back where it came from, so that a dialog gives it back there as well.
    setTimeout(() => runCommand(command));
  };
  return (
    <div
      ref={ref}
      className="object-menu"
      role="menu"
      tabIndex={-1}
      aria-label={`Actions for ${names}`}
      onKeyDown={moveInMenu}
      onContextMenu={(event) => event.preventDefault()}
    >
      <p className="menu-heading" role="presentation">
        {names}
      </p>
      {sections.map((ids) => (
        <div key={ids[0]} role="group" className="menu-group">
          {ids.map((id) => (
            <Item
              key={id}
              command={commandById(id)}
              reason={whyNot(commandById(id), now)}
              onPick={pick}
            />
          ))}
          {ids.includes("show-selection") && hide && (
            <Item command={hide} reason={null} onPick={pick} />
          )}
        </div>
      ))}
    </div>
  );
}

interface ItemProps {
  readonly command: Command;
  readonly reason: string | null;
  readonly onPick: (command: Command) => void;
}

function Item({ command, reason, onPick }: ItemProps) {
  const [chord] = keysOf(command);
  return (
    <button
      type="button"
      role="menuitem"
      tabIndex={-1}
      className="menu-item"
      aria-disabled={reason !== null}
      onClick={() => {
        if (reason === null) onPick(command);
      }}
    >
      <span>{command.name}</span>
      {reason === null ? (
        chord && <kbd>{chordText(chord)}</kbd>
      ) : (
        <span className="soft">{reason}</span>
      )}
    </button>
  );
}

/** Arrows, Home, End and first letters move the focus; Escape and Tab leave. */
function moveInMenu(event: KeyboardEvent<HTMLElement>): void {
  const items = [...event.currentTarget.querySelectorAll<HTMLElement>('[role="menuitem"]')];
  const at = items.findIndex((item) => item === document.activeElement);
  const goTo = (index: number) => {
    event.preventDefault();
    items[(index + items.length) % items.length]?.focus();
  };
  event.stopPropagation();
  switch (event.key) {
    case "ArrowDown":
      return goTo(at + 1);
    case "ArrowUp":
      return goTo(at < 0 ? -1 : at - 1);
    case "Home":
      return goTo(0);
    case "End":
      return goTo(-1);
    case "Escape":
    case "Tab":
      event.preventDefault();
      return planNow().askObjectMenu(null);
    default: {
      if (event.key.length !== 1 || event.ctrlKey || event.metaKey || event.key === " ") return;
      const letter = event.key.toLowerCase();
      const order = [...items.slice(at + 1), ...items.slice(0, at + 1)];
      order.find((item) => item.textContent?.toLowerCase().startsWith(letter))?.focus();
    }
  }
}
