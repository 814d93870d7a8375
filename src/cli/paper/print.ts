/** `wideberth print PLAN -o DIR`: all paper of a season, one PDF for each thing. */
import { mkdir, stat } from "node:fs/promises";
import { join } from "node:path";
import type { CheckedLayout } from "../../core/checks/checked-layout.ts";
import {
  type PrintId,
  isUsuallyPrinted,
  printFileName,
  printHindrance,
  printParts,
} from "../../core/files/print-list.ts";
import type { PrintSettings } from "../../core/files/print-set.ts";
import { suggestRatio, suggestSheets } from "../../core/map/page-plan.ts";
import { plotMapFileName } from "../../core/page/file-name.ts";
import { usualPaper } from "../../core/page/paper.ts";
import { localTime } from "../clock.ts";
import { fileTrouble } from "../file-trouble.ts";
import { facesOf, fontOption } from "./fonts-option.ts";
import { labelChoice } from "./label-options.ts";
import { onlyArgument, parseOptions, usage } from "../options.ts";
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
import { Refusal } from "../refusal.ts";
import { writeOutput } from "../write-output.ts";
import { counted } from "../../core/words/plurals.ts";

export async function print(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("print", args, {
    output: { type: "string", short: "o" },
    layout: { type: "string" },
    only: { type: "string", multiple: true, default: [] },
    with: { type: "string", multiple: true, default: [] },
    paper: { type: "string" },
    landscape: { type: "boolean", default: false },
    portrait: { type: "boolean", default: false },
    cards: { type: "string", default: "4" },
    ratio: { type: "string" },
    "many-sheets": { type: "boolean", default: false },
    "stake-size": { type: "string" },
    "packet-size": { type: "string" },
    offset: { type: "string", default: "0x0" },
    qr: { type: "boolean", default: false },
    force: { type: "boolean", default: false },
    ...fontOption,
    ...readingOptions,
  });
  const path = onlyArgument("print", "PLAN", positionals);
  const folder = values.output ?? "";
  if (folder === "" || folder === "-") throw usage("print", "Say which folder it goes to: -o DIR");
  const named = { only: partsNamed(values.only), with: partsNamed(values.with) };
  const grownOn = dayOfReading("print", values);
  const { plan, layout } = await readInput(path, values.layout);
  refusePictureFault(plan.picture, path);
  const paper =
    values.paper === undefined ? usualPaper(plan.units) : paperNamed("print", values.paper);
  const orientation =
    orientationOf("print", values) ?? suggestSheets(plan, layout, paper).orientation;
  const ratio =
    values.ratio === undefined
      ? suggestRatio(plan, layout, paper, orientation)
      : ratioOf("print", values.ratio);
  const mostSheets = mostSheetsOf(values["many-sheets"]);
  sheetCount("print", plan, layout, { paper, orientation, mostSheets }, ratio);
  const labels = { start: "1", offset: values.offset, qr: values.qr, treated: "" };
  const settings: PrintSettings = {
    paper,
    orientation,
    ratio,
    mostSheets,
    cardsPerPage: cardsNamed("print", values.cards),
    printedAt: localTime(new Date()),
    stakes: labelChoice("print", { ...labels, size: values["stake-size"] }, plan.units, false),
    packets: labelChoice("print", { ...labels, size: values["packet-size"] }, plan.units, true),
  };
  const input = checkedAs(plan, layout.id, grownOn);
  const wanted = wantedParts(input, named);
  const files = wanted.map((id) => ({ id, path: join(folder, fileNameOf(id, input, settings)) }));
  await prepareFolder(
    folder,
    files.map((file) => file.path),
    values.force,
  );
  await writeAll(files, input, settings, values.font);
  return 0;
}

interface PrintFile {
  readonly id: PrintId;
  readonly path: string;
}

async function writeAll(
  files: readonly PrintFile[],
  input: CheckedLayout,
  settings: PrintSettings,
  font: string | undefined,
): Promise<void> {
  const [{ planRemarks, printedPart, printedPdf }, { pdfWriter }] = await Promise.all([
    import("../../core/files/print-set.ts"),
    import("../../core/page/pdf-writer.ts"),
  ]);
  const fonts = await facesOf(font);
  const { ruler } = pdfWriter("", "", fonts);
  const say = (words: string) => process.stderr.write(`${words}\n`);
  planRemarks(input, ruler).forEach(say);
  for (const { id, path } of files) {
    const { pages, remarks } = await printedPart(id, input, settings, ruler);
    const title = printParts.find((part) => part.id === id)?.title ?? id;
    const { printedAt } = settings;
    await writeOutput(path, await printedPdf(input, { title, pages }, printedAt, fonts));
    say(`${path}: ${title}, ${counted(pages.length, { one: "page", other: "pages" })}`);
    remarks.forEach((words) => say(`  ${words}`));
  }
}

function fileNameOf(
  id: PrintId,
  { plan, layout }: CheckedLayout,
  { paper }: PrintSettings,
): string {
  if (id === "map") return plotMapFileName(plan, layout, paper);
  return printFileName(plan, layout, id === "shelf" ? "shelf packets" : id);
}

/** Those named alone, or the sensible set and what is named besides; what cannot be made says why. */
function wantedParts(
  { plan, layout }: CheckedLayout,
  named: { readonly only: readonly PrintId[]; readonly with: readonly PrintId[] },
): readonly PrintId[] {
  for (const id of [...named.only, ...named.with]) {
    const hindrance = printHindrance(id, plan, layout);
    if (hindrance !== null) throw usage("print", `No ${id} of this plan: ${hindrance}`);
  }
  const isWanted = (id: PrintId) =>
    named.only.length > 0
      ? named.only.includes(id) || named.with.includes(id)
      : named.with.includes(id) || isUsuallyPrinted(id, plan, layout);
  return printParts.map(({ id }) => id).filter(isWanted);
}

function partsNamed(texts: readonly string[]): readonly PrintId[] {
  const ids = printParts.map(({ id }) => id);
  return texts
    .flatMap((text) => text.toLowerCase().split(/[\s,]+/))
    .filter((name) => name !== "")
    .map((name) => {
      const id = ids.find((each) => each === name);
      if (!id) throw usage("print", `Got "${name}", expected ${ids.join(", ")}`);
      return id;
    });
}

/** Nothing is written over what is there, unless that is asked for: then nothing else is touched. */
async function prepareFolder(
  folder: string,
  paths: readonly string[],
  isForced: boolean,
): Promise<void> {
  try {
    await mkdir(folder, { recursive: true });
  } catch (error) {
    throw new Refusal([`${folder}: ${fileTrouble(error)}.`]);
  }
  if (isForced) return;
  const there: string[] = [];
  for (const path of paths) {
    if (
      await stat(path).then(
        () => true,
        () => false,
      )
    )
      there.push(path);
  }
  if (there.length === 0) return;
  throw new Refusal([
    ...there.map((path) => `${path}: is there already, expected a new file.`),
    "Nothing was written. With --force these files are written over.",
  ]);
}
