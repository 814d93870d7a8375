/**
 * Cards of the beds, two or four to a page, in the order of the walk: a drawing of the bed, what
 * stands where, what must not be done, and room to write. A bed without plantings has none.
 */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { walkingNumbers } from "../fieldwork/walking-order.ts";
import { markName } from "../ground/ground-diseases.ts";
import { marksOn } from "../ground/ground-history.ts";
import type { ListPageSetting } from "../map/list-pages.ts";
import { type MapItem, mapContent } from "../map/map-items.ts";
import { placeTitle } from "../map/map-text.ts";
import { longDate } from "../model/day.ts";
import { type LengthUnit, formatLength } from "../model/length.ts";
import type { AreaShape, Planting } from "../model/plan.ts";
import { planRevision } from "../page/file-name.ts";
import { PAGE_MARGIN_MM } from "../page/page-frame.ts";
import { type Box, type Mark, type Page, line } from "../page/scene.ts";
import { type BedAxes, bedAxes, placeAlong, reachOn } from "./bed-axes.ts";
import { type CardContent, cardMarks } from "./card-marks.ts";
import { cardWords } from "./card-words.ts";
import { bedCardWords as words } from "./page-words.ts";
import { headerWords } from "../map/map-words.ts";

export function bedCardPages(input: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  const perPage = setting.cardsPerPage ?? 4;
  const boxes = cardBoxes(setting, perPage);
  const [first] = boxes;
  if (!first) return [];
  const size = { width: first.width, height: first.height };
  const { plan, layout } = input;
  // The revision first: what is too long is cut at the end.
  const stamp = [
    headerWords.revision(planRevision(plan, layout)),
    layout.name,
    placeTitle(plan),
  ].join("  ·  ");
  const cards = cardSubjects(input).flatMap((subject) =>
    cardMarks(contentOf(subject, input), size, stamp, perPage, setting.ruler),
  );
  const pages = Math.ceil(cards.length / perPage);
  return Array.from({ length: pages }, (_, page): Page => {
    const here = cards.slice(page * perPage, (page + 1) * perPage);
    return {
      ...setting.frame.size,
      name: pages > 1 ? words.page(page + 1, pages) : words.title,
      marks: [
        ...here.flatMap((card, index) => card(boxes[index] as Box)),
        ...cutLines(boxes, setting),
      ],
    };
  });
}

/** A bed, or a planting that stands on none. */
interface CardSubject {
  readonly id: string;
  readonly title: string;
  readonly outline: AreaShape;
  readonly note: string;
  readonly plantings: readonly Planting[];
}

/** In the order in which the walk comes to them; the plantings of a bed from its near end. */
function cardSubjects({ layout }: CheckedLayout): readonly CardSubject[] {
  const walk = walkingNumbers(layout);
  const beds = new Set(layout.beds.map(({ id }) => id));
  const subjects = [
    ...layout.beds.map((bed): CardSubject => {
      const axes = bedAxes(bed.outline);
      const plantings = layout.plantings
        .filter((planting) => planting.bed === bed.id)
        .toSorted((a, b) => placeAlong(axes, a.outline) - placeAlong(axes, b.outline));
      return { ...bed, title: words.bed(bed.code), note: bed.note ?? "", plantings };
    }),
    ...layout.plantings
      .filter(({ bed }) => bed === undefined || !beds.has(bed))
      .map((planting): CardSubject => ({
        ...planting,
        title: words.plot(planting.code),
        note: "",
        plantings: [planting],
      })),
  ].filter(({ plantings }) => plantings.length > 0);
  const place = ({ plantings }: CardSubject) =>
    Math.min(...plantings.map(({ id }) => walk.get(id) ?? Infinity));
  return subjects.toSorted((a, b) => place(a) - place(b));
}

function contentOf(subject: CardSubject, input: CheckedLayout): CardContent {
  const { plan } = input;
  const axes = bedAxes(subject.outline);
  const items = new Map(mapContent(input).items.map((item) => [item.id, item]));
  return {
    title: subject.title,
    size: sizeWords(subject.outline, axes, plan.units),
    before: [
      ...marksOn(plan, subject.outline).map(({ outline, ...mark }) => ({
        words: words.marked(
          markName(mark),
          longDate(mark.seenOn),
          partOfBed(outline, axes, plan.units),
        ),
        isBold: true,
      })),
      ...(subject.note === "" ? [] : [{ words: subject.note, isBold: false }]),
    ],
    bed: {
      axes,
      items: [subject.id, ...subject.plantings.map(({ id }) => id)]
        .filter((id, index, all) => all.indexOf(id) === index)
        .map((id) => items.get(id))
        .filter((item): item is MapItem => item !== undefined),
      codes: new Map(subject.plantings.map(({ id, code }) => [id, code])),
      upBearingDeg: plan.site.upBearingDeg,
      unit: plan.units,
    },
    plantings: subject.plantings.map((planting) => cardWords(planting, axes, input)),
  };
}

/** How far along the bed something reaches; null where it is nearly all of it. */
function partOfBed(outline: AreaShape, axes: BedAxes, unit: LengthUnit): string | null {
  const { along } = reachOn(axes, outline);
  const [from, to] = [along.from, Math.min(along.to, axes.lengthM)];
  if (to - from > 0.9 * axes.lengthM) return null;
  return words.along(from < 0.005 ? "0" : formatLength(from, unit), formatLength(to, unit));
}

function sizeWords(outline: AreaShape, axes: BedAxes, unit: LengthUnit): string {
  const [width, length] = [axes.widthM, axes.lengthM].map((side) => formatLength(side, unit));
  const say = outline.shape === "rectangle" ? words.size : words.sizeAtMost;
  return say(width ?? "", length ?? "");
}

function cardBoxes({ frame }: ListPageSetting, perPage: 2 | 4): readonly Box[] {
  const { widthMm, heightMm } = frame.size;
  const isLying = widthMm > heightMm;
  const columns = perPage === 4 || isLying ? 2 : 1;
  const rows = perPage / columns;
  const [width, height] = [widthMm - 2 * PAGE_MARGIN_MM, heightMm - 2 * PAGE_MARGIN_MM];
  return Array.from({ length: perPage }, (_, index) => ({
    left: PAGE_MARGIN_MM + ((index % columns) * width) / columns,
    top: PAGE_MARGIN_MM + (Math.floor(index / columns) * height) / rows,
    width: width / columns,
    height: height / rows,
  }));
}

/** Where the page is cut apart, from edge to edge. */
function cutLines(boxes: readonly Box[], { frame }: ListPageSetting): readonly Mark[] {
  const { widthMm, heightMm } = frame.size;
  const pen = { widthMm: 0.15, dashMm: [2, 2] };
  const inner = (values: readonly number[]) =>
    [...new Set(values.map((value) => Math.round(value * 1000) / 1000))].filter(
      (value) => value > PAGE_MARGIN_MM + 1,
    );
  return [
    ...inner(boxes.map(({ left }) => left)).map((x) =>
      line(
        [
          { x, y: PAGE_MARGIN_MM / 2 },
          { x, y: heightMm - PAGE_MARGIN_MM / 2 },
        ],
        pen,
      ),
    ),
    ...inner(boxes.map(({ top }) => top)).map((y) =>
      line(
        [
          { x: PAGE_MARGIN_MM / 2, y },
          { x: widthMm - PAGE_MARGIN_MM / 2, y },
        ],
        pen,
      ),
    ),
  ];
}
