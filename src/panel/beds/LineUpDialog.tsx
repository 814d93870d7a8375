import { Dialog } from "../form/Dialog.tsx";
import type { DialogProps } from "../state/dialog.ts";
import { LineUpFields } from "./LineUpFields.tsx";
import * as texts from "./words.ts";

/** Lining up and spacing what is selected, asked for by command. */
export function LineUpDialog({ onClose }: DialogProps) {
  return (
    <Dialog title={texts.lineUpAndSpace} onClose={onClose}>
      <LineUpFields />
    </Dialog>
  );
}
