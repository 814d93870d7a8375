/** `wideberth check FILE`: prints the findings; 1 when there is a conflict. */
import { runChecks } from "../core/checks/run-checks.ts";
import { checkReport, checkReportText } from "../core/exports/check-report.ts";
import { onlyArgument, parseOptions } from "./options.ts";
import { readInput } from "./read-input.ts";

export async function check(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("check", args, {
    json: { type: "boolean", default: false },
    all: { type: "boolean", default: false },
    layout: { type: "string" },
  });
  const path = onlyArgument("check", "FILE", positionals);
  const { plan, layout, book, file } = await readInput(path, values.layout);
  const result = runChecks(plan, layout, book);
  const report = { file, plan, layout, book, result, isAll: values.all };
  process.stdout.write(
    values.json ? `${JSON.stringify(checkReport(report), null, 2)}\n` : checkReportText(report),
  );
  return result.findings.some(({ severity }) => severity === "conflict") ? 1 : 0;
}
