import { useMemo } from "react";
import type { Kind } from "../../core/kinds/crop.ts";
import { standardOf } from "../../core/lots/ageing.ts";
import { livesElsewhere, sealedLimit } from "../../core/lots/better-place.ts";
import { estimateOf } from "../../core/lots/estimate.ts";
import { bandWords } from "../../core/lots/band-words.ts";
import { noteWords, startWords, yearsWords } from "../../core/lots/lot-words.ts";
import { civilFromDay } from "../../core/model/day.ts";
import type { Lot } from "../../core/model/plan.ts";
import { useKept } from "../state/plan-actions.ts";
import { LifeCurve } from "./LifeCurve.tsx";
import { today } from "../state/today.ts";
import * as texts from "./words.ts";

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
  const when = estimate.startDay > day ? "" : " now";
  const words = `Germination${when} ${now}, ${startWords(estimate)}. The standard is ${bar}.`;
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
        <b>{now}</b>
        {when}, {startWords(estimate)}.
      </p>
      <p>
        {texts.itsStandardOf(underWords(earliest, latest, day), bar)}
        {kind.germinationPercent ? texts.cfr : texts.halfNoneIsPublished}.
      </p>
      <p className="field-hint">
        {estimate.notes.map((note) => noteWords(note, kind)).join("; ")}.
      </p>
      <BetterPlaces lot={lot} kind={kind} />
    </div>
  );
}

/** `May fall under in 2029, surely by 2034`, before `its standard`. */
function underWords(earliest: number | null, latest: number | null, day: number): string {
  const year = (value: number) => String(civilFromDay(value).year);
  if (earliest === null) return "Stays for a hundred years above";
  if (latest !== null && latest <= day) return "By this estimate it lies under";
  if (earliest <= day) {
    return latest === null
      ? "It may lie under already"
      : `It may lie under already, and surely by ${year(latest)} is under`;
  }
  return latest === null || year(latest) === year(earliest)
    ? `From ${year(earliest)} it may fall under`
    : `From ${year(earliest)} it may, by ${year(latest)} it surely will fall under`;
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
            <th scope="col">{texts.place}</th>
            <th scope="col">{texts.aboveItsStandardFor}</th>
          </tr>
        </thead>
        <tbody>
          {lives.map(({ place, isOwn, years }) => (
            <tr key={place.id}>
              <th scope="row">
                {place.name}
                {place.id === here ? texts.now : isOwn ? "" : texts.anExample}
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
