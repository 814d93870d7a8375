/** `wideberth next`, as shipped. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Plan } from "../../src/core/model/plan.ts";
import { writePlan } from "../../src/core/model/read-plan.ts";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";
import { squareAt, trialPlan } from "../support/trial-plan.ts";

let program: BuiltProgram;

beforeAll(() => {
  program = buildProgram();
}, 60_000);
afterAll(() => program.remove());

function fileOf(name: string, plan: Plan): string {
  const path = join(program.folder, name);
  writeFileSync(path, writePlan(plan));
  return path;
}

const plan = trialPlan(
  {
    bean: { at: 0, kind: "common-bean" },
    beet: { at: 3, kind: "beet", flowering: "first-year", bloom: null, plants: 40 },
  },
  [],
  { title: "Garden 2027" },
);

test("writes the plan of the season after, says what it holds, and covers no file", () => {
  const path = fileOf("garden.json", plan);
  const out = join(program.folder, "garden-2028.json");
  const { code, stderr } = program.run(["next", path, "-o", out, "--on", "2028-01-10"]);
  expect(code).toBe(0);
  expect(stderr).toContain('"Garden 2028", season 2028, 1 Jan 2028 to 31 Dec 2028');
  expect(stderr).toContain("BEET Variety beet: lifted, in store");
  const made: unknown = JSON.parse(readFileSync(out, "utf8"));
  expect(made).toMatchObject({
    title: "Garden 2028",
    cameFrom: { plan: "trial" },
    earlierCrops: [
      { kind: "common-bean", year: 2027, wentToSeed: "yes" },
      { kind: "beet", year: 2027, wentToSeed: "no" },
    ],
  });
  expect(program.run(["check", out]).code).toBe(0);
  const again = program.run(["next", path, "-o", out]);
  expect(again.code).toBe(2);
  expect(again.stderr).toContain("is there already");
  expect(JSON.parse(readFileSync(out, "utf8"))).toEqual(made);
});

test("refuses earlier crops of the future by name, and makes nothing", () => {
  const earlierCrops = [{ id: "e1", outline: squareAt(0), kind: "beet", year: 2030 }];
  const path = fileOf("future.json", { ...plan, earlierCrops });
  const out = join(program.folder, "none.json");
  const { code, stderr } = program.run(["next", path, "-o", out]);
  expect(code).toBe(2);
  expect(stderr).toContain("beet, 2030");
  expect(existsSync(out)).toBe(false);
  expect(program.run(["next", path]).stderr).toContain("-o FILE");
  expect(program.run(["next", path, "-o", out, "--on", "yesterday"]).stderr).toContain(
    "YYYY-MM-DD",
  );
});
