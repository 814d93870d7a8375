/** `wideberth export PLAN --format x -o FILE`: one of the files for others. */
import { type MadeFormat, allExports } from "../core/files/all-exports.ts";
import { exportHindrance } from "../core/files/export-list.ts";
import type { LabelChoice } from "../core/labels/label-pages.ts";
import type { CheckedLayout } from "../core/checks/checked-layout.ts";
import { localTime, utcStamp } from "./clock.ts";
import { facesOf, fontOption } from "./paper/fonts-option.ts";
import { labelChoice, labelOptions } from "./paper/label-options.ts";
import { onlyArgument, parseOptions, usage } from "./options.ts";
import { readInput } from "./read-input.ts";
import { checkedAs, dayOfReading, readingOptions } from "./reading-option.ts";
import { writeOutput } from "./write-output.ts";

export async function exportFile(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("export", args, {
    format: { type: "string" },
    output: { type: "string", short: "o" },
    layout: { type: "string" },
    ...labelOptions,
    ...fontOption,
    ...readingOptions,
  });
  const path = onlyArgument("export", "PLAN", positionals);
  const output = values.output ?? "";
  if (output === "") throw usage("export", "Say where the file goes: -o FILE");
  const format = formatNamed(values.format);
  const grownOn = dayOfReading("export", values);
  if (grownOn !== null && format.followsReading !== true) {
    throw usage("export", `${format.id} is made as planned, without --as-grown`);
  }
  const { plan, layout } = await readInput(path, values.layout);
  const hindrance = exportHindrance(format, plan, false);
  if (hindrance !== null) throw usage("export", `No ${format.id} of this plan: ${hindrance}`);
  const labels = labelChoice("export", values, plan.units, format.labels !== "stakes");
  const input = checkedAs(plan, layout.id, grownOn);
  await writeOutput(output, await made(format, input, labels, values.font));
  if (output !== "-") process.stderr.write(`${output}: ${format.title}\n`);
  return 0;
}

/** What cannot be made of this plan is said, not thrown about. */
async function made(
  format: MadeFormat,
  input: CheckedLayout,
  labels: LabelChoice,
  font: string | undefined,
): Promise<string | Uint8Array> {
  const now = new Date();
  try {
    return await format.make(input, {
      printedAt: localTime(now),
      stamp: utcStamp(now),
      fonts: () => facesOf(font),
      labels,
      remark: (words) => process.stderr.write(`${words}\n`),
      raster: null,
    });
  } catch (error) {
    if (error instanceof RangeError) {
      throw usage("export", `No ${format.id} of this plan: ${error.message}`);
    }
    throw error;
  }
}

function formatNamed(id: string | undefined): MadeFormat {
  const ids = allExports.map((format) => format.id).join(", ");
  if (id === undefined) throw usage("export", `Say which file: --format with one of ${ids}`);
  const found = allExports.find((format) => format.id === id.toLowerCase());
  if (!found) throw usage("export", `Got format "${id}", expected one of ${ids}`);
  return found;
}
