/** The set-out table on paper, with a sketch of the stakes and a worked example. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { type SetOut, errorText, setOut, tapeText, whereTapesMeet } from "../fieldwork/set-out.ts";
import { type StakeTies, stakeTies } from "../fieldwork/stake-ties.ts";
import { type ListPageSetting, flowPages } from "../map/list-pages.ts";
import { TYPE_PT } from "../map/map-style.ts";
import type { LengthUnit } from "../model/length.ts";
import { heading, paragraph, space } from "../page/flow.ts";
import type { Page } from "../page/scene.ts";
import { type TableColumn, tableItems } from "../page/table-flow.ts";
import { setOutSketch } from "./set-out-sketch.ts";
import { setOutWords as words } from "./page-words.ts";

const COLUMNS: readonly TableColumn[] = [
  { title: words.corner, share: 17, isBold: true },
  { title: words.fromP, share: 14 },
  { title: words.fromQ, share: 14 },
  { title: words.toNext, share: 13 },
  { title: words.across, share: 13 },
  { title: "x", share: 13 },
  { title: "y", share: 13 },
];

export function setOutPages(input: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  const { ruler } = setting;
  const unit = input.plan.units;
  const table = setOut(input.layout, unit);
  const body = (text: string, width: number) =>
    paragraph(text, width, TYPE_PT.body, ruler, { after: 1.6 });
  if (!table) {
    return flowPages(words.title, (width) => [body(words.nothing, width)], setting);
  }
  const { columns, rows } = cornerTable(table, unit);
  const ties = stakeTies(input.plan, table, unit);
  return flowPages(
    words.title,
    (width) => [
      ...[...howTo(table, unit), tieWords(ties, unit), ...checkWords(table, unit)].map((text) =>
        body(text, width),
      ),
      setOutSketch(input.layout, table, ties, width, ruler),
      heading(words.corners, width, TYPE_PT.code, ruler),
      ...tableItems(columns, rows, width, { sizePt: TYPE_PT.body }, ruler),
      space(2),
    ],
    setting,
  );
}

/** Feet with their fractions are long: x and y, which nobody tapes, are left to metres. */
function cornerTable({ corners }: SetOut, unit: LengthUnit) {
  const hasPlaces = unit === "m";
  return {
    columns: hasPlaces ? COLUMNS : COLUMNS.slice(0, 5),
    rows: corners.map(({ code, number, x, y, fromP, fromQ, toNext, across }) => [
      `${code}, ${number}`,
      tapeText(fromP, unit),
      tapeText(fromQ, unit),
      tapeText(toNext, unit),
      across === null ? "" : tapeText(across, unit),
      ...(hasPlaces ? [tapeText(x, unit), tapeText(y, unit)] : []),
    ]),
  };
}

function howTo({ baselineM }: SetOut, unit: LengthUnit): readonly string[] {
  return [words.stakes(tapeText(baselineM, unit)), words.axes(unit === "m" ? "x" : words.checkX)];
}

/** Without them the whole table would hang in the air. */
function tieWords(ties: StakeTies | null, unit: LengthUnit): string {
  if (!ties) {
    return words.noTies;
  }
  const [one, other] = ties.marks;
  return words.ties(
    [tapeText(ties.toP[0], unit), tapeText(ties.toP[1], unit)],
    [one.name, other.name],
    ties.side,
    tapeText(ties.checkToQ, unit),
  );
}

function checkWords({ baselineM, corners, worstM }: SetOut, unit: LengthUnit): readonly string[] {
  const [first] = corners;
  if (!first) return [];
  const met = whereTapesMeet(first.fromP, first.fromQ, baselineM);
  return [
    words.check(
      first,
      [tapeText(first.fromP, unit), tapeText(first.fromQ, unit)],
      [tapeText(met.x, unit), tapeText(met.y, unit)],
      errorText(worstM, unit),
    ),
  ];
}
