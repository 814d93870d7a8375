/** The pages after the map: findings in full, accepted findings, far pollen sources, what the map is not. */
import { acceptanceFor } from "../checks/acceptance.ts";
import { describeFinding } from "../checks/all-checks.ts";
import { cutWords } from "./beyond-map.ts";
import { type FarSource, farSourceText } from "./far-sources.ts";
import { type NumberedWords, countText, findingParagraphs } from "./finding-items.ts";
import { type FlowItem, heading, paragraph, space } from "../page/flow.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import { TYPE_PT } from "./map-style.ts";
import type { TextRuler } from "../page/scene.ts";

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
      `What the checks say: ${countText(result.findings)}`,
      content.numbered.length > 0
        ? findingParagraphs(content.numbered, widthMm, ruler)
        : [body("Nothing to report.")],
    ),
    ...section("Accepted by the grower", acceptedItems(input, body)),
    ...section(
      "Pollen sources beyond the map",
      content.far.map((source) => body(`${farSourceText(source, plan.units)}.`)),
    ),
    ...section("Key, continued", content.rest),
    ...section("About this map", aboutItems(content, body)),
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
    return body(reason === "" ? `${title}.` : `${title}. Reason: ${reason}`);
  });
}

function aboutItems(
  { cut, unplaced, unshown }: NoteContent,
  body: (words: string) => FlowItem,
): readonly FlowItem[] {
  return [
    body(
      "Measure the check bars before you use the map: 100 mm and 4 in must be true both ways. A sheet that was printed to fit, or copied smaller, is right only by its scale bar.",
    ),
    body(
      "Distances are the shortest between planted outlines. Required distances come from the source named beside each, or from the grower. They make crossing rare; they do not rule it out.",
    ),
    body(SEED_LAW),
    ...(cut.length > 0 ? [body(cutWords(cut))] : []),
    ...(unplaced.length > 0
      ? [body(`No room was found on the map for these names: ${unplaced.join(", ")}.`)]
      : []),
    ...(unshown.length > 0
      ? [
          body(
            `The map's type has no shape for some characters; they are printed as boxes. The names of: ${unshown.join(", ")}.`,
          ),
        ]
      : []),
  ];
}

export const SEED_LAW =
  "This map certifies nothing. Seed that is sold or given away is under the seed law of the place; ask there what a label must say.";
