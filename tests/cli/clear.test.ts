/** `wideberth clear`, as shipped. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { writePlan } from "../../src/core/model/read-plan.ts";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";
import { crowdedGarden } from "../support/crowded-garden.ts";

let program: BuiltProgram;
let path: string;

beforeAll(() => {
  program = buildProgram();
  path = join(program.folder, "garden.json");
  const sample = new URL("../../sample-plots/garden-to-solve.json", import.meta.url);
  writeFileSync(path, readFileSync(sample));
}, 60_000);
afterAll(() => program.remove());

test("clears the sample garden, tells each change, and the checks agree", () => {
  const out = join(program.folder, "cleared.json");
  expect(program.run(["check", path]).code).toBe(1);
  const { code, stderr } = program.run(["clear", path, "-o", out]);
  expect([code, stderr]).toEqual([
    0,
    expect.stringMatching(/^3 conflicts: \d changes? clears? all of them\.\n/),
  ]);
  expect(program.run(["check", out]).code).toBe(0);
});

test("says what is left where nothing is allowed, and refuses names of nothing", () => {
  const out = join(program.folder, "none.json");
  const codes = ["A01-1", "A02-1", "A03-1", "A04-1", "B01-1", "B02-1", "B03-1", "B04-1", "B04-2"];
  const known = new Set(
    JSON.stringify(JSON.parse(readFileSync(path, "utf8"))).match(/[AB]0\d-\d/g),
  );
  const stay = codes.filter((code) => known.has(code)).flatMap((code) => ["--stay", code]);
  const { code, stderr } = program.run(["clear", path, "-o", out, ...stay]);
  expect([code, stderr.includes("Left: ")]).toEqual([1, true]);
  const refused = program.run(["clear", path, "-o", out, "--stay", "Z99"]);
  expect([refused.code, refused.stderr]).toEqual([2, expect.stringContaining('got --stay "Z99"')]);
  expect(program.run(["clear", path, "-o", out, "--days", "-1"]).code).toBe(2);
});

test("a solver proves what branch and bound cannot, and its layout is judged like any other", () => {
  const crowded = join(program.folder, "crowded.json");
  writeFileSync(crowded, writePlan(crowdedGarden(3)));
  const out = join(program.folder, "proven.json");
  const searched = program.run(["clear", crowded, "-o", out]);
  const { code, stderr } = program.run(["clear", crowded, "-o", out, "--prove", "20"]);
  expect(stderr).toMatch(/Proven: among|not proven/);
  expect(code).toBe(searched.code);
  expect(program.run(["check", out]).code).toBe(code);
  const refused = program.run(["clear", crowded, "-o", out, "--prove", "0"]);
  expect([refused.code, refused.stderr]).toEqual([2, expect.stringContaining("Got --prove 0")]);
}, 120_000);
