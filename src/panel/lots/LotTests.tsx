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
import * as texts from "./words.ts";
import { Sentence } from "../state/Sentence.tsx";

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
      <h4>{texts.germinationTests}</h4>
      {tests.length === 0 && <p>{texts.noneYetTestAlways}</p>}
      <ul className="plain-list" aria-label={texts.germinationTests} {...roving}>
        {tests.map((test) => (
          <TestLine key={test.id} lot={lot} test={test} kind={kind} />
        ))}
      </ul>
      <p className="offers">
        <button type="button" onClick={() => testDialog.open({ lotId: lot.id, testId: null })}>
          {texts.enterATest}
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
  const name = texts.testOf(longDate(test.date));
  return (
    <li className="lot-test" data-row="">
      <p>
        <Sentence
          words={test.hard === undefined ? texts.testResult : texts.testResultHard}
          parts={{
            day: longDate(test.date),
            sprouted: <b>{test.sprouted}</b>,
            sown: test.sown,
            hard: test.hard,
            band: bandWords(limits),
          }}
        />
      </p>
      {verdict?.agree === false && (
        <p className="caution-text">
          {texts.partsDifferPointsMost(verdict.rangePct, verdict.allowedPct ?? "")}
        </p>
      )}
      {standard !== null && <p className="soft">{standard}</p>}
      {test.note !== undefined && <p className="soft">{test.note}</p>}
      <p>
        <button
          type="button"
          className="act"
          aria-label={texts.change(name)}
          onClick={() => testDialog.open({ lotId: lot.id, testId: test.id })}
        >
          {texts.change2}
        </button>
        <button
          type="button"
          className="act"
          aria-label={texts.deleteNamed(name)}
          onClick={() => commit(removeTest(lot.id, test.id, texts.deleteNamed(name)))}
        >
          {texts.deleteWord}
        </button>
      </p>
    </li>
  );
}

function OfficialTest({ kind }: { readonly kind: Kind }) {
  const test = testConditions(kind.id);
  if (!test) {
    return <p className="field-hint">{texts.noConditionsOfficialTest(kind.name)}</p>;
  }
  const beds = test.substrata
    .split(",")
    .map((each) => texts.SUBSTRATES.get(each.trim()) ?? each)
    .join(texts.orBetween);
  const celsius = test.temperature.includes("-")
    ? texts.twoTemperatures(test.temperature)
    : texts.oneTemperature(test.temperature);
  return (
    <details>
      <summary>{texts.howIsTestedOfficially(kind.name)}</summary>
      <p>
        {texts.laidAt(capital(beds), celsius, test.otherTemperature)}{" "}
        {texts.countedAfter(test.firstDays, test.lastDays)}
        {test.canBeHard === true && ` ${texts.hardApart}`}
        {test.needs === undefined ? "" : ` ${test.needs}.`}
        {test.fresh === undefined ? "" : ` ${texts.freshSeed(test.fresh)}`}
      </p>
      <p className="field-hint">{texts.cfrRowOfficialTest(test.row)}</p>
    </details>
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
