import type { ArrangedCounts, MovedPiece } from "../../core/arrange/arranged-layout.ts";
import type { Planting } from "../../core/model/plan.ts";
import type { ArrangeAnswer } from "../../store/threads/arrange-worker.ts";
import type { ProveAnswer, ProveRequest } from "../../store/threads/prove-worker.ts";
import { addedWords, arrangedWords, proofWords, rotationWords } from "./arrange-words.ts";
import { type ProofStage, useProof } from "./use-proof.ts";
import * as texts from "./words.ts";

export interface KeptMoves {
  readonly added: readonly Planting[];
  readonly moved: readonly MovedPiece[];
  readonly after: ArrangedCounts;
}

interface ArrangeAnsweredProps {
  readonly answer: ArrangeAnswer;
  /** What was arranged, and how long a proof may take. */
  readonly request: Omit<ProveRequest, "places" | "added">;
  readonly onKeep: (kept: KeptMoves) => void;
  readonly onAnother: () => void;
}

/** What the search found, and where conflicts are left, whether that can be beaten. */
export function ArrangeAnswered({ answer, request, onKeep, onAnother }: ArrangeAnsweredProps) {
  const { stage, start, stop } = useProof();
  const kept = stage.kind === "answered" ? better(answer, stage.answer) : answer;
  const isLeft = answer.trouble.conflicts + answer.trouble.overlaps > 0;
  return (
    <div className="fields">
      <div role="status">
        {sentences(answer, stage).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      {stage.kind === "failed" && <p role="alert">{stage.reason}</p>}
      {stage.kind === "running" && <progress aria-label={texts.proof} />}
      <p className="dialog-actions">
        <button
          type="button"
          className="primary"
          disabled={kept.moved.length + answer.added.length === 0}
          onClick={() => onKeep({ ...kept, added: answer.added })}
        >
          {texts.addAsNewLayout}
        </button>
        <button type="button" onClick={onAnother}>
          {texts.tryAnotherStart}
        </button>
        {isLeft && stage.kind !== "running" && stage.kind !== "answered" && (
          <button
            type="button"
            onClick={() => start({ ...request, added: answer.added, places: answer.places })}
          >
            {texts.canAnyDoBetter}
          </button>
        )}
        {stage.kind === "running" && (
          <button type="button" onClick={stop}>
            {texts.stopTheProof}
          </button>
        )}
      </p>
    </div>
  );
}

function sentences(answer: ArrangeAnswer, stage: ProofStage): readonly string[] {
  if (stage.kind === "running") return [...arrangedWords(answer), texts.lookingForProof];
  if (stage.kind !== "answered") return arrangedWords(answer);
  const [change = ""] = arrangedWords(answer);
  return [
    ...(answer.moved.length + answer.added.length === 0 ? [] : [change]),
    ...addedWords(answer),
    ...rotationWords(answer.before, better(answer, stage.answer).after),
    ...proofWords(stage.answer.proof, answer.trouble),
  ];
}

/** The proven layout where it has fewer conflicts by the checks, else the search's. */
function better(answer: ArrangeAnswer, proven: ProveAnswer): Omit<KeptMoves, "added"> {
  const isBetter =
    proven.proof.kind === "proven" &&
    (answer.trouble.overlaps > 0 || proven.proof.conflicts < answer.trouble.conflicts);
  return isBetter ? proven : answer;
}
