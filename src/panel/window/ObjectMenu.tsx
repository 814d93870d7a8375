import { type KeyboardEvent, type RefObject, useLayoutEffect, useRef } from "react";
import { layoutOf } from "../../core/model/layouts.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { type ObjectMenuRequest, useWindowStore } from "../../store/window/window-store.ts";
import { type Command, runCommand, whyNot } from "../commands/command.ts";
import { commandById } from "./all-commands.ts";
import { hideChosenCommand, objectMenuIds, sheetMenuIds } from "./object-menu-items.ts";
import { keysOf } from "../commands/own-keys.ts";
import { moveAmong, useCloseOutside } from "../form/popup.ts";
import { windowNow } from "../state/plan-actions.ts";
import { chordText } from "../commands/shortcuts.ts";
import { objectNames } from "../../core/model/object-names.ts";
import * as texts from "./dialog-words.ts";
import "./commands.css";

/** Kept between the menu and the edge of the window, pixels. */
const EDGE_PX = 8;

function putAway(): void {
  windowNow().askObjectMenu(null);
}

/** The menu of what is selected; of the empty sheet when nothing is. */
export function ObjectMenu({ request }: { readonly request: ObjectMenuRequest }) {
  const ref = useRef<HTMLDivElement>(null);
  const now = { ...usePlanStore(), ...useWindowStore() };
  const layout = layoutOf(now.shown, now.layoutId);
  const sections =
    request.ids.length === 0 ? sheetMenuIds : objectMenuIds(now.shown, layout, request.ids);
  const hide = hideChosenCommand(now.shown, layout, request.ids);
  const names =
    request.ids.length === 0 ? texts.emptySheet : objectNames(now.shown, layout, request.ids);

  useCloseOutside(ref, true, putAway);
  usePlaced(ref, request);
  const pick = (command: Command) => {
    windowNow().askObjectMenu(null);
    // Once the focus is back where it came from, so that a dialog gives it back there as well.
    setTimeout(() => runCommand(command));
  };
  return (
    <div
      ref={ref}
      className="object-menu"
      role="menu"
      tabIndex={-1}
      aria-label={texts.actionsFor(names)}
      onKeyDown={pressInMenu}
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

/** Stands where it was asked for, inside the window, and takes the focus; gives it back after. */
function usePlaced(ref: RefObject<HTMLElement | null>, request: ObjectMenuRequest): void {
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
    window.addEventListener("blur", putAway);
    window.addEventListener("resize", putAway);
    return () => {
      window.removeEventListener("blur", putAway);
      window.removeEventListener("resize", putAway);
      // Back to where it was asked from, unless a press elsewhere has taken the focus.
      const isLost =
        document.activeElement === document.body || menu.contains(document.activeElement);
      if (isLost && origin instanceof HTMLElement && origin.isConnected) origin.focus();
    };
  }, [ref, request]);
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

/** Escape and Tab leave; the other keys are those of every menu. */
function pressInMenu(event: KeyboardEvent<HTMLElement>): void {
  event.stopPropagation();
  if (event.key === "Escape" || event.key === "Tab") {
    event.preventDefault();
    putAway();
  } else {
    moveAmong(event, [...event.currentTarget.querySelectorAll<HTMLElement>('[role="menuitem"]')]);
  }
}
