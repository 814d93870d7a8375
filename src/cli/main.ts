/**
 * The command line. Exit codes: 0 no conflict, 1 conflicts, 2 the input is bad. On a thread that
 * the check of a register starts, the same program does a part of its work.
 */
import { isMainThread } from "node:worker_threads";
import { joinGroundReckoning } from "../core/checks/ground-checks.ts";
import { joinSeedReckoning } from "../core/checks/seed-lots.ts";
import { groundReckoning } from "../core/ground/ground-reckoning.ts";
import { seedReckoning } from "../core/shelf/seed-reckoning.ts";
import { check } from "./check.ts";
import { clear } from "./clear.ts";
import { compare } from "./compare.ts";
import { exportFile } from "./export.ts";
import { help } from "./help.ts";
import { layOutList } from "./lay-out.ts";
import { lots } from "./lots.ts";
import { map } from "./paper/map.ts";
import { merge } from "./merge.ts";
import { print } from "./paper/print.ts";
import { answerWork } from "./register/register-threads.ts";
import { next } from "./next.ts";
import { Refusal } from "./refusal.ts";
import { serve } from "./serve.ts";
import { version } from "./version.ts";
import { years } from "./years.ts";

joinSeedReckoning(seedReckoning);
joinGroundReckoning(groundReckoning);

const commands: ReadonlyMap<string, (args: readonly string[]) => Promise<number>> = new Map([
  ["check", check],
  ["clear", clear],
  ["compare", compare],
  ["lay-out", layOutList],
  ["lots", lots],
  ["map", map],
  ["merge", merge],
  ["print", print],
  ["next", next],
  ["export", exportFile],
  ["serve", serve],
  ["years", years],
]);

async function run(args: readonly string[]): Promise<number> {
  const [name, ...rest] = args;
  if (name === undefined) throw new Refusal(["wideberth: no command given.", "", help.trimEnd()]);
  if (name === "--version" || name === "-V") return say(`${version}\n`);
  const isHelp = [name, ...rest].some((arg) => arg === "--help" || arg === "-h");
  if (name === "help" || isHelp) return say(help);
  const command = commands.get(name);
  if (!command) {
    const names = [...commands.keys()].join(", ").replace(/, (?=[^,]*$)/, " or ");
    throw new Refusal([`wideberth: got "${name}", expected ${names}.`, "See wideberth --help."]);
  }
  return command(rest);
}

function say(words: string): number {
  process.stdout.write(words);
  return 0;
}

async function runCommand(): Promise<void> {
  // Whoever reads our output may stop early, as `head` does.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
  });
  try {
    process.exitCode = await run(process.argv.slice(2));
  } catch (error) {
    // Never Node's own code 1, which would read as "conflicts".
    process.exitCode = 2;
    const isRefused = error instanceof Refusal;
    const words = isRefused ? error.message : `This is a fault in Wideberth: ${faultText(error)}`;
    process.stderr.write(`${words}\n`);
  }
}

function faultText(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}

if (isMainThread) await runCommand();
else answerWork();
