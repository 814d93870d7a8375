import type { changePlantings } from "../../core/edits/object-edits.ts";
import { raisingOffer } from "../../core/kinds/raising-days.ts";
import { isSown } from "../../core/lots/sowing.ts";
import { shortDate } from "../../core/model/day.ts";
import type { Planting } from "../../core/model/plan.ts";
import { StandingOffer } from "../grown/StandingOffer.tsx";
import { DayField } from "../form/DayField.tsx";
import { useShownPlan, useShownResult } from "../state/use-shown-plan.ts";
import {
  CLEARED_WORDS,
  END_HINT,
  endProblem,
  setOutOffer,
  setOutReason,
  underGlassOffer,
  underGlassProblem,
  underGlassReason,
} from "./ground-days-words.ts";
import * as texts from "./dialog-words.ts";
import * as steps from "./step-words.ts";

interface GroundDaysProps {
  readonly planting: Planting;
  readonly onChange: (changes: Parameters<typeof changePlantings>[2], title: string) => void;
}

/** When it is sown under glass, and when its ground is cleared; with days offered for raising it. */
export function GroundDays({ planting, onChange }: GroundDaysProps) {
  const stand = useShownResult().standById.get(planting.id);
  const { code, start, end } = planting;
  const isCleared = stand?.whyNoBloom === "cleared";
  return (
    <>
      <StandingOffer planting={planting} onChange={onChange} />
      <h4>{texts.onTheGround}</h4>
      {stand && isSown(planting, stand.kind) && <Raising planting={planting} onChange={onChange} />}
      <DayField
        label={texts.clearedOn}
        value={end}
        hint={end === undefined ? END_HINT : `${shortDate(end)}. ${END_HINT}`}
        onApply={(day) => {
          const problem = endProblem(day, start?.date);
          if (problem !== null) return problem;
          onChange({ end: day }, day === undefined ? steps.stays(code) : steps.clearAway(code));
          return null;
        }}
      />
      {isCleared && <p className="field-hint">{CLEARED_WORDS}</p>}
    </>
  );
}

/** Two days: under glass, and out on the ground. Both are offered; the days typed decide. */
function Raising({ planting, onChange }: GroundDaysProps) {
  const { site } = useShownPlan();
  const kind = useShownResult().standById.get(planting.id)?.kind;
  const { code, start } = planting;
  if (!kind || start?.method === "sown") return null;
  const { setOut, underGlass } = raisingOffer(planting, kind, site.lastSpringFrost);
  const isSetOutNews = setOut !== null && start?.date !== setOut.day;
  const isGlassNews = start !== undefined && underGlass?.day !== start.sownUnderGlass;
  return (
    <>
      {start && (
        <DayField
          label={texts.sownUnderGlass}
          value={start.sownUnderGlass}
          onApply={(day) => {
            const problem = underGlassProblem(day, start.date);
            if (problem !== null) return problem;
            const { sownUnderGlass: _, ...rest } = start;
            const next = day === undefined ? rest : { ...rest, sownUnderGlass: day };
            onChange({ start: next }, steps.sowUnderGlass(code));
            return null;
          }}
        />
      )}
      {isSetOutNews && (
        <p className="field-hint">
          <button
            type="button"
            className="act"
            onClick={() => {
              const next = { ...start, method: "transplanted" as const, date: setOut.day };
              onChange({ start: next }, steps.setOut(code));
            }}
          >
            {setOutOffer(setOut)}
          </button>
          : {setOutReason(setOut)}.
        </p>
      )}
      {underGlass && isGlassNews && (
        <p className="field-hint">
          <button
            type="button"
            className="act"
            onClick={() =>
              onChange(
                { start: { ...start, sownUnderGlass: underGlass.day } },
                steps.sowUnderGlass(code),
              )
            }
          >
            {underGlassOffer(underGlass)}
          </button>
          : {underGlassReason(underGlass)}.
        </p>
      )}
    </>
  );
}
