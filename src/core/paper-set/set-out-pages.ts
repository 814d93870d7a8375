/** The set-out table on paper, with a sketch of the stakes and a worked example. */
import { outlineOf } from "../geometry/outline.ts";
import type { LengthUnit } from "../model/length.ts";
import { type FlowItem, heading, paragraph, space } from "../page/flow.ts";
import { type ListPageSetting, flowPages, noteWidth } from "../map/list-pages.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { type Mark, type Page, type PagePoint, line } from "../page/scene.ts";
import { type SetOut, setOut, tapeText, whereTapesMeet } from "../fieldwork/set-out.ts";
import { stakeMarks } from "../map/stake-marks.ts";
import { tableItems } from "../page/table-flow.ts";

const SKETCH_HIGH_MM = 70;

export function setOutPages(input: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  const { ruler } = setting;
  const width = noteWidth(setting.frame);
  const body = (words: string) => paragraph(words, width, TYPE_PT.body, ruler, { after: 1.6 });
  const table = setOut(input.layout, input.plan.units);
  if (!table) return flowPages("Set-out table", [body("There is nothing to mark out.")], setting);
  const unit = input.plan.units;
  const rows = table.corners.map(({ code, number, x, y, fromA, fromB }) => [
    `${code} corner ${number}`,
    ...[x, y, fromA, fromB].map((metres) => tapeText(metres, unit)),
  ]);
  const columns = ["Corner", "x", "y", "From A", "From B"].map((title, index) => ({
    title,
    share: index === 0 ? 20 : 14,
  }));
  return flowPages(
    "Set-out table",
    [
      ...howTo(table, unit).map(body),
      sketch(input, table, width),
      heading("Corners", width, TYPE_PT.code, ruler),
      ...tableItems(columns, rows, width, TYPE_PT.body, ruler),
      space(2),
    ],
    setting,
  );
}

function howTo({ baselineM, corners, worstM }: SetOut, unit: LengthUnit): readonly string[] {
  const [first] = corners;
  const met = first && whereTapesMeet(first.fromA, first.fromB, baselineM);
  return [
    `Drive stake A, the origin, and stake B exactly ${tapeText(baselineM, unit)} apart, as the sketch shows. Hook a tape on each. Where both tapes show the lengths of a corner, beyond the line from A to B, is that corner; hold both tapes level and tight.`,
    "x runs from A towards B, y square to it. Corners are counted clockwise, from the near left where the bed is a rectangle.",
    ...(first && met
      ? [
          `Worked check: for ${first.code} corner ${first.number} the tapes ${tapeText(first.fromA, unit)} and ${tapeText(first.fromB, unit)} meet at x ${tapeText(met.x, unit)}, y ${tapeText(met.y, unit)}. Over all corners the meeting point of the printed tapes lies at most ${Math.max(1, Math.ceil(worstM * 1000))} mm from the corner.`,
        ]
      : []),
  ];
}

/** Beds and stakes, not to a round ratio. */
function sketch({ layout }: CheckedLayout, { a, b }: SetOut, widthMm: number): FlowItem {
  const outlines = [...layout.beds, ...layout.plantings].map((item) => outlineOf(item.outline));
  const xs = [a.x, b.x, ...outlines.flatMap(({ bounds }) => [bounds.minX, bounds.maxX])];
  const ys = [a.y, ...outlines.map(({ bounds }) => bounds.maxY)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [foot, head] = [Math.min(...ys), Math.max(...ys)];
  const mmPerMetre = Math.min(
    (widthMm - 10) / (right - left),
    (SKETCH_HIGH_MM - 12) / (head - foot),
  );
  const height = (head - foot) * mmPerMetre + 12;
  return {
    height: height + 2,
    draw: (pageLeft, top) => {
      const at = (x: number, y: number): PagePoint => ({
        x: pageLeft + 5 + (x - left) * mmPerMetre,
        y: top + 3 + (head - y) * mmPerMetre,
      });
      return [
        ...outlines.map(({ rings }): Mark => ({
          kind: "area",
          rings: rings.map((ring) =>
            Array.from({ length: ring.length / 2 }, (_, index) =>
              at(ring[index * 2] as number, ring[index * 2 + 1] as number),
            ),
          ),
          fill: null,
          hatch: null,
          pen: { widthMm: 0.2 },
        })),
        line([at(a.x, a.y), at(b.x, b.y)], { widthMm: 0.2, dashMm: [2, 1] }),
        ...stakeMarks("A", at(a.x, a.y)),
        ...stakeMarks("B", at(b.x, b.y)),
      ];
    },
  };
}
