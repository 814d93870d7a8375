/**
 * `wideberth check` of a district register, streamed: time for each planting, how it grows, and
 * the most memory the program ever held.
 */
import { spawnSync } from "node:child_process";
import { closeSync, openSync, writeSync } from "node:fs";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";
import { registerFeatures } from "./register.ts";
import { reportRow } from "./report.ts";
import { growthExponent } from "./timing.ts";

const section = "District register";
const MEMORY_BUDGET_MB = 1024;
/** Microseconds of the clock for each planting of the largest, all cores at work. */
const BUDGET_US = 60;
const times: (readonly [number, number])[] = [];
let program: BuiltProgram;

beforeAll(() => {
  program = buildProgram();
}, 60_000);

afterAll(() => program.remove());

/** A register of so many features, one a line; the features are never all in memory. */
function writeRegister(count: number): string {
  const path = join(program.folder, `register-${count}.ndjson`);
  const file = openSync(path, "w");
  let lines: string[] = [];
  const flush = () => {
    writeSync(file, lines.join(""));
    lines = [];
  };
  for (const feature of registerFeatures(count)) {
    lines.push(`${JSON.stringify(feature)}\n`);
    if (lines.length === 5000) flush();
  }
  flush();
  closeSync(file);
  return path;
}

/** Says at the end how much memory was held at most, in KiB. */
const WATCH = `
  import { isMainThread } from "node:worker_threads";
  const tell = () => process.stderr.write("maxRSS " + process.resourceUsage().maxRSS);
  if (isMainThread) process.on("exit", tell);`;

interface Run {
  readonly ms: number;
  readonly megabytes: number;
}

function checked(path: string, ...options: readonly string[]): Run {
  const from = performance.now();
  const { status, stderr } = spawnSync(
    process.execPath,
    [
      "--import",
      `data:text/javascript,${encodeURIComponent(WATCH)}`,
      program.script,
      "check",
      "--json",
      ...options,
      path,
    ],
    { stdio: ["ignore", "ignore", "pipe"], encoding: "utf8" },
  );
  const ms = performance.now() - from;
  const megabytes = Number(/maxRSS (\d+)/.exec(stderr)?.[1]) / 1024;
  expect(status).toBe(1);
  expect(megabytes).toBeGreaterThan(0);
  return { ms, megabytes };
}

test.each([10_000, 100_000, 1_000_000])(
  "%d plantings",
  (count) => {
    const path = writeRegister(count);
    const { ms, megabytes } = checked(path);
    times.push([count, ms]);
    const row = { section, size: `${count.toLocaleString("en")} plantings` };
    const perPlanting = (ms * 1000) / count;
    reportRow({
      ...row,
      what: "check, time for each planting",
      value: perPlanting,
      unit: "µs",
      ...(count === 1_000_000
        ? { budget: `goal: under ${BUDGET_US} µs`, isMet: perPlanting < BUDGET_US }
        : {}),
    });
    reportRow({
      ...row,
      what: "check, most memory held",
      value: megabytes,
      unit: "MB",
      budget: `under ${MEMORY_BUDGET_MB} MB`,
      isMet: megabytes < MEMORY_BUDGET_MB,
    });
    if (count !== 100_000) return;
    reportRow({
      ...row,
      what: `check on one thread, against as many as the machine has; ${availableParallelism()} cores`,
      value: checked(path, "--threads", "1").ms / ms,
      unit: "x",
      moreIsBetter: true,
    });
  },
  600_000,
);

test("time grows as the register does", () => {
  const value = growthExponent(times);
  const size = "10,000 to 1,000,000 plantings";
  reportRow({ section, what: "growth exponent of a check", size, value, unit: "" });
  expect(value).not.toBeNaN();
});
