import { useId } from "react";
import { adjustmentWords } from "../../core/distances/adjustment-words.ts";
import { cautions } from "../../core/kinds/caution-words.ts";
import type { Kind } from "../../core/kinds/crop.ts";
import { offeredAdjustments } from "../../core/distances/stated-adjustments.ts";
import { placeWords } from "../../core/distances/distance-words.ts";
import type { Variety } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { FigureCrossings } from "./FigureCrossings.tsx";
import { FigureDefaults } from "./FigureDefaults.tsx";
import { FigureFacts } from "./FigureFacts.tsx";
import { FigureList } from "./FigureList.tsx";
import { FigureSource } from "./FigureSource.tsx";
import { requirementWords, varietyRequirement } from "../state/requirement-words.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";
import { Sentence } from "../state/Sentence.tsx";
import { levelNames } from "../../core/words/level-words.ts";

interface FigureKindPageProps {
  readonly kind: Kind;
  /** Varieties of the kind a figure can be picked for. */
  readonly varieties: readonly Variety[];
  readonly varietyId: string | null;
  readonly onVariety: (id: string) => void;
  readonly onPick: (variety: Variety, figure: string | undefined) => void;
}

/** One kind: what it crosses with, every figure, and all else that is known of it. */
export function FigureKindPage(props: FigureKindPageProps) {
  const { kind, varieties, varietyId, onVariety, onPick } = props;
  const { units } = useShownPlan();
  const book = usePlanStore((state) => state.book);
  const variety = varieties.find(({ id }) => id === varietyId) ?? varieties[0] ?? null;
  return (
    <>
      <p>
        <i lang="la">{kind.botanicalName}</i>
        {kind.family !== "" && `, ${kind.family}`}
        {kind.otherNames.length > 0 && `; ${texts.alsoCalled(kind.otherNames)}`}
        {kind.sharedNames && `; ${texts.calledWithOthers(kind.sharedNames)}`}
      </p>
      <section>
        <h4>{texts.distanceByTheRule}</h4>
        <FigureDefaults kind={kind} unit={units} />
      </section>
      <section>
        <h4>{texts.allIsolationFigures}</h4>
        {variety && <FigureUse varieties={varieties} variety={variety} onVariety={onVariety} />}
        <FigureList
          kind={kind}
          unit={units}
          variety={variety}
          onPick={(figure) => variety && onPick(variety, figure)}
        />
      </section>
      <FigureCrossings kind={kind} book={book} />
      <FigureFacts kind={kind} unit={units} />
      <FigureChanges kindId={kind.id} />
      <FigureCautions ids={kind.cautions ?? []} />
    </>
  );
}

interface FigureUseProps {
  readonly varieties: readonly Variety[];
  readonly variety: Variety;
  readonly onVariety: (id: string) => void;
}

/** Which variety a figure is picked for, and what that one is held to now. */
function FigureUse({ varieties, variety, onVariety }: FigureUseProps) {
  const plan = useShownPlan();
  const book = usePlanStore((state) => state.book);
  const id = useId();
  return (
    <div className="figure-use">
      {varieties.length > 1 && (
        <p>
          <label htmlFor={id}>{texts.pickFigureLabel}</label>{" "}
          <select id={id} value={variety.id} onChange={(event) => onVariety(event.target.value)}>
            {varieties.map((entry) => (
              <option key={entry.id} value={entry.id}>
                {entry.name}
              </option>
            ))}
          </select>
        </p>
      )}
      <p role="status">
        <Sentence
          words={texts.atLevel}
          parts={{
            variety: <bdi>{variety.name}</bdi>,
            level: levelNames[plan.level],
            needs: requirementWords(varietyRequirement(plan, variety, book), plan.units),
          }}
        />
        {variety.isolationM !== undefined && ` ${texts.ownGoesBefore}`}
      </p>
    </div>
  );
}

function FigureChanges({ kindId }: { readonly kindId: string }) {
  const offers = offeredAdjustments(kindId);
  if (offers.length === 0) return null;
  return (
    <section>
      <h4>{texts.regulationsHeading}</h4>
      <p>{texts.neverUnasked}</p>
      <ul className="figure-notes">
        {offers.map((offer) => {
          const effect = offer.asks.length === 0 ? offer.effectOf({ id: offer.id }) : null;
          return (
            <li key={offer.id}>
              {texts.where(offer.condition)}
              {effect ? adjustmentWords(effect) : texts.lessByRows}
              {offer.note !== undefined && `; ${offer.note}`} ({placeWords(offer)}).
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function FigureCautions({ ids }: { readonly ids: readonly string[] }) {
  const found = cautions.filter(({ id }) => ids.includes(id));
  if (found.length === 0) return null;
  return (
    <section>
      <h4>{texts.cautions}</h4>
      <ul className="figure-notes">
        {found.map(({ id, title, text, source }) => (
          <li key={id}>
            <b>{title}.</b> {text} <FigureSource id={source} />
          </li>
        ))}
      </ul>
    </section>
  );
}
