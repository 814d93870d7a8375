import { useMemo } from "react";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { measuredToPoint, unaskedAround } from "../../core/fieldwork/unasked-around.ts";
import { type UnaskedWords, pointWords, unaskedWords } from "../../core/fieldwork/unasked-words.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import * as texts from "./resting-words.ts";

/** No conflict is not "all fine": on what the clear pairs rest. */
export function Resting({ result }: { readonly result: CheckResult }) {
  const { pairs, stands } = result;
  const hasSeed = useMemo(() => stands.some((stand) => stand.isSeedParent), [stands]);
  const sentences = useMemo(() => texts.restingWords(pairs, hasSeed), [pairs, hasSeed]);
  const isClear = hasSeed && !pairs.some((pair) => pair.standing === "unknown");
  return (
    <div className={isClear ? "resting" : "resting undecided"}>
      {hasSeed && <p>{isClear ? texts.noConflict : texts.noConflictFoundBut}</p>}
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <UnaskedAround result={result} />
    </div>
  );
}

/** What being clear does not rest on: pollen around that nothing is said of, or too little. */
function UnaskedAround({ result }: { readonly result: CheckResult }) {
  const units = usePlanStore((state) => state.plan.units);
  const points = useMemo(() => pointWords(measuredToPoint(result)), [result]);
  const words = useMemo(() => unaskedWords(unaskedAround(result), units), [result, units]);
  return (
    <>
      {points !== null && <p>{points}</p>}
      {words !== null && <Unasked {...words} />}
    </>
  );
}

function Unasked(words: UnaskedWords) {
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
