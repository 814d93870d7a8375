/** The pages after the map: findings in full, accepted findings, far pollen sources, what the map is not. */
import { acceptanceFor } from "../checks/acceptance.ts";
import { describeFinding } from "../checks/all-checks.ts";
import { markName } from "../ground/ground-diseases.ts";
import { marksOn } from "../ground/ground-history.ts";
import { longDate } from "../model/day.ts";
import { cutWords } from "./beyond-map.ts";
import { type FarSource, farSourceText } from "./far-sources.ts";
import { type NumberedWords, countText, findingParagraphs } from "./finding-items.ts";
import { type FlowItem, heading, paragraph, space } from "../page/flow.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import { TYPE_PT } from "./map-style.ts";
import type { TextRuler } from "../page/scene.ts";
import { noteWords, sheetWords } from "./map-words.ts";

const HEADING_PT = 11;

export interface NoteContent {
  readonly numbered: readonly NumberedWords[];
  readonly far: readonly FarSource[];
  /** Rest of the panel that found no room on its map sheet. */
  readonly rest: readonly FlowItem[];
  /** Names of what the edge of the map cuts. */
  readonly cut: readonly string[];
  readonly unplaced: readonly string[];
  /** Names with characters the type has no shape for. */
  readonly unshown: readonly string[];
}

export function noteItems(
  input: CheckedLayout,
  content: NoteContent,
  widthMm: number,
  ruler: TextRuler,
): readonly FlowItem[] {
  const { plan, result } = input;
  const body = (words: string) => paragraph(words, widthMm, TYPE_PT.body, ruler, { after: 1.6 });
  const section = (title: string, items: readonly FlowItem[]) =>
    items.length === 0 ? [] : [heading(title, widthMm, HEADING_PT, ruler), ...items, space(3)];
  return [
    ...section(
      noteWords.checks(countText(result.findings)),
      content.numbered.length > 0
        ? findingParagraphs(content.numbered, widthMm, ruler)
        : [body(noteWords.nothing)],
    ),
    ...section(noteWords.accepted, acceptedItems(input, body)),
    ...section(noteWords.marks, markLines(input).map(body)),
    ...section(
      sheetWords.beyond,
      content.far.map((source) => body(noteWords.sentence(farSourceText(source, plan.units)))),
    ),
    ...section(noteWords.keyOn, content.rest),
    ...section(noteWords.about, aboutItems(content, body)),
  ];
}

function acceptedItems(
  checked: CheckedLayout,
  body: (words: string) => FlowItem,
): readonly FlowItem[] {
  const { plan, layout, result } = checked;
  const wording = wordingOf(checked);
  return result.accepted.map((finding) => {
    const reason = acceptanceFor(plan, layout.id, finding)?.reason ?? "";
    const { title } = describeFinding(finding, wording);
    return body(reason === "" ? noteWords.sentence(title) : noteWords.acceptedFor(title, reason));
  });
}

/** Each disease marked on the ground, with the beds it lies on: who walks there carries it on. */
export function markLines({ plan, layout }: Pick<CheckedLayout, "plan" | "layout">): string[] {
  const ofBed = layout.beds.map(({ code, outline }) => ({ code, marks: marksOn(plan, outline) }));
  return plan.groundMarks.map((mark) => {
    const codes = ofBed.filter(({ marks }) => marks.includes(mark)).map(({ code }) => code);
    return noteWords.marked(markName(mark), longDate(mark.seenOn), codes);
  });
}

function aboutItems(
  { cut, unplaced, unshown }: NoteContent,
  body: (words: string) => FlowItem,
): readonly FlowItem[] {
  return [
    body(noteWords.measure),
    body(noteWords.distances),
    body(noteWords.seedLaw),
    ...(cut.length > 0 ? [body(cutWords(cut))] : []),
    ...(unplaced.length > 0 ? [body(noteWords.noRoom(unplaced.join(", ")))] : []),
    ...(unshown.length > 0 ? [body(noteWords.noShape(unshown.join(", ")))] : []),
  ];
}
