/** The first page of the isolation report: every seed planting in one row, and who signs for it. */
import { type IsolationPair, type Standing, lacksFigure } from "../checks/isolation-pair.ts";
import type { Stand } from "../checks/stand.ts";
import type { Wording } from "../checks/wording.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { formatDistance, formatMeasured, formatRequired } from "../model/length.ts";
import { type FlowItem, heading, lineHeight, space } from "../page/flow.ts";
import { type Mark, type TextRuler, line, text } from "../page/scene.ts";
import { type TableColumn, tableItems } from "../page/table-flow.ts";
import { summaryWords as words } from "./page-words.ts";

const COLUMNS: readonly TableColumn[] = [
  { title: words.plot, share: 14, isBold: true },
  { title: words.variety, share: 30 },
  { title: words.plants, share: 10, align: "right" },
  { title: words.needs, share: 12, align: "right" },
  { title: words.weakest, share: 34 },
  { title: words.apart, share: 12, align: "right" },
  { title: words.keptBy, share: 44 },
  { title: words.grown, share: 34, isBlank: true },
];
const LEAST_ROW_MM = 9;

const WEAKEST_FIRST: readonly Standing[] = ["conflict", "unknown", "cover", "time", "distance"];

/** The pair that is least secure, and of those the nearest; undefined when nothing could cross. */
export function weakestPair(pairs: readonly IsolationPair[]): IsolationPair | undefined {
  const rank = ({ standing }: IsolationPair) => WEAKEST_FIRST.indexOf(standing);
  return pairs.toSorted((a, b) => rank(a) - rank(b) || a.distanceM - b.distanceM)[0];
}

/** @param pairs those of each seed planting, in the order of the report */
export function summaryItems(
  parents: readonly { readonly stand: Stand; readonly pairs: readonly IsolationPair[] }[],
  wording: Wording,
  widthMm: number,
  ruler: TextRuler,
): readonly FlowItem[] {
  const rows = parents.map(({ stand, pairs }) => {
    const weakest = weakestPair(pairs);
    return [
      stand.planting?.code ?? "",
      [stand.variety?.name ?? "", stand.kind.name].filter((part) => part !== "").join(", "),
      stand.planting?.plants === undefined ? "" : String(stand.planting.plants),
      stand.requirement === null
        ? words.notKnown
        : formatRequired(stand.requirement.metres, wording.unit),
      weakest ? wording.nameOf(weakest.pollenSource) : words.nothing,
      weakest ? apartText(weakest, wording) : "",
      weakest ? keptApartBy(weakest) : "",
    ];
  });
  return [
    heading(words.title, widthMm, TYPE_PT.code, ruler),
    ...tableItems(
      COLUMNS,
      rows,
      widthMm,
      { sizePt: TYPE_PT.small, leastRowMm: LEAST_ROW_MM },
      ruler,
    ),
    space(4),
    signatureItem(widthMm),
    space(5),
  ];
}

function apartText(pair: IsolationPair, { unit }: Wording): string {
  if (pair.requiredM === null) return formatDistance(pair.distanceM, unit);
  const isShort = pair.standing !== "distance" && !lacksFigure(pair);
  const { measured, after } = formatMeasured(pair.distanceM, pair.requiredM, isShort, unit);
  return `${measured}${after}`;
}

/** One of the five standings in plain words; figures stand beside it and below. */
function keptApartBy(pair: IsolationPair): string {
  switch (pair.standing) {
    case "distance":
      return words.distance;
    case "time":
      return pair.time && !pair.time.isSure ? words.unsureTime : words.time;
    case "cover":
      return words.cover;
    case "conflict":
      return words.conflict;
    case "unknown":
      return words.unknown;
  }
}

const SIGNERS = [words.grower, words.seenBy] as const;
const SIGN_LINE_MM = 12;

/** Name, date and signature of both, on lines of their own. */
function signatureItem(widthMm: number): FlowItem {
  const parts = [
    { said: words.name, from: 0.2, to: 0.5 },
    { said: words.date, from: 0.53, to: 0.68 },
    { said: words.signature, from: 0.71, to: 1 },
  ] as const;
  return {
    height: SIGNERS.length * SIGN_LINE_MM + lineHeight(TYPE_PT.body) / 2,
    draw: (left, top) =>
      SIGNERS.flatMap((signer, index): readonly Mark[] => {
        const y = top + (index + 1) * SIGN_LINE_MM - 2;
        return [
          text({ x: left, y }, signer, TYPE_PT.body),
          ...parts.flatMap(({ said, from, to }) => [
            text({ x: left + from * widthMm, y: y + 4 }, said, TYPE_PT.small),
            line(
              [
                { x: left + from * widthMm, y: y + 0.8 },
                { x: left + to * widthMm, y: y + 0.8 },
              ],
              { widthMm: 0.2 },
            ),
          ]),
        ];
      }),
  };
}
