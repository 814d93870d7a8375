/** `wideberth lots`, as shipped: the shelf as text, for programs, as CSV. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { csvRecords } from "../support/csv-records.ts";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";

let program: BuiltProgram;
const sample = new URL("../../sample-plots/two-acre-field.json", import.meta.url);
const bare = new URL("../../sample-plots/garden-solved.json", import.meta.url);
let planFile: string;
let bareFile: string;

beforeAll(() => {
  program = buildProgram();
  planFile = join(program.folder, "field.json");
  writeFileSync(planFile, readFileSync(sample));
  bareFile = join(program.folder, "bare.json");
  const plan = JSON.parse(readFileSync(bare, "utf8")) as Record<string, unknown>;
  writeFileSync(
    bareFile,
    JSON.stringify({ ...plan, lots: undefined, varieties: withoutLots(plan) }),
  );
}, 60_000);

afterAll(() => program.remove());

function withoutLots({ varieties }: Record<string, unknown>): object[] {
  return (varieties as { lots?: unknown }[]).map(({ lots: _lots, ...variety }) => variety);
}

describe("wideberth lots", () => {
  test("prints each lot with its band, then what cannot wait, what can, what is fine", () => {
    const { code, stdout, stderr } = program.run(["lots", planFile]);
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout).toMatch(/^23 lots, /);
    expect(stdout).toMatch(/OF-24 {2}Old Ferry, tomato: 2024, 3\.2 g, Seed room\n {4}\d+ to \d+ %/);
    expect(stdout).toContain("TREATED WITH THIRAM");
    const parts = [
      "To renew this season, most urgent first:\n- Old Ferry",
      "To renew in one of the next seasons:",
      "Fine for now:",
      "They certify nothing.",
    ].map((part) => stdout.indexOf(part));
    expect(parts.every((at, index) => at > (parts[index - 1] ?? 0))).toBe(true);
  });

  test("--json: bands as fractions, days as dates, reasons in words", () => {
    const { code, stdout } = program.run(["lots", planFile, "--json"]);
    const read = JSON.parse(stdout) as {
      lots: { code: string; band: [number, number] | null; standard: number | null }[];
      renew: { variety: string; cause: string; by: string; seasonsLeft: number; reason: string }[];
      fine: string[];
    };
    expect(code).toBe(0);
    expect(read.lots).toHaveLength(23);
    for (const { band } of read.lots) {
      const [low, high] = band ?? [0, 1];
      expect(low >= 0 && low <= high && high <= 1).toBe(true);
    }
    expect(read.lots.find((lot) => lot.code === "OF-24")?.standard).toBe(0.75);
    expect(read.renew[0]).toMatchObject({ variety: "Old Ferry", cause: "dead", seasonsLeft: 0 });
    const named = [...read.renew.map(({ variety }) => variety), ...read.fine];
    expect(new Set(named).size).toBe(named.length);
  });

  test("--csv: one row for each lot", () => {
    const { code, stdout } = program.run(["lots", planFile, "--csv"]);
    const data = csvRecords(stdout);
    expect(code).toBe(0);
    expect(data).toHaveLength(23);
    const old = data.find((row) => row.code === "OF-24");
    expect([old?.["latest test"], old?.["standard %"]]).toEqual(["2027-01-18", "75"]);
    expect(Number(old?.["least %"])).toBeLessThan(Number(old?.["most %"]));
  });

  test("a plan without lots says so, and both forms at once are refused", () => {
    expect(program.run(["lots", bareFile]).stdout).toBe("No lots on the shelf.\n");
    const both = program.run(["lots", planFile, "--json", "--csv"]);
    expect([both.code, both.stdout]).toEqual([2, ""]);
    expect(both.stderr).toContain("Expected one of --json and --csv, got both");
  });

  test("check on the command line reckons with lots from the start", () => {
    const { stdout } = program.run(["check", planFile, "--json"]);
    const { findings } = JSON.parse(stdout) as { findings: { check: string }[] };
    const checks = new Set(findings.map(({ check }) => check));
    expect([...checks]).toEqual(expect.arrayContaining(["old-seed", "lot-of-other-variety"]));
  });

  test.each(["sowing-list", "sowing-csv"])("export --format %s", (format) => {
    const out = join(program.folder, format);
    expect(program.run(["export", planFile, "--format", format, "-o", out]).code).toBe(0);
    const file = readFileSync(out);
    const start = file.subarray(0, 8).toString("utf8");
    expect(start).toMatch(format === "sowing-list" ? /^%PDF-/ : /date/);
  });
});
