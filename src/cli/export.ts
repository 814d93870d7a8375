/** `wideberth export PLAN --format x -o FILE`: one of the files for others. */
import { allExports, exportHindrance, type ExportFormat } from "../core/files/all-exports.ts";
import type { LabelChoice } from "../core/labels/label-pages.ts";
import {
  type LabelSize,
  OWN_SIZE_EXAMPLE,
  labelSizes,
  ownLabelSize,
  usualLabelSize,
} from "../core/labels/label-sizes.ts";
import type { CheckedLayout } from "../core/checks/checked-layout.ts";
import { localTime, utcStamp } from "./clock.ts";
import { onlyArgument, parseOptions, usage } from "./options.ts";
import { readInput } from "./read-input.ts";
import { checkedAs, dayOfReading, readingOptions } from "./reading-option.ts";
import { writeOutput } from "./write-output.ts";

export async function exportFile(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("export", args, {
    format: { type: "string" },
    output: { type: "string", short: "o" },
    layout: { type: "string" },
    size: { type: "string" },
    start: { type: "string", default: "1" },
    qr: { type: "boolean", default: false },
    treated: { type: "string", default: "" },
    ...readingOptions,
  });
  const path = onlyArgument("export", "PLAN", positionals);
  const output = values.output ?? "";
  if (output === "") throw usage("export", "Say where the file goes: -o FILE");
  const format = formatNamed(values.format);
  const startAt = startOf(values.start);
  const grownOn = dayOfReading("export", values);
  if (grownOn !== null && format.followsReading !== true) {
    throw usage("export", `${format.id} is made as planned, without --as-grown`);
  }
  const { plan, layout } = await readInput(path, values.layout);
  const hindrance = exportHindrance(format, plan, false);
  if (hindrance !== null) throw usage("export", `No ${format.id} of this plan: ${hindrance}`);
  const size =
    values.size === undefined
      ? usualLabelSize(plan.units, format.labels === "packets")
      : sizeNamed(values.size);
  const input = checkedAs(plan, layout.id, grownOn);
  const labels = { size, startAt, hasQr: values.qr, treatment: values.treated };
  await writeOutput(output, await made(format, input, labels));
  if (output !== "-") process.stderr.write(`${output}: ${format.title}\n`);
  return 0;
}

/** What cannot be made of this plan is said, not thrown about. */
async function made(
  format: ExportFormat,
  input: CheckedLayout,
  labels: LabelChoice,
): Promise<string | Uint8Array> {
  const now = new Date();
  try {
    return await format.make(input, {
      printedAt: localTime(now),
      stamp: utcStamp(now),
      fonts: async () => (await import("./font.ts")).mapFonts,
      labels,
      raster: null,
    });
  } catch (error) {
    if (error instanceof RangeError) {
      throw usage("export", `No ${format.id} of this plan: ${error.message}`);
    }
    throw error;
  }
}

/** One of ours by name, or one measured by hand. */
function sizeNamed(text: string): LabelSize {
  const found = labelSizes.find(({ id }) => id === text.toLowerCase()) ?? ownLabelSize(text);
  if (found) return found;
  const ids = labelSizes.map(({ id }) => id).join(", ");
  throw usage(
    "export",
    `Got label size "${text}", expected ${ids}, or page, label, columns x rows, first edge and pitch in mm that fit the page, as "${OWN_SIZE_EXAMPLE}"`,
  );
}

function startOf(text: string): number {
  if (/^[1-9]\d{0,3}$/.test(text)) return Number(text);
  throw usage("export", `Got start "${text}", expected the number of the first label to print on`);
}

function formatNamed(id: string | undefined): ExportFormat {
  const ids = allExports.map((format) => format.id).join(", ");
  if (id === undefined) throw usage("export", `Say which file: --format with one of ${ids}`);
  const found = allExports.find((format) => format.id === id.toLowerCase());
  if (!found) throw usage("export", `Got format "${id}", expected one of ${ids}`);
  return found;
}
