/** `wideberth lots PLAN`: the seed shelf, its estimates, and what to renew. */
import { shelfCsv, shelfJson, shelfText } from "../core/exchange/shelf-report.ts";
import { today } from "./clock.ts";
import { onlyArgument, parseOptions, usage } from "./options.ts";
import { readInput } from "./read-input.ts";

export async function lots(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("lots", args, {
    json: { type: "boolean", default: false },
    csv: { type: "boolean", default: false },
  });
  if (values.json && values.csv) throw usage("lots", "Expected one of --json and --csv, got both");
  const path = onlyArgument("lots", "PLAN", positionals);
  const input = await readInput(path, undefined);
  const day = today(new Date());
  if (values.json) process.stdout.write(`${JSON.stringify(shelfJson(input, day), null, 2)}\n`);
  else if (values.csv) process.stdout.write(shelfCsv(input, day));
  else process.stdout.write(shelfText(input, day));
  return 0;
}
