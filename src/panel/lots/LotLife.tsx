import { useMemo } from "react";
import type { Kind } from "../../core/kinds/crop.ts";
import { standardOf } from "../../core/lots/ageing.ts";
import { livesElsewhere, sealedLimit } from "../../core/lots/better-place.ts";
import { estimateOf } from "../../core/lots/estimate.ts";
import { bandWords } from "../../core/lots/band-words.ts";
import { noteWords, startWords, yearsWords } from "../../core/lots/lot-words.ts";
import type { Lot } from "../../core/model/plan.ts";
import { useKept } from "../state/plan-actions.ts";
import { LifeCurve } from "./LifeCurve.tsx";
import { today } from "../state/today.ts";
import * as texts from "./words.ts";
import { Sentence } from "../state/Sentence.tsx";

const LARGE_CURVE = { width: 260, height: 110 } as const;

interface LotLifeProps {
  readonly lot: Lot;
  readonly kind: Kind | undefined;
}

/** Is it alive: the band over the years, on what it rests, and what another place would do. */
export function LotLife({ lot, kind }: LotLifeProps) {
  const { plan } = useKept();
  const day = today();
  if (!kind) return null;
  const estimate = estimateOf(lot, kind, plan.storagePlaces);
  const standard = standardOf(kind);
  if (!estimate) {
    return <p>{texts.nothingCanSaidGermination(kind.name)}</p>;
  }
  const now = bandWords(estimate.at(Math.max(day, estimate.startDay)));
  const { earliest, latest } = estimate.under(standard);
  const bar = `${Math.round(standard * 100)} %`;
  // A test of a day yet to come speaks of that day.
  const isYetToCome = estimate.startDay > day;
  const from = startWords(estimate);
  const words = isYetToCome
    ? texts.germinationThen(now, from, bar)
    : texts.germinationNow(now, from, bar);
  return (
    <div className="lot-life">
      <LifeCurve
        lot={lot}
        estimate={estimate}
        standard={standard}
        today={day}
        box={LARGE_CURVE}
        label={words}
        hasYears
      />
      <p>
        <Sentence
          words={isYetToCome ? texts.bandThen : texts.bandNow}
          parts={{ band: <b>{now}</b>, from }}
        />
      </p>
      <p>
        {texts.underStandard({ earliest, latest, today: day }, bar)}{" "}
        {kind.germinationPercent ? texts.standardPublished : texts.standardHalf}
      </p>
      <p className="field-hint">
        {estimate.notes.map((note) => noteWords(note, kind)).join("; ")}.
      </p>
      <BetterPlaces lot={lot} kind={kind} />
    </div>
  );
}

function BetterPlaces({ lot, kind }: { readonly lot: Lot; readonly kind: Kind }) {
  const { plan } = useKept();
  const day = today();
  const lives = useMemo(() => livesElsewhere(lot, kind, plan, day), [lot, kind, plan, day]);
  const here = lot.stored?.at(-1)?.place;
  return (
    <details>
      <summary>{texts.anotherPlaceWouldDo}</summary>
      <table className="lot-places">
        <thead>
          <tr>
            <th scope="col">{texts.placeField}</th>
            <th scope="col">{texts.aboveItsStandardFor}</th>
          </tr>
        </thead>
        <tbody>
          {lives.map(({ place, isOwn, years }) => (
            <tr key={place.id}>
              <th scope="row">
                {place.name}
                {place.id === here ? ` ${texts.nowHere}` : isOwn ? "" : ` ${texts.anExample}`}
              </th>
              <td>{yearsWords(years)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="field-hint">{texts.dryBeforeYouSeal(sealedLimit(kind.id))}</p>
    </details>
  );
}
