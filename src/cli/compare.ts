/** `wideberth compare PLAN`: measures layouts side by side and lists what differs. */
import { compareLayouts } from "../core/arrange/compare-layouts.ts";
import { compareCsv, compareReport, compareReportText } from "../core/exports/compare-report.ts";
import type { Layout, Plan } from "../core/model/plan.ts";
import { onlyArgument, parseOptions, usage } from "./options.ts";
import { readInput } from "./read-input.ts";
import { Refusal } from "./refusal.ts";

export async function compare(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("compare", args, {
    json: { type: "boolean", default: false },
    csv: { type: "boolean", default: false },
    layout: { type: "string", multiple: true, default: [] },
  });
  if (values.json && values.csv) throw usage("compare", "Expected --json or --csv, got both");
  const path = onlyArgument("compare", "PLAN", positionals);
  const { plan, book, file } = await readInput(path, undefined);
  const layouts = pickLayouts(plan, values.layout, file);
  const input = { file, plan, layouts, book };
  if (values.json) process.stdout.write(`${JSON.stringify(compareReport(input), null, 2)}\n`);
  else if (values.csv) process.stdout.write(compareCsv(compareLayouts(plan, layouts, book)));
  else process.stdout.write(compareReportText(input));
  return 0;
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
