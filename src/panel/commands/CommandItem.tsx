import type { ReactNode } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { commandById, runById, whyNot } from "./commands.ts";
import { MenuItem } from "../form/Menu.tsx";

interface CommandItemProps {
  readonly id: string;
  /** A shorter name, where the menu says the rest. */
  readonly children?: ReactNode;
}

/** A command in a menu. */
export function CommandItem({ id, children }: CommandItemProps) {
  const command = commandById(id);
  const isDisabled = usePlanStore((now) => whyNot(command, now) !== null);
  return (
    <MenuItem isDisabled={isDisabled} onPick={() => runById(id)}>
      {children ?? command.name}
    </MenuItem>
  );
}
