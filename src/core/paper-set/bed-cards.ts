/** One page for each bed in large type, to be read from the clipboard by someone standing. */
import { lotCodesToSow } from "../lots/lot-book.ts";
import { shortDate } from "../model/day.ts";
import { formatLength } from "../model/length.ts";
import type { Bed, Planting } from "../model/plan.ts";
import { type FlowItem, flowInto, heading, paragraph, space } from "../page/flow.ts";
import { type ListPageSetting, roomBelowHeader, titledPages } from "../map/list-pages.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import { daysToKeep } from "../fieldwork/days-to-keep.ts";
import { listed } from "../checks/wording.ts";
import { coverWords } from "../map/map-style.ts";
import { byCode } from "../map/plot-rows.ts";
import type { Mark, Page } from "../page/scene.ts";

/** Read from 0.6 m in poor light, and from 1.5 m for the codes; points. */
const TYPE = { bed: 46, code: 30, body: 18 } as const;
/** A full bed is set smaller, rather than on two pages. */
const SHRINK = [1, 0.85, 0.7, 0.55] as const;

export function bedCardPages(input: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  return byCode(input.layout.beds).flatMap((bed) => {
    const box = roomBelowHeader(setting.frame);
    const sets = SHRINK.map((share) => cardItems(bed, input, box.width, share, setting));
    // The largest type with which all goes on one page; with the smallest it may take more.
    const items = sets.find((each) => flowInto(each, [box]).rest.length === 0) ?? sets.at(-1);
    const bodies: (readonly Mark[])[] = [];
    let waiting: readonly FlowItem[] = items ?? [];
    while (waiting.length > 0) {
      const { marks, rest } = flowInto(waiting, [box]);
      bodies.push(marks);
      waiting = rest;
    }
    return titledPages(`Bed ${bed.code}`, bodies, setting);
  });
}

function cardItems(
  bed: Bed,
  input: CheckedLayout,
  width: number,
  share: number,
  { ruler }: ListPageSetting,
): readonly FlowItem[] {
  const { plan, layout } = input;
  const big = (words: string) => paragraph(words, width, TYPE.body * share, ruler, { after: 1.5 });
  const plantings = byCode(layout.plantings.filter((planting) => planting.bed === bed.id));
  const size =
    bed.outline.shape === "rectangle"
      ? `${formatLength(bed.outline.widthM, plan.units)} wide, ${formatLength(bed.outline.lengthM, plan.units)} long`
      : "";
  return [
    paragraph(`Bed ${bed.code}`, width, TYPE.bed * share, ruler, { isBold: true, after: 2 }),
    ...(size === "" ? [] : [big(size)]),
    ...(bed.note === undefined || bed.note === "" ? [] : [big(bed.note)]),
    space(3 * share),
    ...(plantings.length === 0 ? [big("Nothing is planted here.")] : []),
    ...plantings.flatMap((planting) => [
      heading(titleOf(planting, input), width, TYPE.code * share, ruler),
      ...factsOf(planting, input).map(big),
      space(5 * share),
    ]),
  ];
}

function titleOf(planting: Planting, { plan }: CheckedLayout): string {
  const variety = plan.varieties.find(({ id }) => id === planting.variety);
  return `${planting.code}  ${variety?.name ?? ""}`.trim();
}

/** What a helper must know and do, and what not to do, one sentence a line. */
function factsOf(planting: Planting, checked: CheckedLayout): readonly string[] {
  const { plan, book, result } = checked;
  const variety = plan.varieties.find(({ id }) => id === planting.variety);
  const stand = result.standById.get(planting.id);
  const { start, plants, rows } = planting;
  const bloom = stand?.shedsPollen === true ? stand.bloom?.outer : undefined;
  const lot = lotCodesToSow(plan, planting, variety);
  const amount = [
    plants === undefined ? "" : `${plants} plants`,
    rows === undefined ? "" : `${rows} ${rows === 1 ? "row" : "rows"}`,
  ].filter((part) => part !== "");
  const lines = [
    [book.kind(variety?.kind ?? "")?.name ?? "", lot === "" ? "" : `lot ${lot}`]
      .filter((part) => part !== "")
      .join(", "),
    amount.join(" in "),
    start ? `${start.method === "sown" ? "Sow" : "Set out"} ${shortDate(start.date)}` : "",
    bloom ? `In flower ${shortDate(bloom.first)} to ${shortDate(bloom.last)}` : "",
    planting.flowering === "cut" ? "Cut before it flowers" : "",
    coverWords(planting.cover) === "" ? "" : `Cover: ${coverWords(planting.cover)}`,
    planting.purpose === "seed" ? "For seed: do not pick, do not thin without asking" : "",
    ...(planting.flowering === "yes" ? watchLines(planting.id, checked) : []),
    planting.note ?? "",
  ];
  return lines.filter((line) => line !== "");
}

/** Of pairs that only unsure dates keep apart: what the helper must report, and by when. */
function watchLines(id: string, checked: CheckedLayout): readonly string[] {
  const { overBy, notBefore } = daysToKeep(id, checked.result.pairs);
  const { nameOf } = wordingOf(checked);
  const names = (ids: readonly string[]) => listed(ids.map(nameOf));
  return [
    overBy
      ? `Must be over by ${shortDate(overBy.day)}, for ${names(overBy.others)}: if it still flowers, tell at once`
      : "",
    notBefore
      ? `Must not open before ${shortDate(notBefore.day)}, for ${names(notBefore.others)}: if it does, tell at once`
      : "",
  ];
}
