/** `wideberth lay-out PLAN -o FILE`: the seed list on the beds, in three layouts of their own. */
import { laidOutLayouts } from "../core/arrange/laid-out-layouts.ts";
import { type LaidOutList, layOut } from "../core/arrange/lay-out.ts";
import { layOutFault } from "../core/arrange/lay-out-faults.ts";
import {
  EDIT_TITLE,
  costWords,
  faultWords,
  goalNames,
  leftWords,
  sameWords,
  seedNotes,
} from "../core/arrange/lay-out-words.ts";
import { seedParts } from "../core/arrange/seed-parts.ts";
import { type CheckedLayout, checkLayout } from "../core/checks/checked-layout.ts";
import { writePlan } from "../core/model/read-plan.ts";
import { onlyArgument, parseOptions, usage } from "./options.ts";
import { readInput } from "./read-input.ts";
import { Refusal } from "./refusal.ts";
import { writeOutput } from "./write-output.ts";

/** Ends with 1 where every layout has a conflict left. */
export async function layOutList(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("lay-out", args, {
    output: { type: "string", short: "o" },
    layout: { type: "string" },
  });
  const path = onlyArgument("lay-out", "PLAN", positionals);
  const { output } = values;
  if (output === undefined || output === "") {
    throw usage("lay-out", "Say where the plan goes: -o FILE");
  }
  const { plan, from, layout, file } = await readInput(path, values.layout);
  if (from !== "plan") throw new Refusal([`${file}: got GeoJSON, expected a plan file.`]);
  const checked = checkLayout(plan, layout.id);
  const fault = layOutFault(layout, seedParts(checked));
  if (fault) throw new Refusal([`${file}: ${faultWords(fault)}`]);
  const list = laidOutOf(checked);
  const layouts = list.laid.map(({ goal, plantings }) => ({ name: goalNames[goal], plantings }));
  const { edit } = laidOutLayouts(plan, layout.id, layouts, EDIT_TITLE);
  await writeOutput(output, writePlan(edit.apply(plan)));
  process.stderr.write(`${report(list, plan.units).join("\n")}\n`);
  return list.laid.every(({ cost }) => cost.conflicts > 0) ? 1 : 0;
}

function laidOutOf(checked: CheckedLayout): LaidOutList {
  const run = layOut(checked);
  let next = run.next();
  while (next.done !== true) next = run.next();
  return next.value;
}

function report({ laid, seeds }: LaidOutList, units: "m" | "ft"): readonly string[] {
  const same = sameWords(laid);
  return [
    ...laid.flatMap((one) => [
      `${goalNames[one.goal]}:`,
      ...[...costWords(one, units), ...one.left.map(leftWords)].map((line) => `  ${line}`),
    ]),
    ...seedNotes(seeds),
    ...(same === null ? [] : [same]),
  ];
}
