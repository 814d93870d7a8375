import { useMemo, useState } from "react";
import { type PrintId, isUsuallyPrinted, printParts } from "../../core/files/print-list.ts";
import type { PaperMade } from "../../store/threads/paper-job.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { ReadingSwitch } from "../grown/ReadingSwitch.tsx";
import { CheckField, ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { type Making, useMaking } from "../form/use-making.ts";
import { useKept } from "../state/plan-actions.ts";
import { FaceFields } from "./FaceFields.tsx";
import { LabelFields } from "./LabelFields.tsx";
import { PaperFields, RatioFields } from "./PaperFields.tsx";
import { PaperPages } from "./PaperPages.tsx";
import { PaperParts } from "./PaperParts.tsx";
import { PaperStatus } from "./PaperStatus.tsx";
import { cardChoices, paperWords, sheetsText } from "./paper-words.ts";
import { printableParts, savePrint } from "./print-choice.ts";
import { usePages } from "./use-pages.ts";
import { type PaperChoice, usePaperChoice } from "./use-paper-choice.ts";
import "./paper.css";

/** All that is printed of a plan: what, on which paper, its pages, and the PDFs. */
export function PaperDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan, layout } = useKept();
  const paper = usePaperChoice();
  const { choice, canPrint } = paper;
  const [face, setFace] = useState(0);
  const grownOn = usePlanStore(({ reading }) => reading?.on ?? "planned");
  const printable = useMemo(() => printableParts(plan, layout), [plan, layout]);
  const [ticked, setTicked] = useState<readonly PrintId[]>(() =>
    printable.filter((id) => isUsuallyPrinted(id, plan, layout)),
  );
  const pages = usePages(canPrint ? printable : null, choice, `${face} ${grownOn}`);
  const { state, start, cancel } = useMaking<readonly string[]>();
  const parts = printParts.map(({ id }) => id).filter((id) => ticked.includes(id));
  const isMaking = state.kind === "making";
  const make = () =>
    void start((onProgress, signal) => savePrint(parts, choice, onProgress, signal));
  return (
    <Dialog title={paperWords.title(layout.name)} onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={onFormSubmit(make)}>
        <PaperParts
          plan={plan}
          layout={layout}
          ticked={ticked}
          pages={pages.state}
          onSet={setTicked}
        />
        {ticked.includes("bed-cards") && (
          <ChoiceField
            label={paperWords.cards}
            value={String(paper.chosen.cardsPerPage)}
            choices={cardChoices}
            onPick={(text) => paper.set({ cardsPerPage: text === "2" ? 2 : 4 })}
          />
        )}
        <SheetFields paper={paper} />
        {plan.entries.length > 0 && <ReadingSwitch />}
        <FaceFields onChange={() => setFace(face + 1)} />
        <PaperPages parts={parts} pages={pages} />
        <PaperStatus progress={state} />
        <p className="dialog-actions">
          <button
            type="submit"
            className="primary"
            disabled={isMaking || parts.length === 0 || !canPrint}
          >
            {paperWords.save(pagesOf(pages.state, parts))}
          </button>
          {isMaking && (
            <button type="button" onClick={cancel}>
              {paperWords.cancel}
            </button>
          )}
        </p>
      </form>
    </Dialog>
  );
}

/** Pages of all that is ticked; null while they are not counted. */
function pagesOf(state: Making<PaperMade>, parts: readonly PrintId[]): number | null {
  if (state.kind !== "made") return null;
  const ticked = state.made.parts.filter(({ id }) => parts.includes(id));
  return ticked.reduce((sum, { pages }) => sum + pages.length, 0);
}

/** Paper and ratio of the map, and the sheets of labels. */
function SheetFields({ paper }: { readonly paper: PaperChoice }) {
  const { units } = useKept().plan;
  const { chosen, set, sheets, amount, fault } = paper;
  return (
    <>
      <PaperFields
        paper={chosen.paper}
        orientation={paper.choice.orientation}
        onPaper={(name) => set({ paper: name })}
        onOrientation={(orientation) => set({ orientation })}
      />
      <RatioFields
        suggested={paper.suggested}
        own={chosen.ratio}
        unit={units}
        onPick={(ratio) => set({ ratio })}
        hint={amount === "too many" ? paperWords.tooMany(sheets) : sheetsText(sheets)}
      />
      {amount === "many" && (
        <CheckField
          label={paperWords.many(sheets)}
          isOn={chosen.isMany}
          onSet={(isMany) => set({ isMany })}
        />
      )}
      <details>
        <summary>{paperWords.stakes}</summary>
        <LabelFields use="stakes" choice={chosen.stakes} onSet={(stakes) => set({ stakes })} />
      </details>
      <details>
        <summary>{paperWords.packets}</summary>
        <LabelFields use="packets" choice={chosen.packets} onSet={(packets) => set({ packets })} />
      </details>
      {fault !== undefined && <p className="field-reason">{fault}.</p>}
    </>
  );
}
