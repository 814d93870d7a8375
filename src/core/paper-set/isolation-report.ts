/**
 * What an inspector or a buyer asks of each seed planting: every pollen source, how far, how far
 * it should be, when both flower, on what the isolation rests, and whose figure was followed.
 */
import { describeStanding, requirementText } from "../checks/pair-words.ts";
import { type Bloom, bloomBasis } from "../calendar/bloom-window.ts";
import { ifNotWords, watchWords } from "../checks/day-words.ts";
import { allIsolationPairs } from "../checks/isolation.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import type { Stand } from "../checks/stand.ts";
import { crossingEstimate } from "../crossing-share/estimate.ts";
import { estimateWords } from "../crossing-share/estimate-words.ts";
import { PLANTS_UNSAID, offTypeWords } from "../crossing-share/off-type-words.ts";
import { CROSSING_CAUTION } from "../crossing-share/share-words.ts";
import { seasonsOf } from "../crossing-share/seasons-tried.ts";
import { seasonsWords } from "../crossing-share/seasons-words.ts";
import { measuredToPoint, unaskedAround } from "../fieldwork/unasked-around.ts";
import { pointWords, unaskedWords } from "../fieldwork/unasked-words.ts";
import type { Source } from "../kinds/crop.ts";
import { editionOf, findSource, publisherOf } from "../kinds/sources.ts";
import { longDate, shortDate } from "../model/day.ts";
import {
  type LengthUnit,
  formatDistance,
  formatMeasured,
  formatRequired,
} from "../model/length.ts";
import { type FlowItem, heading, paragraph, space } from "../page/flow.ts";
import { type ListPageSetting, flowPages } from "../map/list-pages.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import { plotRecords } from "../record/as-grown.ts";
import { notObserved } from "../record/not-observed-words.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { summaryItems } from "./isolation-summary.ts";
import { noteWords } from "../map/map-words.ts";
import type { Wording } from "../checks/wording.ts";
import { levelNames } from "../words/level-words.ts";
import type { Page } from "../page/scene.ts";
import { type TableColumn, tableItems } from "../page/table-flow.ts";
import { continued, reportWords as words } from "./page-words.ts";

const HEADING_PT = 11;

/** Wide enough for dates with on what they rest, which say most where they are least sure. */
const COLUMNS: readonly TableColumn[] = [
  { title: words.source, share: 24 },
  { title: words.kind, share: 13 },
  { title: words.distance, share: 9 },
  { title: words.required, share: 9 },
  { title: words.bloom, share: 24 },
  { title: words.together, share: 12 },
  { title: words.keptBy, share: 40 },
];

export function isolationPages(input: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  const { result, book } = input;
  const all = allIsolationPairs(result.stands, book);
  const parents = result.stands
    .filter((stand) => stand.isSeedParent)
    .map((stand) => ({ stand, pairs: all.filter(({ seedParent }) => seedParent === stand.id) }));
  const items = (width: number): readonly FlowItem[] => {
    const body = (text: string) => paragraph(text, width, TYPE_PT.body, setting.ruler);
    const closing = [body(CROSSING_CAUTION), body(noteWords.seedLaw)];
    if (parents.length === 0) return [body(words.nothing), ...closing];
    return [
      ...summaryItems(parents, wordingOf(input), width, setting.ruler),
      ...unaskedItems(input, width, setting),
      ...parents.flatMap(({ stand, pairs }) => parentItems(stand, pairs, input, width, setting)),
      ...closing,
    ];
  };
  const title = input.grownOn === undefined ? words.planned : words.grown(longDate(input.grownOn));
  return flowPages(title, items, setting, 1);
}

/** What being clear does not rest on: pollen around that nothing is said of. */
function unaskedItems(
  input: CheckedLayout,
  width: number,
  { ruler }: ListPageSetting,
): readonly FlowItem[] {
  const unasked = unaskedWords(unaskedAround(input.result), input.plan.units);
  const all = [
    pointWords(measuredToPoint(input.result)),
    unasked && `${unasked.head} ${unasked.lines.join("; ")}. ${unasked.advice}`,
  ].filter((sentence) => sentence !== null);
  return all.flatMap((each) => [paragraph(each, width, TYPE_PT.body, ruler), space(5)]);
}

function parentItems(
  stand: Stand,
  pairs: readonly IsolationPair[],
  checked: CheckedLayout,
  width: number,
  { ruler }: ListPageSetting,
): readonly FlowItem[] {
  const wording = wordingOf(checked);
  const body = (text: string) => paragraph(text, width, TYPE_PT.body, ruler);
  const name = `${wording.nameOf(stand.id)}, ${stand.kind.name} (${stand.kind.botanicalName})`;
  const rows = pairs
    .toSorted((a, b) => a.distanceM - b.distanceM)
    .map((pair) => pairCells(pair, checked, wording));
  const style = {
    sizePt: TYPE_PT.small,
    continued: paragraph(continued(name), width, TYPE_PT.body, ruler, { isBold: true }),
  };
  return [
    heading(name, width, HEADING_PT, ruler),
    { ...body(aboutParent(stand, pairs, checked, wording)), isKeptWithNext: true },
    ...(rows.length === 0
      ? [body(words.none)]
      : lastKept([...tableItems(COLUMNS, rows, width, style, ruler), space(1.5)])),
    ...shareSentences(stand, checked).map(body),
    ...notObservedWords(stand, pairs, checked).map(body),
    space(4),
  ];
}

/** As grown: what nobody wrote down of it and of what lies within twice its distance. */
function notObservedWords(
  stand: Stand,
  pairs: readonly IsolationPair[],
  checked: CheckedLayout,
): readonly string[] {
  const { grownOn, plan } = checked;
  if (grownOn === undefined) return [];
  const near = pairs.filter(
    ({ distanceM, requiredM }) => requiredM === null || distanceM <= 2 * requiredM,
  );
  const unseen = notObserved(checked, stand, near, plotRecords(plan, grownOn));
  return [
    unseen.length === 0 ? words.allObserved : words.notObserved,
    ...unseen.map((sentence) => `- ${sentence}`),
  ];
}

/** The last row stays with the sentence on it. */
function lastKept(items: readonly FlowItem[]): readonly FlowItem[] {
  return items.map((item, index) =>
    index >= items.length - 2 ? { ...item, isKeptWithNext: true } : item,
  );
}

/** When it takes pollen, to which level it is held, what it needs, and whose figure that is. */
function aboutParent(
  stand: Stand,
  pairs: readonly IsolationPair[],
  { plan }: CheckedLayout,
  wording: Wording,
): string {
  const { requirement } = stand;
  const needs =
    requirement === null ? words.unknownDistance : formatRequired(requirement.metres, plan.units);
  const source = requirement?.source ? findSource(requirement.source) : undefined;
  const [first] = pairs;
  return [
    words.takesPollen(windowText(stand.receives), levelNames[stand.level ?? plan.level], needs),
    // The planting's own figure: what a wild kind asks more stands with that wild kind.
    ...(first && requirement
      ? [
          words.figureSource(
            `${requirementText({ ...first, requirement }, wording)}${source ? sourceRest(source) : ""}`,
          ),
        ]
      : []),
  ].join(" ");
}

/** What the words of the figure leave out: the edition, or the title of what was not seen. */
function sourceRest(source: Source): string {
  const { title, trust } = source;
  const named = [title, publisherOf(source) ?? ""].filter((part) => part !== "");
  const dated = [editionOf(source) ?? ""].filter((part) => part !== "");
  if (trust === "seen") return dated.map((part) => `, ${part}`).join("");
  return ` (${[...named, ...dated].join(", ")})`;
}

function pairCells(
  pair: IsolationPair,
  checked: CheckedLayout,
  wording: Wording,
): readonly string[] {
  const other = checked.result.standById.get(pair.pollenSource);
  return [
    wording.nameOf(pair.pollenSource),
    other?.kind.name ?? "",
    ...distanceTexts(pair, checked.plan.units),
    windowText(other?.sheds),
    pair.overlapDays === null ? words.notKnown : String(pair.overlapDays),
    `${describeStanding(pair, wording)}${wildText(pair)}${watchText(pair, wording)}${yearsText(pair, checked)}`,
  ];
}

/** Why more is asked from a wild kind. */
function wildText({ requirement }: IsolationPair): string {
  return requirement?.increase === undefined ? "" : `; ${words.fromWild(requirement.increase)}`;
}

/** What must be watched where only unsure dates keep the two apart, and what to do if not. */
function watchText(pair: IsolationPair, wording: Wording): string {
  if (!pair.time || pair.time.isSure) return "";
  return `. ${watchWords([pair.time], wording)}. ${words.ifNot(ifNotWords([pair], wording))}`;
}

/** How much would cross, after the pairs on which the rule has spoken. */
function shareSentences(stand: Stand, checked: CheckedLayout): readonly string[] {
  const estimate = crossingEstimate(stand, checked.result.stands, checked.book);
  if (estimate === null) return [];
  const { shares, headline, sentences, verdict } = estimateWords(
    estimate,
    checked.result,
    wordingOf(checked),
  );
  const meaning =
    shares === null ? [] : [offTypeWords(stand.planting?.plants ?? PLANTS_UNSAID, shares)];
  return [words.crossing(verdict, [headline, ...sentences, ...meaning].join(" "))];
}

/** What the years of the site's record make of a pair that time decides. */
function yearsText(pair: IsolationPair, { result }: CheckedLayout): string {
  const seasons = seasonsOf(pair, result.standById);
  return seasons ? `. ${words.yearsTried(seasonsWords(seasons))}` : "";
}

/** Measured and required, as the sentence beside them has it. */
function distanceTexts(pair: IsolationPair, unit: LengthUnit): readonly string[] {
  if (pair.requiredM === null) return [formatDistance(pair.distanceM, unit), words.notKnown];
  const isShort = pair.standing !== "distance";
  const { measured, required, after } = formatMeasured(
    pair.distanceM,
    pair.requiredM,
    isShort,
    unit,
  );
  return [`${measured}${after}`, `${required}${after}`];
}

function windowText(bloom: Bloom | null | undefined): string {
  if (!bloom) return words.noTime;
  const { first, last } = bloom.outer;
  return words.window(shortDate(first), shortDate(last), bloomBasis(bloom));
}
