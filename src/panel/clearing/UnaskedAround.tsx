import { useMemo } from "react";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { unaskedAround } from "../../core/fieldwork/unasked-around.ts";
import { unaskedWords } from "../../core/fieldwork/unasked-words.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";

/** What being clear does not rest on: pollen around that nothing is said of. */
export function UnaskedAround({ result }: { readonly result: CheckResult }) {
  const units = usePlanStore((state) => state.plan.units);
  const words = useMemo(() => unaskedWords(unaskedAround(result), units), [result, units]);
  if (words === null) return null;
  return (
    <>
      <p>{words.head}</p>
      <ul>
        {words.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p>{words.advice}</p>
    </>
  );
}
