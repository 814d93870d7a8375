import { type ReactNode, useMemo, useState } from "react";
import { type Comparison, baseLayout, compareLayouts } from "../../core/compare/compare-layouts.ts";
import { type CheckedLayout, checkLayouts } from "../../core/checks/checked-layout.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { compareCsv } from "../../core/compare/compare-report.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { CompareDifferences } from "./CompareDifferences.tsx";
import { CompareMeasures } from "./CompareMeasures.tsx";
import { ComparePrint } from "./ComparePrint.tsx";
import { downloadBytes } from "../form/download.ts";
import { useKept } from "../state/plan-actions.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { copyLayout } from "../layouts/commands.ts";
import * as texts from "./words.ts";
import "./compare.css";

/** One layout to be drawn, and the one whose differences are marked on it. */
interface Drawn {
  readonly layout: Layout;
  readonly result: CheckResult;
  readonly against: Layout | null;
}

interface CompareProps {
  /** Draws layouts beside each other; overlaid with old places as well. */
  readonly drawing: (panes: readonly Drawn[], isOverlaid: boolean) => ReactNode;
}

/** Layouts of the plan side by side or overlaid, measured in a table, and what differs in words. */
export function Compare({ drawing }: CompareProps) {
  // The kept plan: what is only being tried is no layout to choose.
  const kept = useKept();
  const { plan } = kept;
  const [fromId, setFromId] = useState<string | null>(null);
  const [leftOut, setLeftOut] = useState<ReadonlySet<string>>(new Set());
  const [isOverlaid, setOverlaid] = useState(false);
  const from = fromId === null ? baseLayout(plan) : layoutOf(plan, fromId);
  const all = useMemo(() => checkedBeside(kept), [kept]);
  const compared = useMemo(() => {
    const others = all.filter(({ layout: { id } }) => id !== from.id && !leftOut.has(id));
    return [...all.filter(({ layout }) => layout === from), ...others];
  }, [all, from, leftOut]);
  const panes = useMemo(
    () =>
      compared.map(({ layout, result }) => ({
        layout,
        result,
        against: layout === from ? null : from,
      })),
    [compared, from],
  );
  const comparison = useMemo(() => compareLayouts(compared), [compared]);
  const drawn = useMemo(() => (isOverlaid ? panes.slice(1) : panes), [panes, isOverlaid]);
  if (plan.layouts.length === 1) return <OneLayout layout={from} />;
  const toggle = (id: string) => {
    const next = new Set(leftOut);
    if (!next.delete(id)) next.add(id);
    setLeftOut(next);
  };
  return (
    <section className="compare" aria-label={texts.layoutsCompared}>
      <CompareBar
        plan={plan}
        from={from}
        compared={compared}
        isOverlaid={isOverlaid}
        comparison={comparison}
        onFrom={setFromId}
        onToggle={toggle}
        onOverlay={setOverlaid}
      />
      {compared.length < 2 ? (
        <p className="region-empty">{texts.tickSecondLayoutCompare(from.name)}</p>
      ) : (
        <>
          {drawing(drawn, isOverlaid)}
          <CompareMeasures comparison={comparison} plan={plan} />
          <CompareDifferences
            plan={plan}
            from={from}
            others={compared.slice(1).map(({ layout }) => layout)}
          />
        </>
      )}
    </section>
  );
}

/** Every layout of the kept plan checked, in its order; the one on screen has its checks at hand. */
function checkedBeside(kept: CheckedLayout): readonly CheckedLayout[] {
  const { plan } = kept;
  const others = checkLayouts(
    plan,
    plan.layouts.filter((layout) => layout !== kept.layout),
  );
  const byId = new Map([kept, ...others].map((checked) => [checked.layout.id, checked]));
  return plan.layouts.flatMap(({ id }) => byId.get(id) ?? []);
}

interface CompareBarProps {
  readonly plan: Plan;
  readonly from: Layout;
  /** From first. */
  readonly compared: readonly CheckedLayout[];
  readonly isOverlaid: boolean;
  readonly comparison: Comparison;
  readonly onFrom: (id: string) => void;
  readonly onToggle: (id: string) => void;
  readonly onOverlay: (isOverlaid: boolean) => void;
}

/** What is compared with what, how it is drawn, and ways to keep it. */
function CompareBar(props: CompareBarProps) {
  const { plan, from, compared, isOverlaid, comparison, onFrom, onToggle, onOverlay } = props;
  const save = () => {
    const bytes = new TextEncoder().encode(`\uFEFF${compareCsv(comparison)}`);
    downloadBytes(bytes, "layouts-compared.csv", "text/csv");
  };
  return (
    <div className="compare-bar">
      <label>
        {texts.differencesFrom}{" "}
        <select value={from.id} onChange={(event) => onFrom(event.target.value)}>
          {plan.layouts.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <fieldset className="compare-choice">
        <legend>{texts.to}</legend>
        {plan.layouts
          .filter(({ id }) => id !== from.id)
          .map(({ id, name }) => (
            <label key={id} className="check-field">
              <input
                type="checkbox"
                checked={compared.some((each) => each.layout.id === id)}
                onChange={() => onToggle(id)}
              />
              {name}
            </label>
          ))}
      </fieldset>
      <div className="view-tabs" role="group" aria-label={texts.howLayoutsAreDrawn}>
        <button type="button" aria-pressed={!isOverlaid} onClick={() => onOverlay(false)}>
          {texts.sideBySide}
        </button>
        <button type="button" aria-pressed={isOverlaid} onClick={() => onOverlay(true)}>
          {texts.overlaid}
        </button>
      </div>
      <button type="button" className="quiet" disabled={compared.length < 2} onClick={save}>
        {texts.saveMeasuresAsCsv}
      </button>
      <ComparePrint compared={compared} isOverlaid={isOverlaid} />
    </div>
  );
}

function OneLayout({ layout }: { readonly layout: Layout }) {
  return (
    <section className="compare" aria-label={texts.layoutsCompared}>
      <div className="region-empty">
        <p>{texts.planOneLayoutMake(layout.name)}</p>
        <CommandButton of={copyLayout}>{texts.copy(layout.name)}</CommandButton>
      </div>
    </section>
  );
}
