/** `wideberth clear PLAN -o FILE`: the fewest and mildest changes that clear all conflicts together. */
import { type CheckedLayout, checkLayout, wordingOf } from "../core/checks/checked-layout.ts";
import { describeFinding } from "../core/checks/all-checks.ts";
import { provenChoices } from "../core/clearing/choice-proof.ts";
import { type Clearing, type Prover, clearEverything } from "../core/clearing/clear-everything.ts";
import {
  CLEARING_TITLE,
  outcomeWords,
  proofWords,
  unknownWords,
} from "../core/clearing/clearing-words.ts";
import { makeChanges } from "../core/clearing/object-change.ts";
import type { Allowances } from "../core/clearing/clearing-problem.ts";
import { writePlan } from "../core/model/read-plan.ts";
import { onlyArgument, parseOptions, usage } from "./options.ts";
import { readInput } from "./read-input.ts";
import { Refusal } from "./refusal.ts";
import { loadSolver, secondsToProve } from "./solver.ts";
import { writeOutput } from "./write-output.ts";

/** Days a start may move unless another number is given. No source; our choice. */
const USUAL_DAYS = 42;

export async function clear(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("clear", args, {
    output: { type: "string", short: "o" },
    layout: { type: "string" },
    cages: { type: "string" },
    days: { type: "string" },
    prove: { type: "string" },
    stay: { type: "string", multiple: true, default: [] },
    grow: { type: "string", multiple: true, default: [] },
  });
  const path = onlyArgument("clear", "PLAN", positionals);
  const { output } = values;
  if (output === undefined || output === "") {
    throw usage("clear", "Say where the plan goes: -o FILE");
  }
  const mostCages = countOf("cages", values.cages) ?? Infinity;
  const mostDays = countOf("days", values.days) ?? USUAL_DAYS;
  const seconds = secondsToProve("clear", values.prove);
  const { plan, from, layout, file } = await readInput(path, values.layout);
  if (from !== "plan") throw new Refusal([`${file}: got GeoJSON, expected a plan file.`]);
  const checked = checkLayout(plan, layout.id);
  const grown = idsNamed(file, "--grow", values.grow, plan.varieties, ({ name }) => name);
  const allowances = {
    mostCages,
    mostDays,
    staying: idsNamed(file, "--stay", values.stay, layout.plantings, ({ code }) => code),
    mayWait: new Set(plan.varieties.map(({ id }) => id).filter((id) => !grown.has(id))),
  };
  const found = clearedOf(checked, allowances, await proverOf(seconds));
  const changes = found.steps.map(({ change }) => change);
  const edit = makeChanges(layout.id, changes, CLEARING_TITLE);
  await writeOutput(output, writePlan(edit.apply(plan)));
  process.stderr.write(`${report(found, checked).join("\n")}\n`);
  return found.left.length > 0 ? 1 : 0;
}

async function proverOf(seconds: number | undefined): Promise<Prover | null> {
  if (seconds === undefined) return null;
  const highs = await loadSolver();
  return (problem, first) => provenChoices(problem, first.taken, highs, seconds);
}

function clearedOf(checked: CheckedLayout, allowances: Allowances, prove: Prover | null): Clearing {
  const run = clearEverything(checked, allowances, prove);
  let next = run.next();
  while (next.done !== true) next = run.next();
  return next.value;
}

function countOf(option: string, text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const count = Number(text);
  if (text.trim() === "" || !Number.isInteger(count) || count < 0) {
    throw usage("clear", `Got --${option} ${text}, expected a whole number from 0 on`);
  }
  return count;
}

/** Ids of what is named; a name of nothing is refused. */
function idsNamed<T extends { readonly id: string }>(
  file: string,
  option: string,
  names: readonly string[],
  items: readonly T[],
  nameOf: (item: T) => string,
): ReadonlySet<string> {
  return new Set(
    names.flatMap((name) => {
      const found = items.filter((item) => nameOf(item) === name);
      if (found.length > 0) return found.map(({ id }) => id);
      const known = items.map((item) => `"${nameOf(item)}"`).join(", ");
      throw new Refusal([`${file}: got ${option} "${name}", expected one of ${known}.`]);
    }),
  );
}

function report(found: Clearing, checked: CheckedLayout): readonly string[] {
  const wording = wordingOf(checked);
  const titleOf = (finding: Clearing["left"][number]) => describeFinding(finding, wording).title;
  return [
    outcomeWords(found),
    ...found.steps.flatMap(({ changes }) =>
      changes.map(({ title, notes }) => `  ${[title, ...notes].join(". ").replaceAll("..", ".")}`),
    ),
    ...found.left.map((finding) => `  Left: ${titleOf(finding)}`),
    ...found.brings.map((finding) => `  Brings: ${titleOf(finding)}`),
    unknownWords(found),
    proofWords(found),
  ].filter((line) => line !== "");
}
