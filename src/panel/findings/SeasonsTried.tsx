import { useMemo } from "react";
import { pairsOverYears } from "../../core/crossing-share/seasons-tried.ts";
import { seasonsWords, yearsTitle } from "../../core/crossing-share/seasons-words.ts";
import { wordingOf } from "../../core/checks/checked-layout.ts";
import { useKept } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";

interface SeasonsTriedProps {
  /** Ids of two stands, with a space between. */
  readonly subjects: string;
}

/** The two held against each other in every year of the site's record; not during a drag. */
export function SeasonsTried({ subjects }: SeasonsTriedProps) {
  // The committed plan: the years do not follow a drag.
  const kept = useKept();
  const lines = useMemo(() => {
    const ids = subjects.split(" ");
    const { nameOf } = wordingOf(kept);
    const pairs = kept.result.pairs.filter(
      (pair) => ids.includes(pair.seedParent) && ids.includes(pair.pollenSource),
    );
    const tried = pairsOverYears(pairs, kept.result.standById).map(({ pair, seasons }) => ({
      parent: nameOf(pair.seedParent),
      words: seasonsWords(seasons),
    }));
    const isOne = tried.every(({ words }) => words === tried[0]?.words);
    return isOne
      ? tried.slice(0, 1).map(({ words }) => texts.theTwo(words))
      : tried.map(({ parent, words }) => texts.seedOf(parent, words));
  }, [kept, subjects]);
  return (
    <div className="stagger" role="status">
      {lines.length === 0 ? (
        <p>{texts.yearsRecordTellNothing}</p>
      ) : (
        <>
          <p className="soft">{yearsTitle(kept.plan.site.climate)}.</p>
          {lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </>
      )}
    </div>
  );
}
