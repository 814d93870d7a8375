import { useEffect, useMemo, useState } from "react";
import { addSurrounding } from "../../core/edits/object-edits.ts";
import type { Shape, Surrounding } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { Dialog } from "../form/Dialog.tsx";
import { TextField } from "../form/TextField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { useForm } from "../form/use-form.ts";
import { commit, useKept, windowNow } from "../state/plan-actions.ts";
import { useSheetPreview } from "../state/use-sheet-preview.ts";
import { KindField } from "./KindField.tsx";
import { SourcePlaceFields } from "./SourcePlaceFields.tsx";
import {
  type TypedSource,
  kindsOfPlan,
  startOfSource,
  typedSource,
  unsaidSource,
} from "./source-form.ts";
import { sourceWords as words } from "./source-words.ts";
import "./source.css";

interface SourceDialogProps {
  /** Where it was pressed or drawn; null: it is placed by numbers. */
  readonly given: Shape | null;
  /** As it was called already; left out: it is named for what flowers there. */
  readonly name?: string | undefined;
  readonly onClose: () => void;
}

/** A pollen source: what flowers there first of all, then where. It is on the sheet before it is kept. */
export function SourceDialog({ given, name, onClose }: SourceDialogProps) {
  const { plan, layout, book } = useKept();
  const made = (typed: TypedSource) => {
    const kindName = book.kind(typed.kind ?? "")?.name ?? "";
    return typedSource(plan, layout.id, { ...typed, kindName }, given);
  };
  const form = useForm({
    start: () => ({ ...startOfSource(layout, given), label: name ?? "" }),
    problemOf: ({ kind }) => (kind === null ? words.needsKind : null),
    send: (typed) => {
      // Placed by numbers it may lie far off: it comes into view with the beds, not by itself.
      const beds = typed.place === "given" ? [] : layout.beds.map(({ id }) => id);
      keep(made(typed), beds, onClose);
    },
  });
  const { draft: typed, set } = form;
  const source = made(typed);
  const label = typed.label === "" ? words.unsaid : typed.label;
  useSourcePreview(source ?? unsaidSource(plan, layout.id, label, given));
  // What was selected before is not what is asked about: its particulars go.
  useEffect(() => windowNow().select([]), []);
  return (
    <Dialog title={words.title} onClose={onClose} isAside>
      <form className="fields" noValidate onSubmit={form.onSubmit}>
        <KindChoice picked={typed.kind} onPick={(kind) => set({ kind })} />
        <SourcePlaceFields typed={typed} given={given} onSet={set} />
        <TextField
          label={words.name}
          isWide
          value={typed.label === "" ? (source?.label ?? "") : typed.label}
          onApply={(text) =>
            nameProblem(text, { isNeeded: words.needsName }) ?? set({ label: text.trim() })
          }
        />
        <Told source={source} problem={form.problem} />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {words.add}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

function keep(source: Surrounding | null, beds: readonly string[], onClose: () => void): void {
  if (!source) return;
  onClose();
  commit(addSurrounding(source));
  windowNow().select([source.id]);
  windowNow().pickTool("select");
  windowNow().keepInView([source.id, ...beds]);
}

/** On the sheet as typed: another source only where something of it is another. */
function useSourcePreview(source: Surrounding | null): void {
  const text = JSON.stringify(source);
  const [edit, ids] = useMemo(() => {
    const shown = JSON.parse(text) as Surrounding | null;
    return shown ? [addSurrounding(shown), [shown.id]] : [null, []];
  }, [text]);
  useSheetPreview(edit, ids);
}

interface KindChoiceProps {
  readonly picked: string | null;
  readonly onPick: (kind: string) => void;
}

/** The kinds of this plan as buttons: they are what it could cross with; any other by search. */
function KindChoice({ picked, onPick }: KindChoiceProps) {
  const { plan, book } = useKept();
  const [isOther, setOther] = useState(false);
  const known = useMemo(() => kindsOfPlan(plan).flatMap((id) => book.kind(id) ?? []), [plan, book]);
  const isSearched = isOther || known.length === 0;
  return (
    <fieldset className="source-kinds">
      <legend>{words.what}</legend>
      {known.map(({ id, name }) => (
        <button
          key={id}
          type="button"
          aria-pressed={picked === id}
          onClick={() => {
            setOther(false);
            onPick(id);
          }}
        >
          {name}
        </button>
      ))}
      {known.length > 0 && (
        <button type="button" aria-expanded={isOther} onClick={() => setOther(!isOther)}>
          {words.other}
        </button>
      )}
      {isSearched && <KindField kindId={picked ?? undefined} onPick={onPick} />}
    </fieldset>
  );
}

/** Before it is kept: whether it brings conflicts, or what is still missing. */
function Told({
  source,
  problem,
}: {
  readonly source: Surrounding | null;
  readonly problem: string | null;
}) {
  const { stands, findings } = usePlanStore(({ result }) => result);
  const { book } = useKept();
  const about = findings.filter(({ subjects }) => source !== null && subjects.includes(source.id));
  const count = (of: string) => about.filter(({ severity }) => severity === of).length;
  if (problem !== null) {
    return (
      <p className="field-reason" role="alert">
        {problem}
      </p>
    );
  }
  const kind = book.kind(source?.kind ?? "");
  const couldCross = stands.some(
    (stand) => stand.isSeedParent && kind && book.relation(stand.kind, kind).relation !== "no",
  );
  const told = couldCross ? words.risk(count("conflict"), count("unknown")) : words.riskNone;
  return (
    <p className="soft" role="status">
      {source === null ? words.riskUnset : told}
    </p>
  );
}
