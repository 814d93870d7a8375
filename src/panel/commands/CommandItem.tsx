import type { ReactNode } from "react";
import { type Command, runCommand, useWhyNot } from "./command.ts";
import { MenuItem } from "../form/Menu.tsx";

interface CommandItemProps {
  readonly of: Command;
  /** A shorter name, where the menu says the rest. */
  readonly children?: ReactNode;
}

/** A command in a menu. */
export function CommandItem({ of, children }: CommandItemProps) {
  const isDisabled = useWhyNot(of) !== null;
  return (
    <MenuItem isDisabled={isDisabled} onPick={() => runCommand(of)}>
      {children ?? of.name}
    </MenuItem>
  );
}
