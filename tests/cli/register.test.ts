/** `wideberth check` of a register, one feature a line: the same answers as for one collection. */
import { spawn } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { CheckReport } from "../../src/core/files/check-report.ts";
import { registerFeatures } from "../bench/register.ts";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";

let program: BuiltProgram;
/** Enough for two areas. */
const features = [...registerFeatures(2500)];
const lines = features.map((feature) => JSON.stringify(feature));
const few = lines.slice(0, 40);

beforeAll(() => {
  program = buildProgram();
}, 60_000);

afterAll(() => program.remove());

function check(input: string | Uint8Array): CheckReport {
  const { stdout, stderr } = program.run(["check", "--json", "-"], input);
  expect(stderr).toBe("");
  return JSON.parse(stdout) as CheckReport;
}

function collection(texts: readonly string[]): string {
  return `{"type": "FeatureCollection", "features": [${texts.join(",")}]}`;
}

const inOrder = (items: readonly object[]) => items.map((item) => JSON.stringify(item)).sort();

describe("the same as one FeatureCollection", () => {
  test("pairs and findings, areas and all", () => {
    const whole = check(collection(lines));
    const register = check(`${lines.join("\n")}\n`);
    expect(inOrder(register.pairs)).toEqual(inOrder(whole.pairs));
    expect(new Set(whole.pairs.map(({ standing }) => standing))).toEqual(
      new Set(["conflict", "time", "cover", "unknown"]),
    );
    // A safety caution is told once, with the plantings of one area.
    const placed = ({ findings }: CheckReport) => findings.filter((it) => it.check !== "safety");
    const cautions = ({ findings }: CheckReport) =>
      findings.filter((it) => it.check === "safety").map(({ title }) => title);
    expect(inOrder(placed(register))).toEqual(inOrder(placed(whole)));
    expect(cautions(register).sort()).toEqual([...cautions(whole)].sort());
    expect(register.counts).toEqual(whole.counts);
    expect(Object.keys(register).sort()).toEqual(Object.keys(whole).sort());
    expect([register.file, register.plan, register.layout]).toEqual([
      whole.file,
      whole.plan,
      whole.layout,
    ]);
  });

  test("in words", () => {
    const told = (input: string) => {
      const { code, stdout } = program.run(["check", "-"], input);
      return { code, head: stdout.split("\n").slice(0, 2), lines: stdout.split("\n").sort() };
    };
    expect(told(few.join("\n"))).toEqual(told(collection(few)));
  });

  test.each<[string, (texts: readonly string[]) => string]>([
    ["without a last newline", (texts) => texts.join("\n")],
    ["with a byte order mark", (texts) => `\uFEFF${texts.join("\n")}`],
    ["with carriage returns", (texts) => `${texts.join("\r\n")}\r\n`],
    ["with blank lines", (texts) => `\n \n${texts.join("\n\n\t\n")}\n\n`],
    ["as a text sequence (RFC 8142)", (texts) => texts.map((text) => `\u001E${text}\n`).join("")],
    [
      "as a text sequence over several lines",
      (texts) =>
        texts.map((text) => `\u001E${JSON.stringify(JSON.parse(text), null, 1)}\n`).join(""),
    ],
  ])("%s", (_, write) => {
    const whole = check(collection(few));
    expect(inOrder(check(write(few)).pairs)).toEqual(inOrder(whole.pairs));
    expect(whole.pairs.length).toBeGreaterThan(0);
  });
});

describe("what is bad is refused with its line", () => {
  const [good = "", other = ""] = few;
  const changed = (from: string, to: string) => {
    const text = good.replace(from, to);
    expect(text).not.toBe(good);
    return text;
  };

  test.each<[string, () => string | Uint8Array, string]>([
    ["no JSON", () => `${good}\nplot 7\n${other}\n`, 'line 2: got "plot" at line 2, column 1'],
    ["a last line cut short", () => `${good}\n\n${other.slice(0, -20)}`, "at line 3, column"],
    [
      "a text of a sequence cut short",
      () => `\u001E${good}\n\u001E${other.slice(0, 50)}\n\u001E${other}\n`,
      "line 2: got text that stops in the middle",
    ],
    [
      "an unknown kind",
      () => `${other}\n${changed('"kind":"', '"kind":"no such ')}`,
      'line 2 "plot-0", properties.kind: got "no such',
    ],
    [
      "a date that is none",
      () => changed('"bloomStart":"2027-0', '"bloomStart":"2027-1').replace(/-1\d-/, "-13-"),
      'line 1 "plot-0", properties.bloomStart: got "2027-13-',
    ],
    [
      "an open ring",
      () => changed("]]]", "],[9.3,47.1]]]"),
      'line 1 "plot-0", geometry.coordinates[0]: got',
    ],
    [
      "an id twice",
      () => `${good}\n${other}\n${good}\n`,
      "an id of its own (line 1 has it already)",
    ],
    ["a collection in between", () => `${good}\n${collection([other])}\n`, "line 2, type: got"],
    [
      "places too far apart",
      () => `${good}\n${other.replaceAll("[9.", "[12.")}`,
      "km from the middle of the data, expected all within 50 km",
    ],
    [
      "bytes that are no text",
      () => Buffer.concat([Buffer.from(`${good}\n`), Uint8Array.of(0x7b, 0xff, 0x7d)]),
      "line 2: got bytes that are not UTF-8",
    ],
  ])("%s", (_, input, words) => {
    const { code, stdout, stderr } = program.run(["check", "--json", "-"], input());
    expect({ code, stdout }).toEqual({ code: 2, stdout: "" });
    expect(stderr.startsWith("stdin: ")).toBe(true);
    expect(stderr).toContain(words);
  });

  test("nothing in a file that should be a register", () => {
    const path = join(program.folder, "empty.ndjson");
    writeFileSync(path, "\n\n");
    const { code, stderr } = program.run(["check", path]);
    expect(code).toBe(2);
    expect(stderr).toBe(`${path}: got no plantings, expected one GeoJSON Feature a line.\n`);
  });

  test.each([
    [["--all"], "--all would list every pair"],
    [["--layout", "North"], "a register has no layouts"],
    [["--ways"], "--ways takes no register"],
  ])("%j", (options, words) => {
    const { code, stderr } = program.run(["check", "-", ...options], few.join("\n"));
    expect(code).toBe(2);
    expect(stderr).toContain(words);
  });
});

test("whoever reads the output of a register may stop early", async () => {
  const path = join(program.folder, "many.ndjson");
  writeFileSync(path, lines.join("\n"));
  const child = spawn(process.execPath, [program.script, "check", "--json", path]);
  child.stdout.destroy();
  let errors = "";
  child.stderr.on("data", (chunk: Uint8Array) => {
    errors += chunk.toString();
  });
  const code = await new Promise((resolve) => child.on("close", resolve));
  expect({ code, errors }).toEqual({ code: 1, errors: "" });
});
