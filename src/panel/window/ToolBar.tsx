import { type KeyboardEvent, useRef } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { ClearGroundButton } from "../findings/ClearGroundLine.tsx";
import { commandById } from "../commands/commands.ts";
import { type ToolEntry, toolEntries } from "../commands/tools.ts";
import { viewNow } from "../state/view-state.ts";
import { planNow } from "../state/plan-actions.ts";
import { keysText } from "../commands/shortcuts.ts";

/** The tools of the sheet: one stop for Tab, arrow keys inside. */
export function ToolBar() {
  const tool = usePlanStore((state) => state.tool);
  const hasSelection = usePlanStore((state) => state.selection.length > 0);
  const ref = useRef<HTMLDivElement>(null);
  // A tool that stands elsewhere leaves the bar its first one to come in by.
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
  const pick = (entry: ToolEntry) => {
    planNow().pickTool(entry.name);
    viewNow().showSheet();
  };
  const fit = (what: "all" | "selection") => {
    const { selection } = planNow();
    viewNow().showSheet();
    planNow().bringIntoView(what === "all" ? "all" : selection);
  };
  return (
    <div
      ref={ref}
      className="tool-bar"
      role="toolbar"
      aria-label="Tools"
      tabIndex={-1}
      onKeyDown={moveFocus}
    >
      {toolEntries.map((entry) => (
        <button
          key={entry.name}
          type="button"
          className="tool"
          aria-pressed={entry.name === tool}
          tabIndex={entry === stop ? 0 : -1}
          title={`${entry.label} (${keysText(commandById(`tool-${entry.name}`))})`}
          onClick={() => pick(entry)}
        >
          <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true" focusable="false">
            <path d={entry.strokes} />
          </svg>
          <span>{entry.label}</span>
        </button>
      ))}
      <ClearGroundButton />
      <span className="tool-gap" />
      <button
        type="button"
        className="tool"
        tabIndex={-1}
        title={`Fit all (${keysText(commandById("fit-all"))})`}
        onClick={() => fit("all")}
      >
        Fit all
      </button>
      <button
        type="button"
        className="tool"
        tabIndex={-1}
        disabled={!hasSelection}
        onClick={() => fit("selection")}
      >
        Fit selection
      </button>
    </div>
  );
}
