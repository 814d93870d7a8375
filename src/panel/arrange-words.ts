/** What the arranger found, in words that claim no more than it knows. */
import type { ArrangeAnswer } from "../store/arrange-worker.ts";

export function conflictWords(count: number): string {
  if (count === 0) return "No conflict";
  return count === 1 ? "1 conflict" : `${count} conflicts`;
}

export function arrangedWords({
  moved,
  movable,
  conflictsBefore,
  conflictsAfter,
}: ArrangeAnswer): readonly string[] {
  const before = conflictWords(conflictsBefore);
  if (moved.length === 0) {
    return conflictsBefore === 0
      ? ["No conflict, so nothing needs to move."]
      : [
          `${before}, and no move was found that makes fewer. A longer search or another seed number may find one: this is no proof that there is none.`,
        ];
  }
  const change = `${before} before, ${conflictWords(conflictsAfter).toLowerCase()} after: ${moved.length} of ${movable} plantings move.`;
  return conflictsAfter === 0
    ? [change]
    : [
        change,
        "That is the best this search found, which is no proof that no layout has fewer. What is left needs more ground, another time or a cover.",
      ];
}

export function lockedWords(codes: readonly string[]): string {
  if (codes.length === 0) {
    return "Nothing is locked. What must stay where it is can be locked in its particulars.";
  }
  return codes.length === 1
    ? `${codes.join()} is locked and stays where it is.`
    : `${codes.join(", ")} are locked and stay where they are.`;
}
