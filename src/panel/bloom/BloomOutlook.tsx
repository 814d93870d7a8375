import { Suspense, lazy, useMemo } from "react";
import { type DayWindow, bloomBasis } from "../../core/calendar/bloom-window.ts";
import { noBloomWords } from "../../core/calendar/no-bloom-words.ts";
import { firstFlower } from "../../core/calendar/first-flower.ts";
import type { Stand } from "../../core/checks/stand.ts";
import { shortDate } from "../../core/model/day.ts";
import { basisWords } from "./basis-words.ts";
import { basisNames } from "./bloom-words.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";

const ColdHint = lazy(async () => ({ default: (await import("./ColdHint.tsx")).ColdHint }));

/** First and last flower as the checks take them, how uncertain they are and on what they rest. */
export function BloomOutlook({ stand }: { readonly stand: Stand }) {
  const { bloom, sheds, receives } = stand;
  if (bloom === null) {
    return (
      <>
        <p className="field-hint">{noBloomHint(stand)}</p>
        <ColdNote stand={stand} />
      </>
    );
  }
  const { likely, outer } = bloom;
  return (
    <>
      <Fact name={texts.firstFlower} likely={likely.first} from={outer.first} to={null} />
      <Fact name={texts.lastFlower} likely={likely.last} from={null} to={outer.last} />
      {sheds && !isSame(sheds.outer, outer) && (
        <Part name={texts.shedsPollen} window={sheds.outer} />
      )}
      {receives && !isSame(receives.outer, outer) && (
        <Part name={texts.takesPollen} window={receives.outer} />
      )}
      <div className="field">
        <span className="field-name">{texts.restsOn}</span>
        <span className="field-value">{bloomBasis(bloom)}</span>
      </div>
      {bloom.isOpenEnded === true && <p className="field-hint">{texts.flowersOnUntilFrost}</p>}
      <BasisNote stand={stand} />
      <ColdNote stand={stand} />
    </>
  );
}

function noBloomHint({ whyNoBloom }: Stand): string {
  return whyNoBloom === null || whyNoBloom === "no-start"
    ? texts.noBloomDates
    : texts.bloomUnknown(noBloomWords(whyNoBloom));
}

interface FactProps {
  readonly name: string;
  readonly likely: number;
  readonly from: number | null;
  readonly to: number | null;
}

function Fact({ name, likely, from, to }: FactProps) {
  const earliest = from === null || from === likely ? "" : `, ${texts.atEarliest(shortDate(from))}`;
  const latest = to === null || to === likely ? "" : `, ${texts.atLatest(shortDate(to))}`;
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
        {texts.spanAtMost(shortDate(window.first), shortDate(window.last))}
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
  const { planting, variety, kind, setting, bloom } = stand;
  const words = useMemo(() => {
    if (planting?.bloom) return planting.bloom.basis ? null : texts.ownDatesCertain;
    if (!planting?.start || !variety) return null;
    const { flower } = firstFlower(planting, variety, kind, setting);
    if (!flower) return null;
    const first = basisWords(flower.figure, planting.start.method, units === "ft" ? "F" : "C");
    const isLengthLess = bloom !== null && bloom.closes !== bloom.opens;
    return isLengthLess ? texts.lengthRestsOn(first, basisNames[bloom.closes]) : first;
  }, [planting, variety, kind, setting, bloom, units]);
  return words === null ? null : <p className="field-hint">{words}</p>;
}

/** Biennials flower after cold: fetched for them alone. */
function ColdNote({ stand }: { readonly stand: Stand }) {
  if (stand.kind.lifeCycle !== "biennial") return null;
  return (
    <Suspense fallback={null}>
      <ColdHint stand={stand} />
    </Suspense>
  );
}
