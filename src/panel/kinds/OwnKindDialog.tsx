import { patched } from "../../core/edits/edit.ts";
import { addOwnKind, changeOwnKind } from "../../core/edits/own-kind-edits.ts";
import type { OwnKind } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { Dialog } from "../form/Dialog.tsx";
import { OwnKindBotany } from "./OwnKindBotany.tsx";
import { OwnKindFigures } from "./OwnKindFigures.tsx";
import { useForm } from "../form/use-form.ts";
import { type ChangeOwnKind, ownKindProblem } from "./own-kind-edit.ts";
import { commit } from "../state/plan-actions.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";

interface OwnKindDialogProps {
  /** The kind as it is, or as it begins. */
  readonly start: OwnKind;
  /** Told the kind's id once it is in the plan. */
  readonly onKept?: (id: string) => void;
  readonly onClose: () => void;
}

/** A kind of the plan's own, or own figures for one known here. */
export function OwnKindDialog({ start, onKept, onClose }: OwnKindDialogProps) {
  const plan = useShownPlan();
  const book = usePlanStore((state) => state.book);
  const form = useForm<OwnKind>({
    start,
    problemOf: (typed) => ownKindProblem(typed, book),
    send: (typed) => {
      commit(isThere ? changeOwnKind(typed) : addOwnKind(typed));
      onKept?.(typed.id);
      onClose();
    },
  });
  const { draft: own, problem } = form;
  const isThere = plan.ownKinds.some(({ id }) => id === own.id);
  const change: ChangeOwnKind = (changes) =>
    form.alter((before) => patched<OwnKind>(before, changes));
  const isBuiltIn = !isThere && book.kind(own.id) !== undefined;
  return (
    <Dialog
      title={
        isBuiltIn
          ? texts.ownFiguresFor(start.name)
          : isThere
            ? texts.edit(start.name)
            : texts.addAKind
      }
      onClose={onClose}
      isWide
    >
      <form className="fields" noValidate onSubmit={form.onSubmit}>
        <OwnKindBotany own={own} onChange={change} />
        <OwnKindFigures own={own} onChange={change} />
        {problem !== null && (
          <p className="field-reason" role="alert">
            {problem}
          </p>
        )}
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {isThere ? texts.apply : texts.addToThePlan}
          </button>
        </p>
      </form>
    </Dialog>
  );
}
