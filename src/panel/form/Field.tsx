/** A labelled row of a form: label, control, and below it a hint or why the input cannot be used. */
import { type ReactNode, useId } from "react";

export interface FieldParts {
  readonly id: string;
  readonly hint: ReactNode;
  readonly reason: string | null;
  /** What ties the control to its label, hint and reason. */
  readonly control: {
    readonly id: string;
    readonly "aria-describedby": string | undefined;
    readonly "aria-invalid": true | undefined;
  };
}

/** @param reason why what is typed cannot be used, or null */
export function useFieldParts(hint: ReactNode, reason: string | null = null): FieldParts {
  const id = useId();
  const hasHint = hint !== undefined && hint !== null && hint !== "";
  const described = [reason === null ? "" : `${id}-reason`, hasHint ? `${id}-hint` : ""]
    .filter((part) => part !== "")
    .join(" ");
  return {
    id,
    hint: hasHint ? hint : null,
    reason,
    control: {
      id,
      "aria-describedby": described === "" ? undefined : described,
      "aria-invalid": reason === null ? undefined : true,
    },
  };
}

interface FieldProps {
  readonly label: string;
  readonly parts: FieldParts;
  readonly children: ReactNode;
}

export function Field({ label, parts, children }: FieldProps) {
  const { id, hint, reason } = parts;
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <div className="field-control">
        {children}
        {reason !== null && (
          <p className="field-reason" id={`${id}-reason`} role="alert">
            {reason}
          </p>
        )}
        {hint !== null && (
          <p className="field-hint" id={`${id}-hint`}>
            {hint}
          </p>
        )}
      </div>
    </div>
  );
}

/** Why a form cannot be kept as it is typed; nothing where it can. */
export function FormProblem({ problem }: { readonly problem: string | null }) {
  return (
    problem !== null && (
      <p className="field-reason" role="alert">
        {problem}
      </p>
    )
  );
}
