/** What the arranger found, in words that claim no more than it knows. */
import type { ArrangedCounts } from "../../core/arrange/arranged-layout.ts";
import type { Trouble } from "../../core/arrange/arrange-state.ts";
import type { SlotProof } from "../../core/arrange/fewest-in-slots.ts";
import { ROTATION_YEARS } from "../../core/arrange/rotation-wishes.ts";
import type { ArrangeAnswer } from "../../store/threads/arrange-worker.ts";
import { formOf } from "../../core/words/plurals.ts";

export function conflictWords(count: number): string {
  if (count === 0) return "No conflict";
  return formOf(count, { one: "1 conflict", other: `${count} conflicts` });
}

export function arrangedWords(answer: ArrangeAnswer): readonly string[] {
  const { moved, movable, added, before, after } = answer;
  const rest = [...addedWords(answer), ...untoldWords(after), ...rotationWords(before, after)];
  const words = conflictWords(before.conflicts);
  if (moved.length + added.length === 0) {
    return before.conflicts === 0
      ? [
          before.volunteers + before.marks + before.kin === 0
            ? "No conflict, so nothing needs to move."
            : "No conflict, and no move was found that is worth it.",
          ...rest,
        ]
      : [
          `${words}, and no move was found that makes fewer. A longer search or another start may find one: this is no proof that there is none.`,
          ...rest,
        ];
  }
  const change = `${words} before, ${conflictWords(after.conflicts).toLowerCase()} after: ${moved.length} of ${movable} plantings move.`;
  return after.conflicts === 0
    ? [change, ...rest]
    : [
        change,
        ...rest,
        "That is the best this search found, which is no proof that no layout has fewer. What is left needs more ground, another time or a cover.",
      ];
}

/** That nothing was kept free round plantings whose distance nobody knows. */
export function untoldWords({ untold }: ArrangedCounts): readonly string[] {
  if (untold === 0) return [];
  const subject = formOf(untold, {
    one: "1 planting has no isolation distance: the search kept nothing free round it, and no place is called clear for it",
    other: `${untold} plantings have no isolation distance: the search kept nothing free round them, and no place is called clear for them`,
  });
  return [`${subject}. Type a distance, then arrange again.`];
}

/** How ground with earlier crops was kept free of; nothing where none stood in the way. */
export function rotationWords(before: ArrangedCounts, after: ArrangedCounts): readonly string[] {
  return [
    ...(before.volunteers + after.volunteers === 0
      ? []
      : [
          `Plantings where volunteers may come up: ${before.volunteers} before, ${after.volunteers} after.`,
        ]),
    ...(before.marks + after.marks === 0
      ? []
      : [
          `Plantings on ground marked with a disease of theirs: ${before.marks} before, ${after.marks} after.`,
        ]),
    ...(before.kin + after.kin === 0
      ? []
      : [
          `Plantings that follow hosts of their diseases too soon, or their family within ${ROTATION_YEARS} years where no source names a disease, which is wished for, not required: ${before.kin} before, ${after.kin} after.`,
        ]),
  ];
}

/** What was added of the seed list, and what found no room. */
export function addedWords({ added, left }: ArrangeAnswer): readonly string[] {
  const plants = added.reduce((sum, planting) => sum + (planting.plants ?? 0), 0);
  const codes = added.map(({ code }) => code).join(", ");
  return [
    ...(added.length === 0 ? [] : [`Added: ${codes}, ${plantWords(plants)} together.`]),
    ...left.map(({ variety, missing }) => `No room for ${plantWords(missing)} of ${variety.name}.`),
  ];
}

function plantWords(count: number): string {
  return formOf(count, { one: "1 plant", other: `${count} plants` });
}

/** What a proof says of a search's answer; it holds for its places only, and says so. */
export function proofWords(proof: SlotProof, { conflicts, overlaps }: Trouble): readonly string[] {
  const places = `The search considered ${proof.slots} places: where each planting lies, where the search laid it, and even steps along the middle of every bed it fits. What lies between them is not covered.`;
  if (proof.kind === "no-room") {
    return ["Nothing is proven: in these places not every planting has ground of its own.", places];
  }
  if (proof.kind === "open") {
    const least =
      proof.atLeast === 0
        ? "Nothing is proven: the time was too short."
        : `Not finished in the time given. So much is proven: no layout with these places has fewer than ${pairWords(proof.atLeast)}.`;
    return [least, places];
  }
  const isBetter = overlaps > 0 || proof.conflicts < conflicts;
  return [
    isBetter
      ? `A better layout was found, with ${pairWords(proof.conflicts)}, and it is proven that no layout with these places can do better.`
      : `Proven: no layout with these places can do better. Each has at least ${pairWords(proof.conflicts)}.`,
    places,
  ];
}

function pairWords(count: number): string {
  if (count === 0) return "no two too close";
  return formOf(count, { one: "one pair too close", other: `${count} pairs too close` });
}

export function lockedWords(codes: readonly string[]): string {
  if (codes.length === 0) {
    return "Nothing is locked. What must stay where it is can be locked in its particulars.";
  }
  return formOf(codes.length, {
    one: `${codes.join()} is locked and stays where it is.`,
    other: `${codes.join(", ")} are locked and stay where they are.`,
  });
}
