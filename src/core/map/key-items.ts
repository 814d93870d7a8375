/** The key of a map sheet: exactly the hatches and outlines drawn on it, none else. */
import type { CropBook } from "../kinds/crop-book.ts";
import type { Plan } from "../model/plan.ts";
import { sharedHatchGroups } from "../page/hatch.ts";
import {
  type FlowItem,
  heading,
  lineHeight,
  paragraph,
  textLines,
  wrapText,
} from "../page/flow.ts";
import { type StyleName, TYPE_PT, styleNames, styles } from "./map-style.ts";
import { rowMarks } from "./row-marks.ts";
import { type Mark, type PagePoint, type TextRuler, boxRing, line } from "../page/scene.ts";
import { type SheetDrawing, areaMarks, signRing } from "./sheet-drawing.ts";
import { stakeMarks } from "./stake-marks.ts";
import { keyWords, styleWords } from "./map-words.ts";

const SWATCH = { width: 8, height: 4.4 } as const;
const SWATCH_GAP_MM = 1.6;
const COLUMN_GAP_MM = 2;

export function keyItems(
  plan: Plan,
  book: CropBook,
  drawing: Pick<SheetDrawing, "styles" | "hatches">,
  widthMm: number,
  ruler: TextRuler,
): readonly FlowItem[] {
  const kinds = kindsByGroup(plan, book);
  return [
    ...(drawing.hatches.size > 0
      ? [
          heading(keyWords.hatch, widthMm, TYPE_PT.body, ruler),
          ...[...drawing.hatches].map(([group, hatch]) =>
            swatchRow(
              (kinds.get(group) ?? [group]).join(", "),
              (left, top) => areaMarks({ style: "bed", hatch }, [swatchRing(left, top)]),
              widthMm,
              ruler,
            ),
          ),
          ...(sharedHatchGroups(drawing.hatches).size > 0
            ? [paragraph(keyWords.shared, widthMm, TYPE_PT.small, ruler)]
            : []),
        ]
      : []),
    ...(drawing.styles.size > 0
      ? [
          heading(keyWords.lines, widthMm, TYPE_PT.body, ruler),
          ...lineRows(drawing.styles, widthMm, ruler),
        ]
      : []),
  ];
}

/** Two beside each other: their words are short. */
function lineRows(
  drawn: ReadonlySet<StyleName>,
  widthMm: number,
  ruler: TextRuler,
): readonly FlowItem[] {
  const each = (widthMm - COLUMN_GAP_MM) / 2;
  const rows = styleNames
    .filter((style) => drawn.has(style))
    .map((style) =>
      swatchRow(styleWords[style], (left, top) => styleSwatch(style, left, top), each, ruler),
    );
  return rows.flatMap((one, index) => {
    if (index % 2 === 1) return [];
    const other = rows[index + 1];
    if (!other) return [one];
    return [
      {
        name: `${one.name}; ${other.name}`,
        height: Math.max(one.height, other.height),
        draw: (left: number, top: number) => [
          ...one.draw(left, top),
          ...other.draw(left + each + COLUMN_GAP_MM, top),
        ],
      },
    ];
  });
}

/** Names of the plan's kinds in each crossing group, in the order the plan first names them. */
function kindsByGroup(plan: Plan, book: CropBook): ReadonlyMap<string, readonly string[]> {
  const names = new Map<string, string[]>();
  for (const { kind: id } of [...plan.varieties, ...plan.surroundings]) {
    const kind = book.kind(id ?? "");
    if (!kind) continue;
    const list = names.get(kind.group) ?? [];
    if (!list.includes(kind.name)) names.set(kind.group, [...list, kind.name]);
  }
  return names;
}

function styleSwatch(style: StyleName, left: number, top: number): readonly Mark[] {
  if (style === "point") {
    const centre = { x: left + SWATCH.width / 2, y: top + SWATCH.height / 2 };
    return areaMarks({ style, hatch: null }, [signRing(centre)]);
  }
  if (style === "disease") {
    // Its words take two lines: there is room for the thorns above and below.
    const inner = { left: left + 0.6, top: top + 0.7, width: SWATCH.width - 1.2, height: 3 };
    return areaMarks({ style, hatch: null }, [boxRing(inner)]);
  }
  if (style === "rows") return rowSwatch(left, top);
  if (style === "stake") {
    return stakeMarks("", { x: left + SWATCH.width / 2, y: top + SWATCH.height / 2 });
  }
  if (style !== "measure") return areaMarks({ style, hatch: null }, [swatchRing(left, top)]);
  const middle = top + SWATCH.height / 2;
  const { pen } = styles.measure;
  const end = (x: number): Mark => ({
    kind: "circle",
    centre: { x, y: middle },
    radiusMm: 0.7,
    fill: 1,
    pen,
  });
  return [
    line(
      [
        { x: left, y: middle },
        { x: left + SWATCH.width, y: middle },
      ],
      pen,
    ),
    end(left + 0.7),
    end(left + SWATCH.width - 0.7),
  ];
}

function rowSwatch(left: number, top: number): readonly Mark[] {
  const { width, height } = SWATCH;
  return rowMarks(
    { shape: "rectangle", x: 0, y: 0, widthM: 1, lengthM: 1, turnDeg: 0 },
    3,
    [
      { x: left, y: top },
      { x: left + width, y: top },
      { x: left + width, y: top + height },
      { x: left, y: top + height },
    ],
    0,
  );
}

function swatchRing(left: number, top: number): readonly PagePoint[] {
  return boxRing({ left: left + 0.4, top, width: SWATCH.width - 0.8, height: SWATCH.height });
}

function swatchRow(
  words: string,
  swatch: FlowItem["draw"],
  widthMm: number,
  ruler: TextRuler,
): FlowItem {
  const indent = SWATCH.width + SWATCH_GAP_MM;
  const lines = wrapText(words, widthMm - indent, TYPE_PT.small, ruler);
  const textHeight = lines.length * lineHeight(TYPE_PT.small);
  const height = Math.max(textHeight, SWATCH.height);
  return {
    name: words,
    height: height + 0.9,
    draw: (left, top) => [
      ...swatch(left, top + (height - SWATCH.height) / 2),
      ...textLines(lines, { x: left + indent, y: top + (height - textHeight) / 2 }, TYPE_PT.small),
    ],
  };
}
