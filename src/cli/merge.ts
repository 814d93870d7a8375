/** `wideberth merge A B -o C`: brings two copies of one plan together. */
import { describeDifference, mergePlans } from "../core/record/merge-plans.ts";
import { cropBook } from "../core/kinds/crop-book.ts";
import { readPlan, writePlan } from "../core/model/read-plan.ts";
import { parseOptions, usage } from "./options.ts";
import { readInput } from "./read-input.ts";
import { Refusal, refuseProblems } from "./refusal.ts";
import { writeOutput } from "./write-output.ts";
import { counted } from "../core/words/plurals.ts";

const isKnownKind = (kind: string) => cropBook().kind(kind) !== undefined;

export async function merge(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("merge", args, {
    output: { type: "string", short: "o" },
    take: { type: "string", multiple: true, default: [] },
  });
  const [a, b, ...more] = positionals;
  if (a === undefined || b === undefined || more.length > 0) {
    throw usage("merge", `Expected two plans, got ${positionals.length}`);
  }
  if (values.output === undefined || values.output === "") {
    throw usage("merge", "Say where the plan goes: -o FILE");
  }
  const mine = await readInput(a, undefined);
  const theirs = await readInput(b, undefined);
  const merged = mergePlans(mine.plan, theirs.plan, new Set(values.take));
  if (!merged.ok)
    throw new Refusal([`${theirs.file}: got ${merged.got}, expected ${merged.expected}.`]);
  const { plan, entries, clashes, differences, unknown } = merged;
  if (unknown.length > 0) {
    const names = differences.map(({ id }) => id).join(", ") || "none";
    throw new Refusal([
      `wideberth merge: got --take ${unknown.join(", ")}, expected one of these differences: ${names}.`,
    ]);
  }
  const text = writePlan(plan);
  // What was taken may hang on what was not, e.g. a planting on its variety.
  const read = readPlan(text, values.output, isKnownKind);
  if (!read.ok) throw refuseProblems(read.problems);
  await writeOutput(values.output, new TextEncoder().encode(text));
  const lines = [
    `${counted(entries.added, { one: "entry", other: "entries" })} taken over, ${plan.entries.length} in all`,
    ...clashes.map(
      ({ id }) => `two entries had one id and said different things: both kept, one as ${id}`,
    ),
    ...differences.map((difference) => {
      const taken = difference.isTaken ? `taken from ${theirs.file}` : `kept as in ${mine.file}`;
      return `${difference.id}: ${describeDifference(difference)}; ${taken}`;
    }),
  ];
  process.stderr.write(`${lines.join("\n")}\n`);
  return 0;
}
