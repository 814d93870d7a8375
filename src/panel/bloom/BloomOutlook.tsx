import { useMemo } from "react";
import type { DayWindow } from "../../core/calendar/bloom-window.ts";
import { coldFelt } from "../../core/calendar/cold-felt.ts";
import { firstFlower } from "../../core/calendar/planting-bloom.ts";
import type { Stand } from "../../core/checks/stand.ts";
import { shortDate } from "../../core/model/day.ts";
import { basisWords, coldWords } from "./bloom-basis.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";

/** First and last flower as the checks take them, how uncertain they are and on what they rest. */
export function BloomOutlook({ stand }: { readonly stand: Stand }) {
  const { bloom, sheds, receives } = stand;
  if (bloom === null) {
    return (
      <>
        <p className="field-hint">No bloom dates: type a start, or the bloom dates below.</p>
        <ColdNote stand={stand} />
      </>
    );
  }
  const { likely, outer } = bloom;
  return (
    <>
      <Fact name="First flower" likely={likely.first} from={outer.first} to={null} />
      <Fact name="Last flower" likely={likely.last} from={null} to={outer.last} />
      {sheds && !isSame(sheds.outer, outer) && <Part name="Sheds pollen" window={sheds.outer} />}
      {receives && !isSame(receives.outer, outer) && (
        <Part name="Takes pollen" window={receives.outer} />
      )}
      <BasisNote stand={stand} />
      <ColdNote stand={stand} />
    </>
  );
}

interface FactProps {
  readonly name: string;
  readonly likely: number;
  readonly from: number | null;
  readonly to: number | null;
}

function Fact({ name, likely, from, to }: FactProps) {
  const earliest = from === null || from === likely ? "" : `, at the earliest ${shortDate(from)}`;
  const latest = to === null || to === likely ? "" : `, at the latest ${shortDate(to)}`;
  return (
    <div className="field">
      <span className="field-name">{name}</span>
      <span className="field-value">
        {shortDate(likely)}
        {earliest}
        {latest}
      </span>
    </div>
  );
}

function Part({ name, window }: { readonly name: string; readonly window: DayWindow }) {
  return (
    <div className="field">
      <span className="field-name">{name}</span>
      <span className="field-value">
        {shortDate(window.first)} to {shortDate(window.last)} at most
      </span>
    </div>
  );
}

function isSame(a: DayWindow, b: DayWindow): boolean {
  return a.first === b.first && a.last === b.last;
}

/** What the bloom was counted with; own dates need no word. */
function BasisNote({ stand }: { readonly stand: Stand }) {
  const { units } = useShownPlan();
  const { planting, variety, kind, climate } = stand;
  const words = useMemo(() => {
    if (planting?.bloom) return "Own dates, taken as certain.";
    if (!planting?.start || !variety) return null;
    const first = firstFlower(planting, variety, kind, climate);
    return first && basisWords(first.figure, planting.start.method, units === "ft" ? "F" : "C");
  }, [planting, variety, kind, climate, units]);
  return words === null ? null : <p className="field-hint">{words}</p>;
}

/** Biennials flower after cold. */
function ColdNote({ stand: { kind, climate, season } }: { readonly stand: Stand }) {
  const words = useMemo(() => {
    if (kind.lifeCycle !== "biennial") return null;
    return coldWords(climate ? coldFelt(kind.id, season.first, climate) : null, kind.name);
  }, [kind, climate, season]);
  return words === null ? null : <p className="field-hint">{words}</p>;
}
