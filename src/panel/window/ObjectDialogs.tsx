import { ArrayDialog } from "../beds/ArrayDialog.tsx";
import { BedRowsDialog } from "../beds/BedRowsDialog.tsx";
import { CopiedTextDialog, PasteDialog } from "../clipboard/ClipboardDialogs.tsx";
import { CommandsDialog } from "../commands/CommandsDialog.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { KeysDialog } from "../commands/KeysDialog.tsx";
import { LineUpFields } from "../beds/LineUpFields.tsx";
import { RenameObjectDialog } from "../beds/RenameObjectDialog.tsx";
import type { DialogRequest } from "../state/view-state.ts";

type ObjectDialogRequest = Extract<
  DialogRequest,
  {
    readonly kind:
      | "commands"
      | "keys"
      | "array"
      | "bed-rows"
      | "line-up"
      | "rename-object"
      | "paste"
      | "copied-text";
  }
>;

interface ObjectDialogsProps {
  readonly dialog: ObjectDialogRequest;
  readonly onClose: () => void;
}

/** Commands and what they ask for, in one piece that is loaded with the first of them. */
export function ObjectDialogs({ dialog, onClose }: ObjectDialogsProps) {
  switch (dialog.kind) {
    case "commands":
      return <CommandsDialog onClose={onClose} />;
    case "keys":
      return <KeysDialog onClose={onClose} />;
    case "array":
      return <ArrayDialog onClose={onClose} />;
    case "bed-rows":
      return <BedRowsDialog onClose={onClose} />;
    case "line-up":
      return (
        <Dialog title="Line up and space" onClose={onClose}>
          <LineUpFields />
        </Dialog>
      );
    case "rename-object":
      return <RenameObjectDialog id={dialog.id} onClose={onClose} />;
    case "paste":
      return <PasteDialog reason={dialog.reason} onClose={onClose} />;
    case "copied-text":
      return <CopiedTextDialog text={dialog.text} onClose={onClose} />;
  }
}
