/** One bed card: its head, the drawing, then each planting with words, a square code and boxes. */
import { TYPE_PT } from "../map/map-style.ts";
import {
  type FlowItem,
  cutToWidth,
  flowInto,
  heading,
  lineHeight,
  paragraph,
  textLines,
} from "../page/flow.ts";
import {
  type Box,
  type Mark,
  type Pen,
  type TextRuler,
  area,
  boxRing,
  figure,
  inPart,
  capHeight,
  line,
  text,
} from "../page/scene.ts";
import { type DrawnBed, bedDrawing } from "./bed-drawing.ts";
import type { CardWords } from "./card-words.ts";
import { bedCardWords, continued } from "./page-words.ts";
import { squareCode } from "./square-code.ts";

export interface CardContent {
  /** `Bed A01`. */
  readonly title: string;
  readonly size: string;
  /** What is wrong with its ground, and its note: before the plantings. */
  readonly before: readonly { readonly words: string; readonly isBold: boolean }[];
  readonly bed: DrawnBed;
  readonly plantings: readonly CardWords[];
}

/** A card that is drawn wherever it lands. */
export type Card = (box: Box) => readonly Mark[];

const PAD_MM = 4;
/** Read in the hand; two to a page from farther off. Points. */
const TYPE = { title: 20, code: 13, body: 9 } as const;
const LARGE = 1.35;
/** A full card has a smaller drawing and then smaller type, rather than a second card: shares. */
const SHRINK = [
  [1, 0.47],
  [1, 0.36],
  [0.94, 0.36],
  [0.94, 0.27],
  [0.88, 0.27],
  [0.82, 0.2],
] as const;
const { captions: CAPTIONS, shortCaptions: SHORT_CAPTIONS } = bedCardWords;
const NARROW_BOX_MM = 16;
const BOX_MM = 9;
/** From this width on two plantings may stand side by side. */
const TWO_COLUMNS_MM = 110;
const COLUMN_GAP_MM = 4;
const NOTE_LINE_MM = 8;
const RULE: Pen = { widthMm: 0.2 };

/**
 * Usually one card; more where the plantings of a bed do not go on one.
 * @param size of a card, mm @param stamp plan, layout and revision, at its foot
 */
export function cardMarks(
  content: CardContent,
  size: { readonly width: number; readonly height: number },
  stamp: string,
  perPage: 2 | 4,
  ruler: TextRuler,
): readonly Card[] {
  const width = size.width - 2 * PAD_MM;
  const scale = perPage === 2 ? LARGE : 1;
  const columns = width >= TWO_COLUMNS_MM && content.plantings.length > 1 ? [1, 2] : [1];
  const tries = SHRINK.flatMap(([share, drawing]) =>
    columns.map((count) => setCard(content, size, { count, width, drawing }, scale * share, ruler)),
  );
  const whole = tries.filter(({ isOver }) => !isOver);
  const sets = whole.length > 0 ? whole : tries.slice(-1);
  // A drawing that cannot be read is worth a second card.
  const cost = ({ bodies, isTiny }: SetCard) => bodies.length + Number(isTiny);
  const least = Math.min(...sets.map(cost));
  const set = sets.find((each) => cost(each) === least) as SetCard;
  return set.bodies.map((body, index): Card => (box) => {
    const [left, top] = [box.left + PAD_MM, box.top + PAD_MM];
    const foot = box.top + box.height - PAD_MM;
    const room = {
      left,
      top: top + set.headMm,
      width,
      height: foot - set.footMm - top - set.headMm,
    };
    const isOn = index > 0;
    const title = isOn ? continued(content.title) : content.title;
    return [
      ...headMarks(
        title,
        isOn ? content.size : bedCardWords.drawn(content.size, set.ratio),
        { left, top, width },
        set.titlePt,
        ruler,
      ),
      ...(isOn
        ? []
        : figure(
            bedCardWords.drawing(
              content.title,
              content.plantings.map((each) => each.title).join("; "),
            ),
            { left, top: top + set.titleMm, width, height: set.headMm - set.titleMm },
            set.drawing(left, top + set.titleMm),
          )),
      ...body(isOn ? { ...room, top: top + set.titleMm } : room),
      text({ x: left, y: foot }, cutToWidth(stamp, width, TYPE_PT.least, ruler), TYPE_PT.least),
    ];
  });
}

interface SetCard {
  readonly titlePt: number;
  /** Title and rule; and with the drawing; mm from the top. */
  readonly titleMm: number;
  readonly headMm: number;
  readonly footMm: number;
  /** Of the drawing, in words. */
  readonly ratio: string;
  readonly drawing: (left: number, top: number) => readonly Mark[];
  readonly bodies: readonly ((room: Box) => readonly Mark[])[];
  /** A planting's words are higher than a card. */
  readonly isOver: boolean;
  readonly isTiny: boolean;
}

interface CardRoom {
  readonly width: number;
  /** Columns of plantings. */
  readonly count: number;
  /** Most of the height that the drawing takes. */
  readonly drawing: number;
}

function setCard(
  { bed, before, plantings }: CardContent,
  size: { readonly width: number; readonly height: number },
  { count, width, drawing: share }: CardRoom,
  scale: number,
  ruler: TextRuler,
): SetCard {
  const titlePt = TYPE.title * scale;
  const titleMm = capHeight(titlePt) + 3.4;
  const footMm = lineHeight(TYPE_PT.least) + 0.5;
  const inner = size.height - 2 * PAD_MM - footMm;
  const drawing = bedDrawing(bed, width, (inner - titleMm) * share, ruler);
  const headMm = titleMm + drawing.height + 2;
  const each = (width - COLUMN_GAP_MM * (count - 1)) / count;
  const columnsOf = ({ left, top, height }: Omit<Box, "width">): readonly Box[] =>
    Array.from({ length: count }, (_, index) => ({
      left: left + index * (each + COLUMN_GAP_MM),
      top,
      width: each,
      height,
    }));
  const bodies: ((room: Box) => readonly Mark[])[] = [];
  let isOver = false;
  let waiting: readonly FlowItem[] = [
    ...before.map(({ words, isBold }) =>
      paragraph(words, each, TYPE.body * scale, ruler, { isBold }),
    ),
    ...plantings.map((words) => plantingItem(words, each, scale, ruler)),
  ];
  while (waiting.length > 0) {
    const height = inner - (bodies.length === 0 ? headMm : titleMm);
    const all = waiting;
    const { rest, filledMm } = flowInto(all, columnsOf({ left: 0, top: 0, height }));
    const here = all.slice(0, all.length - rest.length);
    isOver ||= filledMm > height + 0.01;
    bodies.push((room) => [
      ...flowInto(here, columnsOf({ ...room, height })).marks,
      ...noteLines({ ...room, top: room.top + filledMm, height: height - filledMm }),
    ]);
    waiting = rest;
  }
  return {
    titlePt,
    titleMm,
    headMm,
    footMm,
    ratio: drawing.ratioWords,
    drawing: drawing.draw,
    bodies,
    isOver,
    isTiny: drawing.isTiny,
  };
}

/** Less room than this says nothing of a bed's size. */
const LEAST_SIZE_MM = 12;

function headMarks(
  title: string,
  size: string,
  { left, top, width }: Pick<Box, "left" | "top" | "width">,
  titlePt: number,
  ruler: TextRuler,
): readonly Mark[] {
  const base = top + capHeight(titlePt);
  const room = width - ruler.width(title, titlePt, true) - 4;
  return [
    ...inPart({ role: "heading", level: 2 }, [
      text({ x: left, y: base }, title, titlePt, { isBold: true }),
    ]),
    ...(room < LEAST_SIZE_MM
      ? []
      : [
          text(
            { x: left + width, y: base },
            cutToWidth(size, room, TYPE_PT.body, ruler),
            TYPE_PT.body,
            { align: "right" },
          ),
        ]),
    line(
      [
        { x: left, y: base + 1.4 },
        { x: left + width, y: base + 1.4 },
      ],
      { widthMm: 0.4 },
    ),
  ];
}

/** Words with the square code beside them, and boxes to write in below. */
function plantingItem(words: CardWords, width: number, scale: number, ruler: TextRuler): FlowItem {
  const code = squareCode(words.machine);
  const wordsMm = width - (code ? code.side + 2 : 0);
  const parts = [
    heading(words.title, wordsMm, TYPE.code * scale, ruler),
    ...words.facts.map((fact) => paragraph(fact, wordsMm, TYPE.body * scale, ruler, { after: 0 })),
    ...words.orders.map((order) =>
      paragraph(order, wordsMm, TYPE.body * scale, ruler, { isBold: true, after: 0 }),
    ),
  ];
  const wordsHigh = parts.reduce((sum, part) => sum + part.height, 0);
  const upper = Math.max(wordsHigh, code?.side ?? 0) + 1;
  return {
    height: upper + BOX_MM + 2.4,
    draw: (left, top) => [
      ...flowInto(parts, [{ left, top, width: wordsMm, height: Infinity }]).marks,
      ...(code ? code.marks(left + width - code.side, top) : []),
      ...writingBoxes({ left, top: top + upper, width, height: BOX_MM }),
    ],
  };
}

/** A box each for day and hand: what was done or seen, with its name small in the corner. */
function writingBoxes({ left, top, width, height }: Box): readonly Mark[] {
  const each = width / CAPTIONS.length;
  const captions = each < NARROW_BOX_MM ? SHORT_CAPTIONS : CAPTIONS;
  return captions.flatMap((caption, index) => {
    const box = { left: left + index * each, top, width: each, height };
    return [
      area(boxRing(box), null, RULE),
      ...textLines([caption], { x: box.left + 0.8, y: top + 0.2 }, TYPE_PT.least),
    ];
  });
}

/** Lines to write on, where there is room left. */
function noteLines({ left, top, width, height }: Box): readonly Mark[] {
  const count = Math.floor((height - 1) / NOTE_LINE_MM);
  if (count < 1) return [];
  return [
    ...textLines([bedCardWords.notes], { x: left, y: top }, TYPE_PT.least),
    ...Array.from({ length: count }, (_, index) => {
      const y = top + (index + 1) * NOTE_LINE_MM;
      return line(
        [
          { x: left, y },
          { x: left + width, y },
        ],
        { widthMm: 0.12 },
      );
    }),
  ];
}
