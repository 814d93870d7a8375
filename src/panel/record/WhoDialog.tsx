import { Dialog } from "../form/Dialog.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { WhoField } from "./EntryDialog.tsx";
import { recordWords as words } from "./record-words.ts";

/** The name that goes with what is written down on this device. */
export function WhoDialog({ onClose }: { readonly onClose: () => void }) {
  return (
    <Dialog title={words.who} onClose={onClose}>
      <form className="fields" noValidate onSubmit={onFormSubmit(onClose)}>
        <WhoField />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {words.keepName}
          </button>
        </p>
      </form>
    </Dialog>
  );
}
