import { useDeferredValue, useMemo, useState } from "react";
import { days } from "../../core/checks/day-words.ts";
import { CountField } from "../form/NumberField.tsx";
import { springWords } from "./bloom-words.ts";
import { springTest } from "./late-spring.ts";
import { windowNow } from "../state/plan-actions.ts";
import { useShownResult, useWording } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";
import * as texts from "./words.ts";

const USUAL_SHIFT_DAYS = 7;

/** Which pairs that rest on time alone a late (or early) spring would undo. */
export function LateSpringTrial() {
  const pairs = useDeferredValue(useShownResult().pairs);
  const { nameOf } = useWording();
  const [shiftDays, setShiftDays] = useState(USUAL_SHIFT_DAYS);
  const test = useMemo(() => springTest(pairs, shiftDays), [pairs, shiftDays]);
  const show = (ids: readonly string[]) => {
    windowNow().select(ids);
    viewNow().showSheet();
    windowNow().bringIntoView(ids);
  };
  return (
    <div className="late-spring">
      <CountField
        label={texts.shiftUpTo}
        value={shiftDays}
        onApply={(count) => setShiftDays(count ?? USUAL_SHIFT_DAYS)}
      />
      <p role="status">{springWords(test)}</p>
      {test.lost.length > 0 && (
        <ul className="plain-list">
          {test.lost.map(({ a, b, slackDays }) => (
            <li key={`${a} ${b}`}>
              <button type="button" className="link" onClick={() => show([a, b])}>
                {texts.pairNamed(nameOf(a), nameOf(b))}
              </button>
              : {slackDays === 0 ? texts.noSlack : texts.ofSlack(days(slackDays))}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
