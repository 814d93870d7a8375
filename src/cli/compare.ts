/** `wideberth compare PLAN`: measures layouts side by side and lists what differs. */
import { compareLayouts } from "../core/compare/compare-layouts.ts";
import { compareCsv, compareReport, compareReportText } from "../core/compare/compare-report.ts";
import { type CheckedLayout, checkLayouts } from "../core/checks/checked-layout.ts";
import { ratioText } from "../core/page/drawing-ratio.ts";
import { type PaperName, usualPaper } from "../core/page/paper.ts";
import type { Layout, Plan } from "../core/model/plan.ts";
import { localTime } from "./clock.ts";
import { onlyArgument, parseOptions, usage } from "./options.ts";
import { paperNamed } from "./paper/sheet-options.ts";
import { readInput } from "./read-input.ts";
import { Refusal } from "./refusal.ts";
import { writeOutput } from "./write-output.ts";

export async function compare(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("compare", args, {
    json: { type: "boolean", default: false },
    csv: { type: "boolean", default: false },
    pdf: { type: "string" },
    paper: { type: "string" },
    overlaid: { type: "boolean", default: false },
    layout: { type: "string", multiple: true, default: [] },
  });
  const { json, csv, pdf, overlaid } = values;
  if ([json, csv, pdf !== undefined].filter(Boolean).length > 1) {
    throw usage("compare", "Expected one of --json, --csv and --pdf, got more");
  }
  if (pdf === "") throw usage("compare", "Say where the PDF goes: --pdf FILE");
  if (pdf === undefined && (overlaid || values.paper !== undefined)) {
    throw usage("compare", "--paper and --overlaid go with --pdf FILE");
  }
  const paper = values.paper === undefined ? null : paperNamed("compare", values.paper);
  const path = onlyArgument("compare", "PLAN", positionals);
  const { plan, file } = await readInput(path, undefined);
  const layouts = pickLayouts(plan, values.layout, file);
  const compared = checkLayouts(plan, layouts);
  const input = { file, plan, compared };
  if (pdf !== undefined) {
    await writePdf(compared, pdf, paper ?? usualPaper(plan.units), overlaid);
  } else if (json) process.stdout.write(`${JSON.stringify(compareReport(input), null, 2)}\n`);
  else if (csv) process.stdout.write(compareCsv(compareLayouts(compared)));
  else process.stdout.write(compareReportText(input));
  return 0;
}

async function writePdf(
  compared: readonly CheckedLayout[],
  output: string,
  paper: PaperName,
  isOverlaid: boolean,
): Promise<void> {
  // The PDF writer and its type are large: only this option pays for them.
  const [{ comparePdf }, { mapFonts }] = await Promise.all([
    import("../core/compare/compare-pdf.ts"),
    import("./paper/font.ts"),
  ]);
  const print = { paper, isOverlaid, printedAt: localTime(new Date()) };
  const { bytes, pages, ratio } = await comparePdf(compared, print, mapFonts);
  await writeOutput(output, bytes);
  const units = compared[0]?.plan.units ?? "m";
  const name = output === "-" ? "stdout" : output;
  const size = `${pages} pages, ${ratioText(ratio, units)} on ${paper}`;
  process.stderr.write(`${name}: ${size}\n`);
}

/** Those named, by name or id and in that order; all of them when none is named. */
function pickLayouts(plan: Plan, wanted: readonly string[], file: string): readonly Layout[] {
  const names = plan.layouts.map(({ name }) => `"${name}"`).join(", ");
  const found =
    wanted.length === 0
      ? plan.layouts
      : wanted.map((name) => {
          const layout =
            plan.layouts.find((entry) => entry.name === name) ??
            plan.layouts.find(({ id }) => id === name);
          if (layout) return layout;
          throw new Refusal([`${file}: got layout "${name}", expected one of ${names}.`]);
        });
  if (new Set(found).size >= 2) return found;
  throw new Refusal([`${file}: got one layout, ${names}, expected two or more to compare.`]);
}
