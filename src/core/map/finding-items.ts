/** The findings as numbered words, short on the map sheets and in full on the pages after them. */
import { describeFinding, type Finding } from "../checks/all-checks.ts";
import { type Description, severityWord } from "../checks/wording.ts";
import { type Severity, countBySeverity } from "../checks/finding.ts";
import { type FlowItem, lineHeight, textLines, wrapText } from "../page/flow.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import { TYPE_PT } from "./map-style.ts";
import { badge, badgeSize } from "./measured-marks.ts";
import type { TextRuler } from "../page/scene.ts";
import { countWord } from "../words/deed-words.ts";
import { noteWords } from "./map-words.ts";

export interface NumberedWords {
  /** As on the map. */
  readonly number: number;
  readonly finding: Finding;
  readonly words: Description;
}

export function numberedWords(input: CheckedLayout): readonly NumberedWords[] {
  const wording = wordingOf(input);
  return input.result.findings.map((finding, index) => ({
    number: index + 1,
    finding,
    words: describeFinding(finding, wording),
  }));
}

/** `2 conflicts, 1 caution` or `no conflicts`. */
export function countText(findings: readonly Finding[]): string {
  return severityCounts(countBySeverity(findings));
}

/** The same of findings already counted. */
export function severityCounts(counts: Readonly<Record<Severity, number>>): string {
  const parts = (["conflict", "caution", "unknown"] as const).flatMap((severity) =>
    counts[severity] > 0 ? [countWord(counts[severity], severity)] : [],
  );
  if (counts.conflict === 0) parts.unshift(noteWords.noConflict);
  return parts.join(", ");
}

/** One numbered title each. */
export function findingTitles(
  numbered: readonly NumberedWords[],
  widthMm: number,
  ruler: TextRuler,
): readonly FlowItem[] {
  return numbered.map((entry) => numberedItem(entry, [], widthMm, ruler));
}

/** Number, severity and title, then every sentence. */
export function findingParagraphs(
  numbered: readonly NumberedWords[],
  widthMm: number,
  ruler: TextRuler,
): readonly FlowItem[] {
  return numbered.map((entry) => numberedItem(entry, entry.words.sentences, widthMm, ruler));
}

function numberedItem(
  { number, finding, words }: NumberedWords,
  sentences: readonly string[],
  widthMm: number,
  ruler: TextRuler,
): FlowItem {
  const size = badgeSize(number, ruler);
  const indent = size + 1.6;
  const title =
    sentences.length > 0
      ? `${capital(severityWord[finding.severity])}: ${words.title}`
      : words.title;
  const isBold = sentences.length > 0;
  const titleLines = wrapText(title, widthMm - indent, TYPE_PT.body, ruler, isBold);
  const bodyLines = wrapText(sentences.join(" "), widthMm - indent, TYPE_PT.body, ruler);
  const step = lineHeight(TYPE_PT.body);
  const height = Math.max((titleLines.length + bodyLines.length) * step, size);
  return {
    height: height + (isBold ? 3 : 1.2),
    draw: (left, top) => [
      ...badge(number, { x: left + size / 2, y: top + step / 2 + 0.2 }, ruler),
      ...textLines(titleLines, { x: left + indent, y: top }, TYPE_PT.body, isBold),
      ...textLines(
        bodyLines,
        { x: left + indent, y: top + titleLines.length * step },
        TYPE_PT.body,
      ),
    ],
  };
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
