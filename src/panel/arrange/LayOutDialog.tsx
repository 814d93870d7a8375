import { useState } from "react";
import { alikeLayouts, laidOutLayouts } from "../../core/arrange/laid-out-layouts.ts";
import type { LaidOut, LaidOutList } from "../../core/arrange/lay-out.ts";
import {
  EDIT_TITLE,
  costWords,
  faultWords,
  goalNames,
  goalWords,
  leftWords,
  sameWords,
  seedNotes,
} from "../../core/arrange/lay-out-words.ts";
import { listed } from "../../core/checks/wording.ts";
import { Dialog } from "../form/Dialog.tsx";
import { commit, planNow, windowNow } from "../state/plan-actions.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";
import {
  ADD_AND_COMPARE,
  ADD_ONE,
  CANCEL,
  LAYING_OUT,
  LAY_OUT_TITLE,
  NOT_LAID,
  PROGRESS_LABEL,
  STAYS,
  addAll,
  addedText,
} from "./lay-out-words.ts";
import { useLayingOut } from "./use-laying-out.ts";
import "./arrange.css";

interface LayOutDialogProps {
  readonly onClose: () => void;
}

/** Lays out what the seed list still wants in three ways; each comes as a layout of its own. */
export function LayOutDialog({ onClose }: LayOutDialogProps) {
  const [request] = useState(() => ({ plan: planNow().plan, layoutId: planNow().layoutId }));
  const stage = useLayingOut(request);
  const add = (laid: readonly LaidOut[], isCompared: boolean) => {
    const layouts = laid.map(({ goal, plantings }) => ({ name: goalNames[goal], plantings }));
    const { plan } = planNow();
    const { edit, ids } = laidOutLayouts(plan, request.layoutId, layouts, EDIT_TITLE);
    commit(edit);
    planNow().showLayout(ids[0] ?? request.layoutId);
    if (isCompared) viewNow().showView("compare");
    else viewNow().showSheet();
    const names = layouts.map(({ name }) => name);
    windowNow().announce(addedText(names, laid[0]?.cost.conflicts ?? 0));
    onClose();
  };
  return (
    <Dialog title={LAY_OUT_TITLE} onClose={onClose} isWide>
      {stage.kind === "running" && <Running share={stage.share} onCancel={onClose} />}
      {stage.kind === "failed" && <p role="alert">{stage.reason}</p>}
      {stage.kind === "done" && stage.answer.kind === "fault" && (
        <p role="alert">{faultWords(stage.answer.fault)}</p>
      )}
      {stage.kind === "done" && stage.answer.kind === "answer" && (
        <Answered list={stage.answer} onAdd={add} />
      )}
    </Dialog>
  );
}

interface RunningProps {
  readonly share: number;
  readonly onCancel: () => void;
}

function Running({ share, onCancel }: RunningProps) {
  return (
    <div className="fields">
      <p role="status">{LAYING_OUT}</p>
      <progress aria-label={PROGRESS_LABEL} max={1} value={share} />
      <p className="dialog-actions">
        <button type="button" onClick={onCancel}>
          {CANCEL}
        </button>
      </p>
    </div>
  );
}

interface AnsweredProps {
  readonly list: LaidOutList;
  readonly onAdd: (laid: readonly LaidOut[], isCompared: boolean) => void;
}

function Answered({ list: { laid, seeds }, onAdd }: AnsweredProps) {
  const same = sameWords(laid);
  // Of those that are the same one is enough, under the names of all.
  const apart = alikeLayouts(laid);
  const firsts = apart.map(([first]) => first);
  return (
    <div className="fields">
      <p role="status">{STAYS}</p>
      {[...seedNotes(seeds), ...(same === null ? [] : [same])].map((note) => (
        <p key={note}>{note}</p>
      ))}
      <ul className="laid-out plain-list">
        {apart.map((alike) => (
          <LaidOutCard key={alike[0].goal} alike={alike} onAdd={() => onAdd([alike[0]], false)} />
        ))}
      </ul>
      <p className="dialog-actions">
        {firsts.length > 1 && (
          <button type="button" className="primary" onClick={() => onAdd(firsts, false)}>
            {addAll(firsts.length)}
          </button>
        )}
        <button type="button" onClick={() => onAdd(firsts, true)}>
          {ADD_AND_COMPARE}
        </button>
      </p>
    </div>
  );
}

interface LaidOutCardProps {
  /** One layout, by the names of all that came out like it. */
  readonly alike: readonly [LaidOut, ...LaidOut[]];
  readonly onAdd: () => void;
}

function LaidOutCard({ alike, onAdd }: LaidOutCardProps) {
  const { units } = useShownPlan();
  const [laid] = alike;
  const name = listed(alike.map(({ goal }) => goalNames[goal]));
  return (
    <li>
      <h3>{name}</h3>
      {alike.length === 1 && <p>{goalWords[laid.goal]}</p>}
      <ul>
        {costWords(laid, units).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {laid.left.length > 0 && (
        <details>
          <summary>
            {NOT_LAID} ({laid.left.length})
          </summary>
          <ul>
            {laid.left.map((left) => (
              <li key={`${left.variety.id} ${left.reason.why}`}>{leftWords(left)}</li>
            ))}
          </ul>
        </details>
      )}
      <button type="button" aria-label={`${ADD_ONE}: ${name}`} onClick={onAdd}>
        {ADD_ONE}
      </button>
    </li>
  );
}
