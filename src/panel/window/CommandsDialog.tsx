import { type KeyboardEvent, useEffect, useId, useMemo, useRef, useState } from "react";
import { type Command, runCommand, whyNot } from "../commands/command.ts";
import { foundCommands } from "../commands/command-search.ts";
import { allCommands } from "./all-commands.ts";
import { Dialog } from "../form/Dialog.tsx";
import { stepOf } from "../form/popup.ts";
import { commandNow } from "../state/plan-actions.ts";
import { keysText } from "../commands/shortcuts.ts";
import "./commands.css";

/** Every command in one list, found by typing; arrows and Enter, or a press. */
export function CommandsDialog({ onClose }: { readonly onClose: () => void }) {
  const [query, setQuery] = useState("");
  // The dialog lies over the plan: nothing changes in it while the list is open.
  const [reasons] = useState(() => {
    const now = commandNow();
    return new Map(allCommands.map((command) => [command.id, whyNot(command, now)]));
  });
  const found = useMemo(() => {
    const hits = foundCommands(allCommands, query);
    const isUsable = ({ id }: Command) => reasons.get(id) === null;
    // With nothing typed the list is read from the top: first what can be done now.
    return query === ""
      ? [...hits.filter(isUsable), ...hits.filter((command) => !isUsable(command))]
      : hits;
  }, [query, reasons]);
  const run = (command: Command) => {
    if (reasons.get(command.id) !== null) return;
    onClose();
    // Once the dialog has given the focus back, so that a further dialog takes it over.
    setTimeout(() => runCommand(command));
  };
  return (
    <Dialog title="Commands" onClose={onClose}>
      <CommandList
        found={found}
        reasons={reasons}
        hasGroups={query === ""}
        onRun={run}
        query={query}
        onType={setQuery}
      />
      <p role="status" className="region-note">
        {found.length === 0
          ? "No command is called that."
          : `${found.length} ${found.length === 1 ? "command" : "commands"}`}
      </p>
    </Dialog>
  );
}

interface CommandListProps {
  readonly query: string;
  readonly found: readonly Command[];
  /** Why commands cannot be used, by id; null for those that can. */
  readonly reasons: ReadonlyMap<string, string | null>;
  readonly hasGroups: boolean;
  readonly onType: (query: string) => void;
  readonly onRun: (command: Command) => void;
}

function CommandList(props: CommandListProps) {
  const { query, found, reasons, hasGroups, onType, onRun } = props;
  const [at, setAt] = useState(0);
  const list = useRef<HTMLDivElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const id = useId();
  useEffect(() => field.current?.focus(), []);
  const current = found[at];
  const press = (event: KeyboardEvent) => {
    const isText = event.key === "Home" || event.key === "End";
    const next = isText ? null : stepOf(event.key, at, found.length);
    if (next !== null) {
      event.preventDefault();
      setAt(next);
      list.current?.children[next]?.scrollIntoView({ block: "nearest" });
    } else if (event.key === "Enter" && current) {
      event.preventDefault();
      onRun(current);
    }
  };
  return (
    <>
      <input
        ref={field}
        className="wide command-field"
        type="search"
        role="combobox"
        aria-label="Search commands"
        aria-expanded="true"
        aria-controls={`${id}-list`}
        aria-activedescendant={current && `${id}-${current.id}`}
        aria-autocomplete="list"
        autoComplete="off"
        placeholder="Part of a command's name"
        value={query}
        onChange={(event) => {
          setAt(0);
          onType(event.target.value);
        }}
        onKeyDown={press}
      />
      <div
        ref={list}
        id={`${id}-list`}
        className="command-list"
        role="listbox"
        aria-label="Commands"
      >
        {found.map((command, index) => (
          <CommandLine
            key={command.id}
            id={`${id}-${command.id}`}
            command={command}
            reason={reasons.get(command.id) ?? null}
            isCurrent={index === at}
            isFirstOfGroup={hasGroups && found[index - 1]?.group !== command.group}
            onRun={() => onRun(command)}
          />
        ))}
      </div>
    </>
  );
}

interface CommandLineProps {
  readonly id: string;
  readonly command: Command;
  /** Why it cannot be used, or null. */
  readonly reason: string | null;
  readonly isCurrent: boolean;
  readonly isFirstOfGroup: boolean;
  readonly onRun: () => void;
}

function CommandLine(props: CommandLineProps) {
  const { id, command, reason, isCurrent, isFirstOfGroup, onRun } = props;
  const keys = keysText(command);
  return (
    <div
      id={id}
      role="option"
      tabIndex={-1}
      aria-selected={isCurrent}
      aria-disabled={reason !== null}
      className={isFirstOfGroup ? "command-line first" : "command-line"}
      onClick={() => {
        onRun();
      }}
      onKeyDown={(event) => {
        if (event.key === "Enter") onRun();
      }}
    >
      <span className="command-name">{command.name}</span>
      {keys !== "" && <kbd>{keys}</kbd>}
      <span className="command-about">{reason ?? command.group}</span>
    </div>
  );
}
