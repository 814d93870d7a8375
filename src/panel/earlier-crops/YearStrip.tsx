import { useEffect, useState } from "react";
import { yearsKnown } from "../../core/ground/ground-history.ts";
import { civilFromDay } from "../../core/model/day.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { windowNow } from "../state/plan-actions.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { cropsOfYear } from "./ground-history-words.ts";
import * as texts from "./words.ts";
import "./year-strip.css";

/** Years of the ground: pick one, and the sheet shows what stood there. Folded until asked for. */
export function YearStrip() {
  const plan = useShownPlan();
  const year = useWindowStore((state) => state.year);
  const [isOpen, setOpen] = useState(false);
  // A sheet without its strip must not be left in another year.
  useEffect(
    () => () => {
      if (windowNow().year !== null) windowNow().showYear(null);
    },
    [],
  );
  const years = yearsKnown(plan);
  const season = civilFromDay(plan.season.first).year;
  const fold = () => {
    if (isOpen) windowNow().showYear(null);
    setOpen(!isOpen);
  };
  const show = (next: number | null) => {
    windowNow().showYear(next);
    // Nobody moves what is out of sight.
    if (next !== null) windowNow().select([]);
    windowNow().announce(
      next === null ? texts.sheetShowsSeason(plan.season.name) : texts.sheetShowsYear(next),
    );
  };
  const span = `${Math.min(...years)} to ${Math.max(...years)}`;
  return (
    <section className="year-strip" aria-label={texts.yearsOfTheGround}>
      <span className="year-strip-head">{texts.ground}</span>
      {isOpen ? (
        <div className="year-strip-years" role="group" aria-label={texts.yearShownSheet}>
          <YearButton
            label={texts.thisSeason(season)}
            isOn={year === null}
            onPick={() => show(null)}
          />
          {years.map((each) => (
            <YearButton
              key={each}
              label={String(each)}
              note={cropsOfYear(plan.earlierCrops.filter((crop) => crop.year === each).length)}
              isOn={year === each}
              onPick={() => show(each)}
            />
          ))}
        </div>
      ) : (
        <span className="soft">{texts.whatStoodHere(span)}</span>
      )}
      <button type="button" className="quiet fold" aria-expanded={isOpen} onClick={fold}>
        {isOpen ? texts.hide : texts.years}
      </button>
    </section>
  );
}

interface YearButtonProps {
  readonly label: string;
  readonly note?: string;
  readonly isOn: boolean;
  readonly onPick: () => void;
}

function YearButton({ label, note, isOn, onPick }: YearButtonProps) {
  return (
    <button type="button" className="quiet" aria-pressed={isOn} onClick={onPick}>
      {label}
      {note !== undefined && <span className="soft"> {note}</span>}
    </button>
  );
}
