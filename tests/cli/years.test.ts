/** `wideberth years`, as shipped. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { csvRecords } from "../support/csv-records.ts";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";

let program: BuiltProgram;
let planFile: string;

beforeAll(() => {
  program = buildProgram();
  planFile = join(program.folder, "collection.json");
  writeFileSync(
    planFile,
    readFileSync(new URL("../../sample-plots/seed-collection.json", import.meta.url)),
  );
}, 60_000);

afterAll(() => program.remove());

interface Told {
  readonly varieties: readonly { readonly variety: string; readonly grownFor: readonly string[] }[];
  readonly seasons: readonly { readonly season: string }[];
  readonly against: readonly string[];
}

describe("wideberth years", () => {
  test("prints varieties by seasons, who is not taken for alive, and that nothing stands against it", () => {
    const { code, stdout, stderr } = program.run(["years", planFile]);
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout).toMatch(/^ +2027 +2028 +2029 +2030 +2031/);
    expect(stdout).toContain("Nothing stands against these years");
    expect(stdout).toMatch(/test it first: Marl Pit\./);
  });

  test("a solver says what it has proven, and never lays out worse years than the search", () => {
    const { code, stdout, stderr } = program.run(["years", planFile, "--prove", "2", "--json"]);
    expect([code, stderr]).toEqual([0, ""]);
    const { proof, gap, against } = JSON.parse(stdout) as Told & {
      readonly proof: readonly string[];
      readonly gap: number | null;
    };
    expect(against).toEqual([]);
    expect(proof).toHaveLength(2);
    expect(proof[1]).toMatch(/renew/);
    // Null is what a slow machine may answer: nothing proven in time, and said so.
    if (gap === null) expect(proof[0]).toContain("not proven in time");
    else expect(gap).toBeGreaterThanOrEqual(0);
    const refused = program.run(["years", planFile, "--prove", "soon"]);
    expect(refused.code).toBe(2);
    expect(refused.stderr).toContain("Got --prove soon, expected seconds");
  }, 120_000);

  test("what -o writes is shown again as it is, and a fault is said and ends with 1", () => {
    const kept = join(program.folder, "kept.json");
    const first = program.run(["years", planFile, "-o", kept, "--json"]);
    const again = program.run(["years", kept, "--json"]);
    expect(again.stdout).toBe(first.stdout);
    const plan = JSON.parse(readFileSync(kept, "utf8")) as {
      renewalYears: { bags: number };
    };
    plan.renewalYears.bags = 0;
    const bare = join(program.folder, "bare.json");
    writeFileSync(bare, JSON.stringify(plan));
    const { code, stdout } = program.run(["years", bare, "--json"]);
    expect(code).toBe(1);
    const told = JSON.parse(stdout) as Told;
    expect(told.against.some((words) => words.includes("Cottage garden"))).toBe(true);
    expect(told.varieties).toHaveLength(60);
  });

  test("as many seasons as asked, and CSV with one row a variety", () => {
    const { stdout } = program.run(["years", planFile, "--seasons", "3", "--csv"]);
    const rows = csvRecords(stdout);
    const seasons = Object.keys(rows[0] ?? {}).filter((heading) => /^\d{4}$/.test(heading));
    expect(seasons).toEqual(["2027", "2028", "2029"]);
    expect(rows).toHaveLength(60);
  });

  test.each([
    [["--seasons", "7"], "Got --seasons 7, expected 2 to 6"],
    [["--json", "--csv"], "got both"],
  ])("refuses %j", (options, words) => {
    const { code, stderr } = program.run(["years", planFile, ...options]);
    expect(code).toBe(2);
    expect(stderr).toContain(words);
  });
});
