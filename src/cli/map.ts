/** `wideberth map PLAN -o FILE`: the plot map as a PDF. */
import { cutWords } from "../core/map/beyond-map.ts";
import { type CompanionId, companionIds } from "../core/map/companion-ids.ts";
import { ratioText } from "../core/page/drawing-ratio.ts";
import { isPictureWanted, PICTURE_LEFT, printedPicture } from "../core/map/picture-mark.ts";
import {
  MAX_SHEETS,
  oneSheetRatio,
  planSheets,
  suggestRatio,
  suggestSheets,
} from "../core/map/page-plan.ts";
import type { Orientation, PaperName } from "../core/page/paper.ts";
import type { Layout, Plan } from "../core/model/plan.ts";
import { localTime } from "./clock.ts";
import { onlyArgument, parseOptions, usage } from "./options.ts";
import { paperNamed } from "./paper-option.ts";
import { readInput } from "./read-input.ts";
import { checkedAs, dayOfReading, readingOptions } from "./reading-option.ts";
import { Refusal } from "./refusal.ts";
import { pngFault } from "./whole-png.ts";
import { writeOutput } from "./write-output.ts";

export async function map(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("map", args, {
    output: { type: "string", short: "o" },
    paper: { type: "string", default: "A4" },
    ratio: { type: "string" },
    landscape: { type: "boolean", default: false },
    portrait: { type: "boolean", default: false },
    layout: { type: "string" },
    with: { type: "string", multiple: true, default: [] },
    ...readingOptions,
    cards: { type: "string", default: "4" },
  });
  const path = onlyArgument("map", "PLAN", positionals);
  const output = values.output ?? "";
  if (output === "") throw usage("map", "Say where the map goes: -o FILE");
  const lying = orientationOf(values);
  const paper = paperNamed("map", values.paper);
  const wanted = values.ratio === undefined ? undefined : ratioOf(values.ratio);

  const companions = companionsNamed(values.with);
  const grownOn = dayOfReading("map", values);
  const cardsPerPage = cardsNamed(values.cards);

  const input = await readInput(path, values.layout);
  const { plan, layout } = input;
  const printed = printedPicture(plan.picture);
  const fault = printed && pngFault(printed);
  if (fault !== null) {
    const file = path === "-" ? "stdin" : path;
    throw new Refusal([`${file}: picture.data: got ${fault}, expected a whole PNG picture.`]);
  }
  const orientation = lying ?? suggestSheets(plan, layout, paper).orientation;
  const ratio = wanted ?? suggestRatio(plan, layout, paper, orientation);
  const sheets = sheetCount(plan, layout, paper, orientation, ratio);
  // The PDF writer and its type are large: only this command pays for them.
  const [{ plotMapPdf }, { mapFonts }] = await Promise.all([
    import("../core/paper-set/plot-map.ts"),
    import("./font.ts"),
  ]);
  const printedAt = localTime(new Date());
  const settings = { paper, orientation, ratio, printedAt, companions, cardsPerPage };
  const made = await plotMapPdf(checkedAs(plan, layout.id, grownOn), settings, mapFonts);
  await writeOutput(output, made.bytes);

  const pages = `${made.pages} ${made.pages === 1 ? "page" : "pages"}`;
  const isPictureLeft = isPictureWanted(plan.picture) && !printed;
  const said = [
    `${output === "-" ? "stdout" : output}: ${pages}, ${ratioText(ratio, plan.units)} on ${paper} ${orientation}`,
    ...(sheets > 1 ? [oneSheetHint(plan, layout, paper, orientation, sheets)] : []),
    ...(isPictureLeft ? [PICTURE_LEFT] : []),
    ...(made.cut.length > 0 ? [cutWords(made.cut)] : []),
    ...(made.unplacedLabels.length > 0
      ? [`No room on the drawing for: ${made.unplacedLabels.join(", ")}; see the plot list`]
      : []),
  ];
  process.stderr.write(`${said.join("\n")}\n`);
  return 0;
}

/** `--with calendar,set-out`, more than once, or `--with all`. */
function companionsNamed(texts: readonly string[]): readonly CompanionId[] {
  const wanted = texts.flatMap((text) => text.toLowerCase().split(/[\s,]+/)).filter(Boolean);
  const isKnown = (name: string) => name === "all" || companionIds.some((id) => id === name);
  const unknown = wanted.find((name) => !isKnown(name));
  if (unknown !== undefined) {
    throw usage("map", `Got sheet "${unknown}", expected ${[...companionIds, "all"].join(", ")}`);
  }
  return companionIds.filter((id) => wanted.includes(id) || wanted.includes("all"));
}

/** Null where neither is asked for: as needs fewest sheets. */
function orientationOf(wanted: { landscape: boolean; portrait: boolean }): Orientation | null {
  if (wanted.landscape && wanted.portrait) throw usage("map", "Choose --landscape or --portrait");
  if (wanted.portrait) return "portrait";
  return wanted.landscape ? "landscape" : null;
}

/** Bed cards on a page. */
function cardsNamed(text: string): 2 | 4 {
  if (text !== "2" && text !== "4") throw usage("map", `Got cards "${text}", expected 2 or 4`);
  return text === "2" ? 2 : 4;
}

/** `100` or `1:100`; the decimal mark may be a comma. */
function ratioOf(text: string): number {
  const ratio = Number(/^(?:1:)?(\d+(?:[.,]\d+)?)$/.exec(text.trim())?.[1]?.replace(",", "."));
  if (!(ratio >= 1 && ratio <= 100_000)) {
    throw usage("map", `Got ratio "${text}", expected 1 to 100000, for example 100 for 1:100`);
  }
  return ratio;
}

function sheetCount(
  plan: Plan,
  layout: Layout,
  paper: PaperName,
  orientation: Orientation,
  ratio: number,
): number {
  const { rows, columns } = planSheets(plan, layout, { paper, orientation }, ratio);
  const count = rows * columns;
  if (count <= MAX_SHEETS) return count;
  const fitting = oneSheetRatio(plan, layout, paper, orientation);
  throw usage(
    "map",
    `1:${ratio} takes ${count} sheets of ${paper}, more than ${MAX_SHEETS}; 1:${fitting} would do with fewer`,
  );
}

function oneSheetHint(
  plan: Plan,
  layout: Layout,
  paper: PaperName,
  orientation: Orientation,
  sheets: number,
): string {
  const ratio = oneSheetRatio(plan, layout, paper, orientation);
  return `The map takes ${sheets} sheets; at 1:${ratio} it goes on one`;
}
