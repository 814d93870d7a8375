import { CheckField } from "./ChoiceField.tsx";
import { Dialog } from "./Dialog.tsx";
import { keyList } from "./shortcuts.ts";
import { usePreferences } from "./preferences.ts";

export function KeysDialog({ onClose }: { readonly onClose: () => void }) {
  const { hasLetterKeys, setLetterKeys } = usePreferences();
  return (
    <Dialog title="Keys" onClose={onClose}>
      {keyList.map(({ heading, keys }) => (
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
        label="Single letters and ? act as keys"
        isOn={hasLetterKeys}
        onSet={setLetterKeys}
      />
    </Dialog>
  );
}
