import { Suspense, lazy, useState } from "react";
import type { Stand } from "../../core/checks/stand.ts";
import * as texts from "./dialog-words.ts";

// Counts heat on every day of many years: only when it is asked for.
const SeasonsTried = lazy(async () => {
  const { SeasonsTried: Loaded } = await import("./SeasonsTried.tsx");
  return { default: Loaded };
});

const DAYS_OF_A_YEAR = 365;

/** Whether the years of a record may make a difference to two stands: heat counts for one of them. */
export function mayTryYears(stands: readonly (Stand | undefined)[]): boolean {
  return stands.some(
    (stand) =>
      stand?.bloom?.counted === "heat" &&
      (stand.setting.climate?.days?.minC.length ?? 0) > DAYS_OF_A_YEAR,
  );
}

interface YearsButtonProps {
  /** Ids of two stands, with a space between. */
  readonly subjects: string;
  /** What the button is about, for who does not see where it stands. */
  readonly about: string;
}

/** In how many of the recorded years the two would have flowered together. */
export function YearsButton({ subjects, about }: YearsButtonProps) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        className="link"
        aria-expanded={isOpen}
        aria-label={texts.yearsTried(about)}
        onClick={() => setOpen(!isOpen)}
      >
        {texts.yearsTried2}
      </button>
      {isOpen && (
        <Suspense fallback={<span role="status">{texts.tryingTheYears}</span>}>
          <SeasonsTried subjects={subjects} />
        </Suspense>
      )}
    </>
  );
}
