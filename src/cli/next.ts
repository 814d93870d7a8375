/** `wideberth next PLAN -o FILE`: the plan of the season after, with what is offered first. */
import { randomBytes } from "node:crypto";
import { access } from "node:fs/promises";
import { writePlan } from "../core/model/read-plan.ts";
import { dayFromIso } from "../core/model/day.ts";
import { nextSeason } from "../core/seasons/next-season.ts";
import { nextSeasonFaults } from "../core/seasons/next-season-faults.ts";
import { nextSeasonReport } from "../core/seasons/next-season-words.ts";
import { chosenFates, offeredChoices } from "../core/seasons/season-choices.ts";
import { faultWords } from "../core/seasons/season-words.ts";
import { today } from "./clock.ts";
import { onlyArgument, parseOptions, usage } from "./options.ts";
import { readInput } from "./read-input.ts";
import { Refusal } from "./refusal.ts";
import { writeOutput } from "./write-output.ts";

export async function next(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("next", args, {
    output: { type: "string", short: "o" },
    layout: { type: "string" },
    on: { type: "string" },
  });
  const path = onlyArgument("next", "PLAN", positionals);
  const { output } = values;
  if (output === undefined || output === "") {
    throw usage("next", "Say where the plan goes: -o FILE");
  }
  const on = dayOf(values.on);
  const { plan, from, layout, file, book } = await readInput(path, values.layout);
  if (from !== "plan") throw new Refusal([`${file}: got GeoJSON, expected a plan file.`]);
  const offered = offeredChoices(plan, { id: `plan-${randomBytes(12).toString("hex")}`, on });
  const choices = values.layout === undefined ? offered : { ...offered, layout: layout.id };
  const faults = nextSeasonFaults(plan, choices, []);
  if (faults.length > 0) {
    throw new Refusal(faults.map((fault) => `${file}: ${faultWords(fault, plan, book)}`));
  }
  if (output !== "-" && (await isThere(output))) {
    throw new Refusal([
      `${output}: is there already; expected a name of no file yet, so that a plan worked on is not lost.`,
    ]);
  }
  const made = nextSeason(plan, choices);
  await writeOutput(output, new TextEncoder().encode(writePlan(made)));
  const report = nextSeasonReport(plan, made, chosenFates(plan, choices));
  process.stderr.write(`${report.join("\n")}\n`);
  return 0;
}

function dayOf(text: string | undefined): number {
  if (text === undefined) return today(new Date());
  const day = dayFromIso(text);
  if (day === null) throw usage("next", `Got --on ${text}, expected a date as YYYY-MM-DD`);
  return day;
}

async function isThere(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
