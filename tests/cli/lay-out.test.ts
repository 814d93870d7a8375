/** `wideberth lay-out`, as shipped. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Plan } from "../../src/core/model/plan.ts";
import { writePlan } from "../../src/core/model/read-plan.ts";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";
import { bed, day, gardenPlan, variety } from "../support/arrange-garden.ts";

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

const varieties = [
  variety("v1", "tomato", { wantedPlants: 6 }),
  variety("v2", "tomato", { wantedPlants: 6 }),
];
const beds = [bed("b1", 0, 0, 1.2, 9), bed("b2", 20, 0, 1.2, 9)];
const site = { name: "Garden", upBearingDeg: 0, lastSpringFrost: day("2027-05-10") };

test("writes three layouts, tells what each costs, and leaves no conflict", () => {
  const path = fileOf("list.json", gardenPlan(varieties, beds, [], { site }));
  const out = join(program.folder, "laid-out.json");
  const { code, stderr } = program.run(["lay-out", path, "-o", out]);
  expect([code, stderr.includes("All grown this year:\n  2 varieties, 12 plants")]).toEqual([
    0,
    true,
  ]);
  const made = JSON.parse(readFileSync(out, "utf8")) as Plan;
  expect(made.layouts.map(({ plantings }) => plantings.length)).toEqual([0, 2, 2, 2]);
  const checked = program.run(["check", out, "--layout", "Roomiest distances"]);
  expect(checked.code).toBe(0);
});

test("without a frost it says what is missing, and makes nothing", () => {
  const path = fileOf("no-frost.json", gardenPlan(varieties, beds, []));
  const out = join(program.folder, "none.json");
  const { code, stderr } = program.run(["lay-out", path, "-o", out]);
  expect([code, existsSync(out)]).toEqual([2, false]);
  expect(stderr).toContain("type the last spring frost");
});
