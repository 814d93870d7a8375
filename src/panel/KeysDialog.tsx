import { CheckField } from "./ChoiceField.tsx";
import { commandGroups } from "./command.ts";
import { allCommands } from "./commands.ts";
import { Dialog } from "./Dialog.tsx";
import { gestureKeys } from "./gesture-keys.ts";
import { usePreferences } from "./preferences.ts";
import { keysText } from "./shortcuts.ts";
import { viewNow } from "./view-state.ts";

interface KeyLine {
  readonly key: string;
  readonly does: string;
}

/** The commands that have keys, by their groups. */
const commandKeys = commandGroups.map((heading) => ({
  heading,
  keys: allCommands
    .filter(({ group, keys }) => group === heading && keys !== undefined)
    .map((command): KeyLine => ({ key: keysText(command), does: command.name })),
}));

/** Every key, made from the commands themselves; gestures of the sheet and of fields below. */
export function KeysDialog({ onClose }: { readonly onClose: () => void }) {
  const { hasLetterKeys, setLetterKeys } = usePreferences();
  const sections = [...commandKeys, ...gestureKeys].filter(({ keys }) => keys.length > 0);
  return (
    <Dialog title="Keys" onClose={onClose}>
      {sections.map(({ heading, keys }) => (
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
      <CheckField
        label="Single letters and signs act as keys"
        isOn={hasLetterKeys}
        onSet={setLetterKeys}
      />
      <p className="dialog-actions">
        <button type="button" onClick={() => viewNow().ask({ kind: "commands" })}>
          All commands
        </button>
      </p>
    </Dialog>
  );
}
