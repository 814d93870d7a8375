import { type KeyboardEvent, type RefObject, useEffect, useRef } from "react";
import { useWindowStore } from "../../store/window/window-store.ts";
import { ClearGroundButton } from "../findings/ClearGroundLine.tsx";
import { clearGround } from "../findings/commands.ts";
import { CommandItem } from "../commands/CommandItem.tsx";
import { Menu } from "../form/Menu.tsx";
import { type ToolEntry, toolEntries } from "./tools.ts";
import { keysText } from "../commands/shortcuts.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { commandById } from "./all-commands.ts";
import { fitAll, showSelection } from "../commands/view-commands.ts";
import * as texts from "./words.ts";

/** The tools of the sheet, and on a phone a list of them. */
export function ToolLine() {
  return (
    <div className="tool-line">
      <ToolBar />
      <MoreTools />
    </div>
  );
}

/** One stop for Tab, arrow keys inside. */
function ToolBar() {
  const tool = useWindowStore((state) => state.tool);
  const ref = useRef<HTMLDivElement>(null);
  useToolInView(ref, tool);
  // Tab enters the bar at the tool in use, or at the first when that one has no button here.
  const stop = toolEntries.find(({ name }) => name === tool) ?? toolEntries[0];

  const moveFocus = (event: KeyboardEvent) => {
    const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (step === undefined && event.key !== "Home" && event.key !== "End") return;
    const buttons = [
      ...(ref.current?.querySelectorAll<HTMLElement>("button:not(:disabled)") ?? []),
    ];
    const at = buttons.findIndex((button) => button === document.activeElement);
    const next =
      step === undefined
        ? event.key === "Home"
          ? 0
          : buttons.length - 1
        : (at + step + buttons.length) % buttons.length;
    event.preventDefault();
    buttons[next]?.focus();
  };
  return (
    <div
      ref={ref}
      className="tool-bar"
      role="toolbar"
      aria-label={texts.tools}
      tabIndex={-1}
      onKeyDown={moveFocus}
    >
      {toolEntries.map((entry) => (
        <ToolButton
          key={entry.name}
          entry={entry}
          isPicked={entry.name === tool}
          isStop={entry === stop}
        />
      ))}
      <ClearGroundButton />
      <span className="tool-gap" />
      <CommandButton
        of={fitAll}
        className="tool"
        tabIndex={-1}
        title={texts.fitAllWithKeys(keysText(fitAll))}
      >
        {texts.fitAll}
      </CommandButton>
      <CommandButton of={showSelection} className="tool" tabIndex={-1}>
        {texts.fitSelection}
      </CommandButton>
    </div>
  );
}

/** By name what the bar of a phone has no room for; it is not there where all stand side by side. */
function MoreTools() {
  return (
    <div className="tool-more">
      <Menu label={texts.moreTools}>
        {toolEntries.map(({ name, label }) => (
          <CommandItem key={name} of={commandById(`tool-${name}`)}>
            {label}
          </CommandItem>
        ))}
        <CommandItem of={clearGround} />
        <CommandItem of={fitAll}>{texts.fitAll}</CommandItem>
        <CommandItem of={showSelection}>{texts.fitSelection}</CommandItem>
      </Menu>
    </div>
  );
}

/** Where the bar is pushed sideways, the tool in use stays in sight. */
function useToolInView(ref: RefObject<HTMLElement | null>, tool: string): void {
  useEffect(() => {
    const bar = ref.current;
    const picked = bar?.querySelector<HTMLElement>(`[data-tool="${tool}"]`);
    if (!bar || !picked || bar.scrollWidth <= bar.clientWidth) return;
    const [box, at] = [bar.getBoundingClientRect(), picked.getBoundingClientRect()];
    if (at.left < box.left) bar.scrollLeft -= box.left - at.left;
    else if (at.right > box.right) bar.scrollLeft += at.right - box.right;
  }, [ref, tool]);
}

interface ToolButtonProps {
  readonly entry: ToolEntry;
  readonly isPicked: boolean;
  /** Where Tab comes into the bar. */
  readonly isStop: boolean;
}

function ToolButton({ entry, isPicked, isStop }: ToolButtonProps) {
  const command = commandById(`tool-${entry.name}`);
  return (
    <CommandButton
      of={command}
      className="tool"
      data-tool={entry.name}
      aria-pressed={isPicked}
      tabIndex={isStop ? 0 : -1}
      title={texts.withKeys(entry.label, keysText(command))}
    >
      <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true" focusable="false">
        <path d={entry.strokes} />
      </svg>
      <span>{entry.label}</span>
    </CommandButton>
  );
}
