import { useEffect, useId, useMemo, useRef, useState } from "react";
import { type Command, runCommand, whyNot } from "../commands/command.ts";
import { foundCommands } from "../commands/command-search.ts";
import { allCommands } from "./all-commands.ts";
import { Dialog } from "../form/Dialog.tsx";
import { ListBox, type ListLine } from "../form/ListBox.tsx";
import { commandNow } from "../state/plan-actions.ts";
import { keysText } from "../commands/shortcuts.ts";
import * as texts from "./dialog-words.ts";
import "./commands.css";
import * as commandWords from "../commands/command-words.ts";

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
    <Dialog title={texts.commands} onClose={onClose}>
      <CommandList
        found={found}
        reasons={reasons}
        hasGroups={query === ""}
        onRun={run}
        query={query}
        onType={setQuery}
      />
      <p role="status" className="region-note">
        {found.length === 0 ? texts.noCommandCalled : texts.commandCount(found.length)}
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
  const field = useRef<HTMLInputElement>(null);
  const listId = `${useId()}-list`;
  useEffect(() => field.current?.focus(), []);
  const run = (index: number) => {
    const command = found[index];
    if (command) onRun(command);
  };
  const lines = found.map((command, index) =>
    lineOf(
      command,
      reasons.get(command.id) ?? null,
      hasGroups && found[index - 1]?.group !== command.group,
    ),
  );
  return (
    <>
      <input
        ref={field}
        className="wide command-field"
        type="search"
        role="combobox"
        aria-label={texts.searchCommands}
        aria-expanded="true"
        aria-controls={listId}
        aria-autocomplete="list"
        autoComplete="off"
        placeholder={texts.partCommandsName}
        value={query}
        onChange={(event) => {
          setAt(0);
          onType(event.target.value);
        }}
      />
      <ListBox
        field={field}
        id={listId}
        label={texts.commands}
        className="command-list"
        lines={lines}
        at={at}
        onMove={setAt}
        onPick={run}
        onEnter={() => run(at)}
      />
    </>
  );
}

/** @param reason why it cannot be used, or null */
function lineOf(command: Command, reason: string | null, isFirstOfGroup: boolean): ListLine {
  const keys = keysText(command);
  return {
    key: command.id,
    className: isFirstOfGroup ? "command-line first" : "command-line",
    isDisabled: reason !== null,
    content: (
      <>
        <span className="command-name">{command.name}</span>
        {keys !== "" && <kbd>{keys}</kbd>}
        <span className="command-about">{reason ?? commandWords.groupNames[command.group]}</span>
      </>
    ),
  };
}
