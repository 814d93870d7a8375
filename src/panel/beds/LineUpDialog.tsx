import { Dialog } from "../form/Dialog.tsx";
import type { DialogProps } from "../state/dialog.ts";
import { LineUpFields } from "./LineUpFields.tsx";

/** Lining up and spacing what is selected, asked for by command. */
export function LineUpDialog({ onClose }: DialogProps) {
  return (
    <Dialog title="Line up and space" onClose={onClose}>
      <LineUpFields />
    </Dialog>
  );
}
