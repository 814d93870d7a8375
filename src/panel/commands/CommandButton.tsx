import type { ComponentProps } from "react";
import { type Command, runCommand, useWhyNot } from "./command.ts";

type CommandButtonProps = Omit<ComponentProps<"button">, "type" | "disabled" | "onClick"> & {
  readonly of: Command;
  /** What else is done once it has run. */
  readonly onRun?: () => void;
};

/** A command as a button: under the command's name unless the place asks for a shorter one. */
export function CommandButton({ of, onRun, children, title, ...button }: CommandButtonProps) {
  const reason = useWhyNot(of);
  return (
    <button
      {...button}
      type="button"
      disabled={reason !== null}
      title={title ?? reason ?? undefined}
      onClick={() => {
        runCommand(of);
        onRun?.();
      }}
    >
      {children ?? of.name}
    </button>
  );
}
