/** `wideberth export PLAN --format x -o FILE`: one of the files for others. */
import { runChecks } from "../core/checks/run-checks.ts";
import { allExports, exportHindrance, type ExportFormat } from "../core/exports/all-exports.ts";
import { localTime, utcStamp } from "./clock.ts";
import { onlyArgument, parseOptions, usage } from "./options.ts";
import { readInput } from "./read-input.ts";
import { writeOutput } from "./write-output.ts";

export async function exportFile(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("export", args, {
    format: { type: "string" },
    output: { type: "string", short: "o" },
    layout: { type: "string" },
  });
  const path = onlyArgument("export", "PLAN", positionals);
  const output = values.output ?? "";
  if (output === "") throw usage("export", "Say where the file goes: -o FILE");
  const format = formatNamed(values.format);
  const { plan, layout, book } = await readInput(path, values.layout);
  const hindrance = exportHindrance(format, plan, false);
  if (hindrance !== null) throw usage("export", `No ${format.id} of this plan: ${hindrance}`);
  const now = new Date();
  const result = runChecks(plan, layout, book);
  const made = await format.make(
    { plan, layout, result, book },
    {
      printedAt: localTime(now),
      stamp: utcStamp(now),
      fonts: async () => (await import("./font.ts")).mapFonts,
      raster: null,
    },
  );
  await writeOutput(output, made);
  if (output !== "-") process.stderr.write(`${output}: ${format.title}\n`);
  return 0;
}

function formatNamed(id: string | undefined): ExportFormat {
  const ids = allExports.map((format) => format.id).join(", ");
  if (id === undefined) throw usage("export", `Say which file: --format with one of ${ids}`);
  const found = allExports.find((format) => format.id === id.toLowerCase());
  if (!found) throw usage("export", `Got format "${id}", expected one of ${ids}`);
  return found;
}
