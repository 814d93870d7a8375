import { useDeferredValue, useMemo, useState } from "react";
import { crossingEstimate } from "../../core/crossing-share/estimate.ts";
import { estimateWords, sourceWords } from "../../core/crossing-share/estimate-words.ts";
import {
  PLANTS_UNSAID,
  lineWords,
  offTypeWords,
  seeOneWords,
} from "../../core/crossing-share/off-type-words.ts";
import type { Shares } from "../../core/crossing-share/distance-bins.ts";
import { planBook } from "../../core/kinds/own-kinds.ts";
import type { Planting } from "../../core/model/plan.ts";
import { useCrossingShadeState } from "../../store/window/crossing-shade.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { crossingShade } from "./commands.ts";
import { CountField } from "../form/NumberField.tsx";
import { useShownPlan, useShownResult, useWording } from "../state/use-shown-plan.ts";
import { EstimateLines } from "./EstimateLines.tsx";
import * as texts from "./dialog-words.ts";

/** Sources listed: those that matter come first. */
const MOST_SOURCES = 8;

/** How much of a planting's seed would be crossed, source by source, and what that means. */
export function CrossingShare({ planting }: { readonly planting: Planting }) {
  const plan = useShownPlan();
  // A drag goes before what follows it.
  const result = useDeferredValue(useShownResult());
  const wording = useDeferredValue(useWording());
  const book = planBook(plan);
  const told = useMemo(() => {
    const stand = result.standById.get(planting.id);
    const estimate = stand ? crossingEstimate(stand, result.stands, book) : null;
    return (
      estimate && {
        words: estimateWords(estimate, result, wording),
        sources: sourceWords(estimate, result, wording),
      }
    );
  }, [result, wording, book, planting.id]);
  if (told === null) {
    return <p className="soft">{texts.nothingPlanCouldCross}</p>;
  }
  const { words, sources } = told;
  return (
    <>
      <EstimateLines words={words} />
      <ShadeButton />
      {sources.length > 1 && (
        <>
          <h5>{texts.sourceBySource}</h5>
          <ul className="plain-list">
            {sources.slice(0, MOST_SOURCES).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          {sources.length > MOST_SOURCES && (
            <p className="soft">{texts.andThatSendLess(sources.length - MOST_SOURCES)}</p>
          )}
        </>
      )}
      {words.shares && <WhatItMeans shares={words.shares} plants={planting.plants} />}
    </>
  );
}

/** On the sheet: where more and where less would cross. */
function ShadeButton() {
  const isAsked = useCrossingShadeState((state) => state.isAsked);
  return (
    <CommandButton of={crossingShade} className="quiet" aria-pressed={isAsked}>
      {texts.shadeTheSheet}
    </CommandButton>
  );
}

/** Kept while the window is open: the same questions are asked of planting after planting. */
const asked = { seasons: 5, rogued: 50 };

/** Crossed plants among those of next year, and the line after some seasons. */
function WhatItMeans({
  shares,
  plants,
}: {
  readonly shares: Shares;
  readonly plants: number | undefined;
}) {
  const [grown, setGrown] = useState<number>();
  const [seasons, setSeasons] = useState(asked.seasons);
  const [rogued, setRogued] = useState(asked.rogued);
  const among = grown ?? plants ?? PLANTS_UNSAID;
  return (
    <>
      <h5>{texts.whatItMeans}</h5>
      <div className="fields">
        <CountField label={texts.plantsGrownNextYear} value={among} onApply={setGrown} />
        <CountField
          label={texts.seasonsAtThisShare}
          value={seasons}
          onApply={(count) => setSeasons((asked.seasons = Math.min(100, count ?? 5)))}
        />
        <CountField
          label={texts.crossedPlantsRoguedOf}
          value={rogued}
          onApply={(count) => setRogued((asked.rogued = Math.min(100, count ?? 0)))}
        />
      </div>
      <ul className="plain-list" aria-live="polite">
        <li>{offTypeWords(among, shares)}</li>
        <li>{seeOneWords(shares)}</li>
        <li>{lineWords(shares, seasons, rogued / 100)}</li>
      </ul>
    </>
  );
}
