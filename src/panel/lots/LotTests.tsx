import { removeTest } from "../../core/edits/lot-edits.ts";
import type { Kind } from "../../core/kinds/crop.ts";
import { replicatesAgree, testResult } from "../../core/lots/germination.ts";
import { standardWords } from "../../core/lots/lot-words.ts";
import { bandWords } from "../../core/lots/band-words.ts";
import { testConditions } from "../../core/lots/test-conditions.ts";
import { longDate } from "../../core/model/day.ts";
import type { GerminationTest, Lot } from "../../core/model/plan.ts";
import { commit } from "../state/plan-actions.ts";
import { testDialog } from "./dialogs.ts";
import { useRovingRows } from "../state/roving-rows.ts";

interface LotTestsProps {
  readonly lot: Lot;
  readonly kind: Kind | undefined;
}

/** Its germination tests, the latest first, each with how much it says. */
export function LotTests({ lot, kind }: LotTestsProps) {
  const tests = [...(lot.tests ?? [])].sort((a, b) => b.date - a.date);
  const roving = useRovingRows();
  return (
    <>
      <h4>Germination tests</h4>
      {tests.length === 0 && <p>None yet. A test always goes before an estimate.</p>}
      <ul className="plain-list" aria-label="Germination tests" {...roving}>
        {tests.map((test) => (
          <TestLine key={test.id} lot={lot} test={test} kind={kind} />
        ))}
      </ul>
      <p className="offers">
        <button type="button" onClick={() => testDialog.open({ lotId: lot.id, testId: null })}>
          Enter a test
        </button>
      </p>
      {kind && <OfficialTest kind={kind} />}
    </>
  );
}

function TestLine({ lot, test, kind }: LotTestsProps & { readonly test: GerminationTest }) {
  const { limits } = testResult(test);
  const verdict = replicatesAgree(test);
  const standard = kind ? standardWords(test, kind) : null;
  const name = `the test of ${longDate(test.date)}`;
  return (
    <li className="lot-test" data-row="">
      <p>
        {longDate(test.date)}: <b>{test.sprouted}</b> of {test.sown} sprouted
        {test.hard === undefined ? "" : `, ${test.hard} hard`}, so {bandWords(limits)}
      </p>
      {verdict?.agree === false && (
        <p className="caution-text">
          ! Its parts differ by {verdict.rangePct} points, at most {verdict.allowedPct} are allowed
          (7 CFR 201.55): test again.
        </p>
      )}
      {standard !== null && <p className="soft">{standard}</p>}
      {test.note !== undefined && <p className="soft">{test.note}</p>}
      <p>
        <button
          type="button"
          className="link"
          aria-label={`Change ${name}`}
          onClick={() => testDialog.open({ lotId: lot.id, testId: test.id })}
        >
          Change
        </button>
        <button
          type="button"
          className="link"
          aria-label={`Delete ${name}`}
          onClick={() => commit(removeTest(lot.id, test.id, `Delete ${name}`))}
        >
          Delete
        </button>
      </p>
    </li>
  );
}

const SUBSTRATES: ReadonlyMap<string, string> = new Map([
  ["B", "between blotters"],
  ["P", "on paper in a covered dish"],
  ["T", "in rolled paper towels"],
  ["S", "in sand or soil"],
  ["TB", "on blotters"],
  ["TS", "on sand"],
  ["C", "in creped paper"],
  ["TC", "on creped paper"],
]);

function OfficialTest({ kind }: { readonly kind: Kind }) {
  const test = testConditions(kind.id);
  if (!test) {
    return (
      <p className="field-hint">No conditions of an official test are published for {kind.name}.</p>
    );
  }
  const beds = test.substrata
    .split(",")
    .map((each) => SUBSTRATES.get(each.trim()) ?? each)
    .join(", or ");
  const celsius = test.temperature.includes("-")
    ? `${test.temperature.split("-")[0]} C for 16 hours, then ${test.temperature.split("-")[1]} C for 8`
    : `${test.temperature} C`;
  return (
    <details>
      <summary>How {kind.name} is tested officially</summary>
      <p>
        {capital(beds)}, at {celsius}
        {test.otherTemperature === undefined ? "" : ` (or ${test.otherTemperature} C)`}.{" "}
        {test.firstDays === null ? "" : `First count after ${test.firstDays} days, `}
        {test.firstDays === null ? "Last" : "last"} after {test.lastDays}.
        {test.canBeHard === true && " Seed that stays hard is counted apart."}
        {test.needs === undefined ? "" : ` ${test.needs}.`}
        {test.fresh === undefined ? "" : ` Fresh or dormant seed: ${test.fresh}.`}
      </p>
      <p className="field-hint">
        7 CFR 201.58, row {test.row}. An official test takes 400 seeds, four parts of 100.
      </p>
    </details>
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
