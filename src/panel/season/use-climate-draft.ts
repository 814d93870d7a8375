/** The climate being typed, pasted or read, until it is kept. */
import { useMemo, useState } from "react";
import { readNormals } from "../../core/calendar/read-normals.ts";
import type { TemperatureUnit } from "../../core/calendar/temperature-text.ts";
import type { Climate } from "../../core/model/plan.ts";
import { problemText } from "../../core/model/problem.ts";
import {
  type CellFault,
  type ClimateDraft,
  cellFaults,
  cellsOf,
  climateOf,
  draftOf,
} from "./climate-draft.ts";

interface DraftedClimate {
  readonly draft: ClimateDraft;
  readonly unit: TemperatureUnit;
  /** Fields that cannot be kept: told once keeping was tried. */
  readonly faults: readonly CellFault[];
  readonly problems: readonly string[];
  /** The climate as typed; undefined while it holds no temperatures or faulty ones. */
  readonly climate: Climate | undefined;
  readonly change: (next: ClimateDraft) => void;
  readonly pickUnit: (unit: TemperatureUnit) => void;
  readonly paste: (text: string) => void;
  /** Whether it can be kept; tells why not. */
  readonly check: () => boolean;
}

export function useClimateDraft(
  kept: Climate | undefined,
  usualUnit: TemperatureUnit,
): DraftedClimate {
  const [unit, setUnit] = useState(usualUnit);
  const [draft, setDraft] = useState(() => draftOf(kept, usualUnit));
  const [isTried, setTried] = useState(false);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const faults = useMemo(() => cellFaults(draft, unit), [draft, unit]);
  const climate = useMemo(
    () => (faults.length === 0 ? climateOf(draft, unit, kept) : undefined),
    [faults, draft, unit, kept],
  );
  return {
    draft,
    unit,
    faults: isTried ? faults : [],
    problems,
    climate,
    change: (next) => {
      setProblems([]);
      setDraft(next);
    },
    pickUnit: (next) => {
      // Kept numbers are shown in the other unit; numbers just typed are only read differently.
      const before = draftOf(kept, unit);
      const isTouched = String([draft.min, draft.max]) !== String([before.min, before.max]);
      if (!isTouched) setDraft({ ...draft, ...cellsOf(kept?.normals, next) });
      setUnit(next);
    },
    paste: (text) => {
      const read = readNormals(text, unit);
      setProblems(read.ok ? [] : read.problems.map(problemText));
      if (read.ok) setDraft({ ...draft, ...cellsOf(read.value, unit) });
    },
    check: () => {
      setTried(true);
      setProblems(faults.map((fault) => fault.reason));
      return faults.length === 0;
    },
  };
}
