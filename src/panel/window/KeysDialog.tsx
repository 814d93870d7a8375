import { type KeyboardEvent, useState } from "react";
import { CheckField } from "../form/ChoiceField.tsx";
import { type Command, commandGroups } from "../commands/command.ts";
import { allCommands } from "./all-commands.ts";
import { Dialog } from "../form/Dialog.tsx";
import { gestureKeys } from "../commands/gesture-key-words.ts";
import { useOwnKeys } from "../commands/own-keys.ts";
import { usePreferences } from "../state/preferences.ts";
import { chordText, holderOf, keysText, pressedChord } from "../commands/shortcuts.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { commandList } from "./commands.ts";
import * as texts from "./dialog-words.ts";
import "./commands.css";
import * as commandWords from "../commands/command-words.ts";

/** The commands that have keys, by their groups. */
const sections = commandGroups
  .map((own) => ({
    heading: commandWords.groupNames[own],
    commands: allCommands.filter(({ group, keys }) => group === own && keys !== undefined),
  }))
  .filter(({ commands }) => commands.length > 0);

/** Every key, made from the commands themselves; gestures of the sheet and of fields below. */
export function KeysDialog({ onClose }: { readonly onClose: () => void }) {
  const { hasLetterKeys, setLetterKeys } = usePreferences();
  const hasOwn = useOwnKeys(({ keys }) => Object.keys(keys).length > 0);
  return (
    <Dialog title={texts.keysHeading} onClose={onClose}>
      {sections.map(({ heading, commands }) => (
        <section key={heading} className="key-section">
          <h3>{heading}</h3>
          <dl className="key-list">
            {commands.map((command) => (
              <CommandKeys key={command.id} command={command} />
            ))}
          </dl>
        </section>
      ))}
      {gestureKeys.map(({ heading, keys }) => (
        <section key={heading} className="key-section">
          <h3>{heading}</h3>
          <dl className="key-list">
            {keys.map(({ key, does }) => (
              <div key={does}>
                <dt>
                  <kbd>{key}</kbd>
                </dt>
                <dd>{does}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
      <CheckField label={texts.singleLettersSignsAct} isOn={hasLetterKeys} onSet={setLetterKeys} />
      <p className="dialog-actions">
        <CommandButton of={commandList}>{texts.allCommands}</CommandButton>
        {hasOwn && (
          <button type="button" onClick={() => useOwnKeys.getState().forgetKeys()}>
            {texts.resetAllKeys}
          </button>
        )}
      </p>
    </Dialog>
  );
}

/** A command with its keys, and other keys for it; copy, cut and paste are the browser's own. */
function CommandKeys({ command }: { readonly command: Command }) {
  useOwnKeys((state) => state.keys[command.id]);
  const [isAsking, setAsking] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  const press = (event: KeyboardEvent) => {
    if (!isAsking || event.key === "Tab") return;
    event.preventDefault();
    event.stopPropagation();
    if (event.key === "Escape") {
      setAsking(false);
      return;
    }
    const chord = pressedChord(event);
    if (!chord) return;
    const holder = holderOf(allCommands, chord, command.id);
    setRefusal(holder ? texts.keysTaken(chordText(chord), holder.name) : null);
    if (holder) return;
    useOwnKeys.getState().setKeys(command.id, chord);
    setAsking(false);
  };
  const stop = () => {
    setAsking(false);
    setRefusal(null);
  };
  return (
    <div>
      <dt>
        <kbd>{keysText(command)}</kbd>
      </dt>
      <dd>
        {command.name}{" "}
        {command.isNative !== true && (
          <button
            type="button"
            className="act"
            aria-label={
              isAsking ? texts.pressKeysFor(command.name) : texts.changeKeysOf(command.name)
            }
            onClick={() => setAsking(!isAsking)}
            onKeyDown={press}
            onBlur={stop}
          >
            {isAsking ? texts.pressTheKeys : texts.changeKeys}
          </button>
        )}
        {refusal !== null && (
          <span className="field-reason" role="alert">
            {refusal}
          </span>
        )}
      </dd>
    </div>
  );
}
