import { useId } from "react";
import { walkWords as words } from "./walk-words.ts";

interface StepperProps {
  readonly label: string;
  /** Undefined: not counted. */
  readonly value: number | undefined;
  readonly onSet: (value: number | undefined) => void;
}

/** As many as a plan holds. */
const MOST = 10_000_000;

/** A count by large buttons, or typed. Below 0 there is nothing; emptied it is not counted. */
export function Stepper({ label, value, onSet }: StepperProps) {
  const id = useId();
  const by = (step: number) => onSet(Math.min(MOST, Math.max(0, (value ?? 0) + step)));
  return (
    <div className="walk-stepper">
      <label htmlFor={id}>{label}</label>
      <button type="button" aria-label={`${label}: ${words.fewer}`} onClick={() => by(-1)}>
        −
      </button>
      <input
        id={id}
        type="text"
        inputMode="numeric"
        autoComplete="off"
        placeholder="?"
        value={value ?? ""}
        onChange={({ target }) => {
          const digits = target.value.replace(/\D/g, "").slice(0, 8);
          onSet(digits === "" ? undefined : Math.min(MOST, Number(digits)));
        }}
      />
      <button type="button" aria-label={`${label}: ${words.further}`} onClick={() => by(1)}>
        +
      </button>
      <button type="button" aria-label={`${label}: ${words.tenMore}`} onClick={() => by(10)}>
        +10
      </button>
    </div>
  );
}
