/** A dialog: its name, and its component, fetched when it is first opened. */
import { type ComponentType, createElement, lazy } from "react";
import { viewNow } from "./view-state.ts";

/** What every dialog is given: how it is put away. */
export interface DialogProps {
  readonly onClose: () => void;
}

type Given<Props> = Omit<Props, "onClose">;

export interface Dialog<Name extends string, Props> {
  readonly name: Name;
  /** Takes what the component asks for, if it asks for anything, and replaces an open dialog. */
  readonly open: (...given: keyof Given<Props> extends never ? [] : [Given<Props>]) => void;
}

/** `dialog("cut-bed", async () => (await import("./CutBedDialog.tsx")).CutBedDialog)` */
export function dialog<Name extends string, Props extends DialogProps>(
  name: Name,
  load: () => Promise<ComponentType<Props>>,
): Dialog<Name, Props> {
  const Content: ComponentType<Props> = lazy(async () => ({ default: await load() }));
  return {
    name,
    open: (...[given]) => {
      const { openDialog, closeDialog } = viewNow();
      const props = { ...given, onClose: closeDialog } as Props;
      openDialog({ name, content: createElement(Content, props) });
    },
  };
}
