/** `wideberth check` of a register on several threads: the same bytes as on one. */
import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { registerFeatures } from "../bench/register.ts";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";

let program: BuiltProgram;
/** Three batches of texts and three areas: more than is done without threads. */
const lines = [...registerFeatures(4500)].map((feature) => JSON.stringify(feature));
const register = lines.join("\n");

beforeAll(() => {
  program = buildProgram();
}, 60_000);

afterAll(() => program.remove());

const check = (threads: number, input: string | Uint8Array, ...options: readonly string[]) =>
  program.run(["check", "-", "--threads", String(threads), ...options], input);

test.each([[["--json"]], [[]]])(
  "the same bytes whatever the number of threads %j",
  (options) => {
    const alone = check(1, register, ...options);
    expect(alone.stdout.length).toBeGreaterThan(500_000);
    const together = check(3, register, ...options);
    expect([alone, together].map(({ code, stderr }) => ({ code, stderr }))).toEqual([
      { code: 1, stderr: "" },
      { code: 1, stderr: "" },
    ]);
    expect(together.stdout === alone.stdout).toBe(true);
  },
  120_000,
);

describe("what is bad in a later part is refused with its line, on one thread and on two", () => {
  const changed = (line: number, text: string) => lines.with(line - 1, text).join("\n");
  test.each<[string, () => string | Uint8Array, string]>([
    [
      "an id from an earlier part",
      () => changed(4400, lines[20] ?? ""),
      'line 4400 "plot-20", id: got "plot-20", expected an id of its own (line 21 has it already)',
    ],
    ["no JSON", () => changed(4100, "{]"), "line 4100: got"],
    [
      "bytes that are no text",
      () => Buffer.concat([Buffer.from(`${register}\n`), Uint8Array.of(0x7b, 0xff, 0x7d)]),
      "stdin: line 4501: got bytes that are not UTF-8, expected UTF-8 text.",
    ],
  ])(
    "%s",
    (_, input, words) => {
      const alone = check(1, input(), "--json");
      expect(alone.stderr).toContain(words);
      expect(alone).toEqual({ code: 2, stdout: "", stderr: alone.stderr });
      expect(check(2, input(), "--json")).toEqual(alone);
    },
    120_000,
  );
});

test.each(["0", "two", "1.5", "100"])("%s threads are refused", (threads) => {
  const { code, stderr } = program.run(["check", "-", "--threads", threads], register);
  expect(code).toBe(2);
  expect(stderr).toContain(`--threads got "${threads}", expected a number from 1 to 64`);
});

test("the program has letters of one byte only: every thread holds the whole of it", () => {
  expect(readFileSync(program.script, "utf8").search(/[^\u0000-\u00ff]/)).toBe(-1);
});
