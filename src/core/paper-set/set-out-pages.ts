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

const COLUMNS: readonly TableColumn[] = [
  { title: "Corner", share: 17, isBold: true },
  { title: "From P", share: 14 },
  { title: "From Q", share: 14 },
  { title: "To next", share: 13 },
  { title: "Across", share: 13 },
  { title: "x", share: 13 },
  { title: "y", share: 13 },
];

export function setOutPages(input: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  const { ruler } = setting;
  const unit = input.plan.units;
  const table = setOut(input.layout, unit);
  const body = (words: string, width: number) =>
    paragraph(words, width, TYPE_PT.body, ruler, { after: 1.6 });
  if (!table) {
    return flowPages(
      "Set-out table",
      (width) => [body("There is nothing to mark out.", width)],
      setting,
    );
  }
  const { columns, rows } = cornerTable(table, unit);
  const ties = stakeTies(input.plan, table, unit);
  return flowPages(
    "Set-out table",
    (width) => [
      ...[...howTo(table, unit), tieWords(ties, unit), ...checkWords(table, unit)].map((words) =>
        body(words, width),
      ),
      setOutSketch(input.layout, table, ties, width, ruler),
      heading("Corners", width, TYPE_PT.code, ruler),
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
  return [
    `Drive stake P, the origin, and stake Q exactly ${tapeText(baselineM, unit)} apart, as the sketch shows. Hook a tape on each. Where both tapes show the lengths of a corner, beyond the line from P to Q, is that corner; hold both tapes level and tight.`,
    `${unit === "m" ? "x" : "In the worked check x"} runs from P towards Q, y square to it. Corners are counted clockwise, from the near left where the bed is a rectangle. To next: to the corner that follows, the last to the first. Across: from corner 1 to 3 and from 2 to 4; of a true rectangle both are the same, so measure them before you dig.`,
  ];
}

/** Without them the whole table would hang in the air. */
function tieWords(ties: StakeTies | null, unit: LengthUnit): string {
  if (!ties) {
    return "Where the stakes stand: the plan draws no two fixed marks near stake P, such as corners of a building, trunks or the site's edge. When they are driven, measure stake P from two marks that stay, and stake Q from one, and write it here: P ____________  ____________  Q ____________";
  }
  const [one, other] = ties.marks;
  return `Where the stakes stand: P is ${tapeText(ties.toP[0], unit)} from mark 1, the ${one.name}, and ${tapeText(ties.toP[1], unit)} from mark 2, the ${other.name}, to the ${ties.side} of the line between them. Check: Q is ${tapeText(ties.checkToQ, unit)} from mark 1. The marks stand as the plan has them; where yours differ, yours go before the plan.`;
}

function checkWords({ baselineM, corners, worstM }: SetOut, unit: LengthUnit): readonly string[] {
  const [first] = corners;
  if (!first) return [];
  const met = whereTapesMeet(first.fromP, first.fromQ, baselineM);
  return [
    `Worked check: for ${first.code} corner ${first.number} the tapes ${tapeText(first.fromP, unit)} and ${tapeText(first.fromQ, unit)} meet at x ${tapeText(met.x, unit)}, y ${tapeText(met.y, unit)}. Over all corners the meeting point of the printed tapes lies at most ${errorText(worstM, unit)} from the corner.`,
  ];
}
