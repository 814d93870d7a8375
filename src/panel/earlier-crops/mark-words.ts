/** Marks of diseases on the ground: what their form holds, and their words. */
import { groundDiseases, markName } from "../../core/ground/ground-diseases.ts";
import type { GroundMark, Layout } from "../../core/model/plan.ts";
import type { Choice } from "../state/plan-words.ts";
import { type GroundDraft, groundDraft, groundsOf } from "./earlier-crop-words.ts";

/** Stands for a disease that is not known here. */
const OTHER = "other";

/** Diseases to pick from. */
export const diseaseChoices: readonly Choice<string>[] = [
  ...groundDiseases.map(({ id, name }) => ({ value: id, label: name })),
  { value: OTHER, label: "another, by name" },
];

export interface MarkDraft extends GroundDraft {
  readonly disease: string;
  readonly name: string;
  /** For another disease, the kind it harms. */
  readonly kind: string | undefined;
  readonly seenOn: number | undefined;
  readonly note: string;
}

export function markDraft(mark: GroundMark | null, layout: Layout): MarkDraft {
  const isKnown = groundDiseases.some(({ id }) => id === mark?.disease);
  return {
    ...groundDraft(mark, layout),
    disease: mark && !isKnown ? OTHER : (mark?.disease ?? "white-rot"),
    name: mark?.name ?? "",
    kind: mark?.kinds?.[0],
    seenOn: mark?.seenOn,
    note: mark?.note ?? "",
  };
}

export function isOther({ disease }: Pick<MarkDraft, "disease">): boolean {
  return disease === OTHER;
}

/** Why the form cannot be kept, or null. */
export function markProblem(draft: MarkDraft): string | null {
  if (isOther(draft) && draft.name.trim() === "") return "Give the disease a name";
  if (isOther(draft) && draft.kind === undefined) return "Pick the kind it harms";
  if (draft.seenOn === undefined) return "Type the day it was seen, or told by a test";
  return draft.where === "beds" && draft.beds.length === 0 ? "Tick the beds it was seen in" : null;
}

/** One mark for each piece of ground; none while the form cannot be kept. */
export function marksOfDraft(
  draft: MarkDraft,
  before: GroundMark | null,
  layout: Layout,
): readonly Omit<GroundMark, "id">[] {
  const { disease, name, kind, seenOn, note } = draft;
  if (seenOn === undefined) return [];
  const more = [...(before?.kinds ?? [])].slice(1);
  const rest = {
    disease,
    seenOn,
    ...(isOther(draft) && kind !== undefined
      ? { name: name.trim(), kinds: [kind, ...more.filter((each) => each !== kind)] }
      : {}),
    ...(note === "" ? {} : { note }),
  };
  return groundsOf(draft, before, layout).map((outline) => ({ outline, ...rest }));
}

/** `Mark white rot`. */
export function markTitle(mark: Pick<GroundMark, "disease" | "name">): string {
  return `Mark ${markName(mark)}`;
}

export const MARKS_INTRO =
  "Some diseases stay in the ground, however many years go by. Mark where they were seen: what they harm is then told there, and kept off by the arranger.";
