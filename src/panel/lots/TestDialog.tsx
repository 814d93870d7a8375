import { useState } from "react";
import { nextTestId, putTest } from "../../core/edits/lot-edits.ts";
import type { Kind } from "../../core/kinds/crop.ts";
import { NO_STANDARD, standardOf } from "../../core/lots/ageing.ts";
import { replicatesAgree, seedsToTest, testResult } from "../../core/lots/germination.ts";
import { bandWords } from "../../core/lots/band-words.ts";
import { lotBook } from "../../core/lots/lot-book.ts";
import { isoFromDay } from "../../core/model/day.ts";
import type { GerminationTest, Lot } from "../../core/model/plan.ts";
import { DayField } from "../form/DayField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { FormProblem } from "../form/Field.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { NoteField, TextField } from "../form/TextField.tsx";
import { commit, useKept } from "../state/plan-actions.ts";
import { lotRefusal } from "./lot-change.ts";
import { today } from "../state/today.ts";
import { ValueField } from "../form/NumberField.tsx";
import * as texts from "./words.ts";
import "./lots.css";
import { Sentence } from "../state/Sentence.tsx";

interface TestDialogProps {
  readonly lotId: string;
  /** Null for a new test. */
  readonly testId: string | null;
  readonly onClose: () => void;
}

type Typed = { readonly [Key in keyof GerminationTest]?: GerminationTest[Key] | undefined };

/** A germination test, with what its numbers say and how little. */
export function TestDialog({ lotId, testId, onClose }: TestDialogProps) {
  const { plan, book } = useKept();
  const lot = lotBook(plan.lots).lot(lotId);
  const existing = lot?.tests?.find(({ id }) => id === testId);
  const [typed, setTyped] = useState<Typed>(existing ?? { date: today() });
  const [problem, setProblem] = useState<string | null>(null);
  const set = (changes: Typed) => {
    setProblem(null);
    setTyped((before) => ({ ...before, ...changes }));
    return null;
  };
  const kind = book.kind(plan.varieties.find(({ id }) => id === lot?.variety)?.kind ?? "");
  const keep = () => {
    if (!lot) return;
    const { date, sown, sprouted } = typed;
    if (date === undefined) return setProblem(texts.typeCountDay);
    if (sown === undefined) return setProblem(texts.typeSown);
    if (sprouted === undefined) return setProblem(texts.typeSprouted);
    const known = Object.entries(typed).filter(([, value]) => value !== undefined);
    const id = existing?.id ?? nextTestId(lot);
    const test: GerminationTest = { ...Object.fromEntries(known), id, date, sown, sprouted };
    const others = (lot.tests ?? []).filter((each) => each.id !== id);
    const refusal = lotRefusal(plan, { ...lot, tests: [...others, test] });
    if (refusal !== null) return setProblem(refusal);
    commit(putTest(lot.id, test, texts.testTitle(lot.code, isoFromDay(date))));
    onClose();
  };
  if (!lot) return null;
  return (
    <Dialog title={texts.germinationTestOf(lot.code)} onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={onFormSubmit(keep)}>
        <TestFields typed={typed} kind={kind} onSet={set} />
        <HowMany lot={lot} kind={kind} />
        <FormProblem problem={problem} />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {existing ? texts.apply : texts.addTheTest}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

interface TestFieldsProps {
  readonly typed: Typed;
  readonly kind: Kind | undefined;
  readonly onSet: (changes: Typed) => null;
}

function TestFields({ typed, kind, onSet: set }: TestFieldsProps) {
  return (
    <>
      <ValueField label={texts.seedsSown} value={typed.sown} onApply={(sown) => set({ sown })} />
      <ValueField
        label={texts.sprouted}
        value={typed.sprouted}
        hint={texts.normalSeedlingsCountedEnd}
        onApply={(sprouted) => set({ sprouted })}
      />
      <TestSays typed={typed} kind={kind} />
      <DayField label={texts.lastCount} value={typed.date} onApply={(date) => set({ date })} />
      <ValueField
        label={texts.stayedHard}
        value={typed.hard}
        hint={texts.tookUpNoWater}
        onApply={(hard) => set({ hard })}
      />
      <ValueField label={texts.days} value={typed.days} onApply={(days) => set({ days })} />
      <ValueField
        label={texts.temperatureC}
        value={typed.temperatureC}
        onApply={(temperatureC) => set({ temperatureC })}
      />
      <PartsField typed={typed} onSet={set} />
      <NoteField
        label={texts.note}
        value={typed.note ?? ""}
        onApply={(note) => void set({ note: note === "" ? undefined : note })}
      />
    </>
  );
}

interface PartsFieldProps {
  readonly typed: Typed;
  readonly onSet: (changes: Typed) => null;
}

function PartsField({ typed, onSet }: PartsFieldProps) {
  const apply = (text: string) => {
    const numbers = text.trim() === "" ? [] : text.trim().split(/[\s,;+]+/);
    if (numbers.some((each) => !/^\d+$/.test(each))) return texts.typeCounts;
    if (numbers.length === 1) return texts.typeEachPart;
    return onSet({ replicates: numbers.length === 0 ? undefined : numbers.map(Number) });
  };
  const verdict =
    typed.sown !== undefined && typed.replicates
      ? replicatesAgree({ sown: typed.sown, replicates: typed.replicates })
      : null;
  return (
    <TextField
      label={texts.sproutedInEachPart}
      value={typed.replicates?.join(" ") ?? ""}
      placeholder={texts.whenLaidOut}
      hint={
        verdict?.agree === undefined || verdict.agree === null
          ? texts.fourTwoPartsHeld
          : verdict.agree
            ? texts.partsAgreePointsApart(verdict.rangePct, verdict.allowedPct ?? "")
            : texts.partsDoNotAgree(verdict.rangePct, verdict.allowedPct ?? "")
      }
      onApply={apply}
    />
  );
}

/** What the counts say: the rate with its exact limits, and how wide that is. */
function TestSays({ typed, kind }: { readonly typed: Typed; readonly kind: Kind | undefined }) {
  const { sown, sprouted, hard = 0 } = typed;
  const isWhole = [sown, sprouted, hard].every((each) => Number.isInteger(each));
  if (sown === undefined || sprouted === undefined || !isWhole) return null;
  if (sown < 1 || sprouted < 0 || hard < 0 || sprouted + hard > sown || sown > 1_000_000) {
    return null;
  }
  const { limits, limitsWithHard } = testResult({ id: "", date: 0, sown, sprouted, hard });
  const [least, most] = limitsWithHard;
  const standard = kind ? standardOf(kind) : NO_STANDARD;
  const bar = `${Math.round(standard * 100)} %`;
  const verdict =
    least >= standard
      ? texts.reachesStandard(bar)
      : most < standard
        ? texts.liesUnderStandard(bar)
        : texts.cannotTell(bar);
  const spread = Math.round((most - least) * 100);
  return (
    <div className="test-says" role="status">
      <p>
        <Sentence
          words={texts.germinationIs}
          parts={{ sprouted, sown, band: <b>{bandWords(limits)}</b> }}
        />
        {hard > 0 && ` ${texts.withHardSeed(bandWords(limitsWithHard))}`}
      </p>
      <svg viewBox="0 0 200 16" aria-hidden="true" className="test-bar">
        <path className="life-frame" d="M0,12H200" />
        <path className="test-interval" d={`M${least * 200},8H${most * 200}`} />
        <circle className="life-test" cx={((sprouted + hard) / sown) * 200} cy={8} r={3.5} />
        <path className="life-standard" d={`M${standard * 200},1V15`} />
      </svg>
      <p>
        {verdict}
        {spread >= 20 && ` ${texts.seedsSayLittle(sown, spread)}`}
      </p>
    </div>
  );
}

/** How many seeds would show what one wants to know. */
function HowMany({ lot, kind }: { readonly lot: Lot; readonly kind: Kind | undefined }) {
  const standard = kind ? standardOf(kind) : NO_STANDARD;
  const wanted = Math.round(standard * 100);
  const all = seedsToTest(standard, 1);
  const near = Math.min(0.99, standard + 0.1);
  const more = seedsToTest(standard, near);
  return (
    <p className="field-hint">
      {more === null
        ? texts.toShow(wanted, all)
        : texts.toShowOr(wanted, all, more, Math.round(near * 100))}{" "}
      {lot.amount?.unit === "seeds" && lot.amount.value < 100 ? texts.smallLotKeepEnough : ""}
    </p>
  );
}
