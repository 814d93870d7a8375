/** `wideberth years PLAN`: which variety is grown for seed in which of the next seasons. */
import { yearsCsv, yearsJson, yearsText } from "../core/exchange/years-report.ts";
import { writePlan } from "../core/model/read-plan.ts";
import { firstAnswer } from "../core/renewal/first-answer.ts";
import { judgeYears } from "../core/renewal/judge-years.ts";
import { provenYears } from "../core/renewal/proven-years.ts";
import { setYears, takeYears } from "../core/renewal/years-edits.ts";
import { yearsOfPlan } from "../core/renewal/years-of-plan.ts";
import type { Years, YearsProblem } from "../core/renewal/years-problem.ts";
import { LEAST_SEASONS, MOST_SEASONS } from "../core/renewal/years-settings.ts";
import { today } from "./clock.ts";
import { onlyArgument, parseOptions, usage } from "./options.ts";
import { readInput } from "./read-input.ts";
import { Refusal } from "./refusal.ts";
import { loadSolver, secondsToProve } from "./solver.ts";
import { writeOutput } from "./write-output.ts";

/** Exits with 1 where something stands against the years, as `check` does with conflicts. */
export async function years(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("years", args, {
    json: { type: "boolean", default: false },
    csv: { type: "boolean", default: false },
    anew: { type: "boolean", default: false },
    seasons: { type: "string" },
    output: { type: "string", short: "o" },
    layout: { type: "string" },
    prove: { type: "string" },
  });
  if (values.json && values.csv) {
    throw usage("years", "Expected one of --json and --csv, got both");
  }
  const path = onlyArgument("years", "PLAN", positionals);
  const seasons = seasonsNamed(values.seasons);
  const seconds = secondsToProve("years", values.prove);
  const input = await readInput(path, values.layout);
  if (input.from !== "plan")
    throw new Refusal([`${input.file}: got GeoJSON, expected a plan file.`]);
  const asked = seasons === undefined ? input.plan : setYears({ seasons }, "").apply(input.plan);
  const day = today(new Date());
  const look = (plan: typeof asked) => yearsOfPlan(plan, input.layout, input.book, day);
  const kept = look(asked);
  const isNew = values.anew || seconds !== undefined || kept.years.every((bits) => bits === 0);
  const first = isNew ? firstAnswer(kept.problem) : kept.years;
  const proof = seconds === undefined ? null : await proven(kept.problem, first, seconds);
  const plan = isNew ? takeYears(kept.rows, proof?.years ?? first, "").apply(asked) : asked;
  const shown = isNew ? look(plan) : kept;
  const told = { plan, book: input.book, proof };
  if (values.output !== undefined) {
    await writeOutput(values.output, new TextEncoder().encode(writePlan(plan)));
  }
  if (values.output !== "-") {
    if (values.json) process.stdout.write(`${JSON.stringify(yearsJson(told, shown), null, 2)}\n`);
    else if (values.csv) process.stdout.write(yearsCsv(told, shown));
    else process.stdout.write(yearsText(told, shown));
  }
  return judgeYears(shown.problem, shown.years).faults.length > 0 ? 1 : 0;
}

async function proven(problem: YearsProblem, first: Years, seconds: number) {
  const now = () => performance.now();
  return provenYears(problem, first, await loadSolver(), { seconds, now });
}

function seasonsNamed(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const count = Number(text);
  if (!Number.isInteger(count) || count < LEAST_SEASONS || count > MOST_SEASONS) {
    throw usage("years", `Got --seasons ${text}, expected ${LEAST_SEASONS} to ${MOST_SEASONS}`);
  }
  return count;
}
