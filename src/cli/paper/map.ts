/** `wideberth map PLAN -o FILE`: the plot map as a PDF. */
import { cutWords } from "../../core/map/beyond-map.ts";
import { type CompanionId, companionIds } from "../../core/map/companion-ids.ts";
import { ratioText } from "../../core/page/drawing-ratio.ts";
import { isPictureWanted, printedPicture } from "../../core/map/picture-mark.ts";
import { oneSheetRatio, suggestRatio, suggestSheets } from "../../core/map/page-plan.ts";
import { unsetNames, unsetWords } from "../../core/map/unset-names.ts";
import type { Orientation, PaperName } from "../../core/page/paper.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import { localTime } from "../clock.ts";
import { onlyArgument, parseOptions, usage } from "../options.ts";
import { facesOf, fontOption } from "./fonts-option.ts";
import { refusePictureFault } from "./picture-fault.ts";
import {
  cardsNamed,
  mostSheetsOf,
  orientationOf,
  paperNamed,
  ratioOf,
  sheetCount,
} from "./sheet-options.ts";
import { readInput } from "../read-input.ts";
import { checkedAs, dayOfReading, readingOptions } from "../reading-option.ts";
import { writeOutput } from "../write-output.ts";
import { counted } from "../../core/words/plurals.ts";
import { sheetWords } from "../../core/map/map-words.ts";

export async function map(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("map", args, {
    output: { type: "string", short: "o" },
    paper: { type: "string", default: "A4" },
    ratio: { type: "string" },
    landscape: { type: "boolean", default: false },
    portrait: { type: "boolean", default: false },
    layout: { type: "string" },
    with: { type: "string", multiple: true, default: [] },
    "many-sheets": { type: "boolean", default: false },
    ...fontOption,
    ...readingOptions,
    cards: { type: "string", default: "4" },
  });
  const path = onlyArgument("map", "PLAN", positionals);
  const output = values.output ?? "";
  if (output === "") throw usage("map", "Say where the map goes: -o FILE");
  const lying = orientationOf("map", values);
  const paper = paperNamed("map", values.paper);
  const wanted = values.ratio === undefined ? undefined : ratioOf("map", values.ratio);

  const companions = companionsNamed(values.with);
  const grownOn = dayOfReading("map", values);
  const cardsPerPage = cardsNamed("map", values.cards);

  const input = await readInput(path, values.layout);
  const { plan, layout } = input;
  refusePictureFault(plan.picture, path);
  const orientation = lying ?? suggestSheets(plan, layout, paper).orientation;
  const ratio = wanted ?? suggestRatio(plan, layout, paper, orientation);
  const mostSheets = mostSheetsOf(values["many-sheets"]);
  const printer = { paper, orientation, mostSheets };
  const sheets = sheetCount("map", plan, layout, printer, ratio);
  // The PDF writer and its type are large: only this command pays for them.
  const [{ plotMapPdf }, fonts] = await Promise.all([
    import("../../core/paper-set/plot-map.ts"),
    facesOf(values.font),
  ]);
  const printedAt = localTime(new Date());
  const settings = { ...printer, ratio, printedAt, companions, cardsPerPage };
  const checked = checkedAs(plan, layout.id, grownOn);
  const { ruler } = (await import("../../core/page/pdf-writer.ts")).pdfWriter("", "", fonts);
  const made = await plotMapPdf(checked, settings, fonts);
  await writeOutput(output, made.bytes);

  const pages = counted(made.pages, { one: "page", other: "pages" });
  const isPictureLeft = isPictureWanted(plan.picture) && !printedPicture(plan.picture);
  const unset = unsetWords(unsetNames(checked, ruler));
  const said = [
    `${output === "-" ? "stdout" : output}: ${pages}, ${ratioText(ratio, plan.units)} on ${paper} ${orientation}`,
    ...(sheets > 1 ? [oneSheetHint(plan, layout, paper, orientation, sheets)] : []),
    ...(unset === "" ? [] : [unset]),
    ...(isPictureLeft ? [sheetWords.pictureLeft] : []),
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
