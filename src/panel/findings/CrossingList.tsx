import { describeStanding } from "../../core/checks/pair-words.ts";
import { keptOf } from "../../core/checks/carried-run.ts";
import { touchingPairs } from "../../core/nearness/touching-pairs.ts";
import type { Standing } from "../../core/checks/isolation-pair.ts";
import { useShownResult, useWording } from "../state/use-shown-plan.ts";
import { YearsButton, mayTryYears } from "./YearsButton.tsx";
import { windowNow } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";

const standingSign: Readonly<Record<Standing, string>> = {
  distance: "✓",
  time: "✓",
  cover: "✓",
  conflict: "✕",
  unknown: "?",
};

/** What may cross with a stand, each way, and what keeps the two apart. */
export function CrossingList({ id }: { readonly id: string }) {
  const result = useShownResult();
  const wording = useWording();
  const touching = touchingPairs(keptOf(result), new Set([id]));
  return (
    <>
      <h4>{texts.mayCross}</h4>
      {touching.length === 0 ? (
        <p className="soft">{texts.nothingNearerThanDistance}</p>
      ) : (
        <ul className="plain-list crossing-list">
          {touching.map((pair) => {
            const isParent = pair.seedParent === id;
            const other = isParent ? pair.pollenSource : pair.seedParent;
            return (
              <li key={`${pair.seedParent} ${pair.pollenSource}`} className={pair.standing}>
                <span className="sign" aria-hidden="true">
                  {standingSign[pair.standing]}
                </span>
                <div>
                  {isParent ? texts.pollenOf : texts.itsPollenOn}
                  <button
                    type="button"
                    className="link"
                    onClick={() => windowNow().select([other])}
                  >
                    {wording.nameOf(other)}
                  </button>
                  : {describeStanding(pair, wording)}
                  {mayTryYears([
                    wording.standOf(pair.seedParent),
                    wording.standOf(pair.pollenSource),
                  ]) && (
                    <>
                      {" "}
                      <YearsButton
                        subjects={`${pair.seedParent} ${pair.pollenSource}`}
                        about={wording.nameOf(other)}
                      />
                    </>
                  )}
                </div>
              </li>
            );
          })}
        </ul>
      )}
    </>
  );
}
