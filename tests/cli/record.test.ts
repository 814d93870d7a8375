/** `wideberth check --as-grown` and `wideberth merge`, as shipped. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Entry, Plan } from "../../src/core/model/plan.ts";
import { writePlan } from "../../src/core/model/read-plan.ts";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";
import { bloom, day, trialPlan } from "../support/trial-plan.ts";

let program: BuiltProgram;

beforeAll(() => {
  program = buildProgram();
}, 60_000);
afterAll(() => program.remove());

const entry = (id: string, of: string, on: string, what: Entry["what"]): Entry => ({
  id,
  of,
  on: day(`2027-${on}`),
  what,
});

/** Two beans kept apart by a month, one of which opened early. */
const garden = (entries: readonly Entry[], more: Partial<Plan> = {}) =>
  trialPlan(
    {
      p: { at: 0, kind: "common-bean", bloom: bloom("06-10", "06-30"), plants: 40 },
      q: { at: 6, kind: "common-bean", bloom: bloom("08-01", "08-20"), plants: 40 },
    },
    [],
    { entries, ...more },
  );

function fileOf(name: string, plan: Plan): string {
  const path = join(program.folder, name);
  writeFileSync(path, writePlan(plan));
  return path;
}

describe("check --as-grown", () => {
  test("ways out are told of the plan alone", () => {
    const path = fileOf("ways.json", garden([entry("e1", "q", "06-20", "first flower")]));
    const { stderr, code } = program.run(["check", path, "--as-grown", "--ways"]);
    expect(code).toBe(2);
    expect(stderr).toContain("--ways are those of the plan");
  });

  test("says first what the field changed, and what is in doubt", () => {
    const entries = [
      entry("e1", "q", "06-20", "first flower"),
      entry("e2", "nobody", "06-01", "note"),
    ];
    const path = fileOf("grown.json", garden(entries));
    expect(program.run(["check", path]).stdout).not.toContain("conflict:");
    const { stdout, code } = program.run(["check", path, "--as-grown", "--on", "2027-06-20"]);
    const [head, first] = stdout.split("\n");
    expect(head).toBe("As grown on 20 Jun 2027, by 2 entries of the field record.");
    expect(first).toMatch(/^New since 20 Jun 2027: conflict: /);
    expect(stdout).toContain("In doubt: nobody, note on 1 Jun 2027: the plan has no plot");
    expect(code).toBe(1);
    expect(program.run(["check", path, "--as-grown", "--on", "2027-06-19"]).code).toBe(0);
  });

  test("is JSON of the plan as grown with --json", () => {
    const path = fileOf("grown-json.json", garden([entry("e1", "q", "06-20", "first flower")]));
    const args = ["check", path, "--as-grown", "--on", "2027-06-20", "--json"];
    const report: unknown = JSON.parse(program.run(args).stdout);
    expect(report).toMatchObject({ counts: { conflict: 1 } });
  });

  test.each([
    [["--on", "2027-06-20"], "--on goes with --as-grown"],
    [["--as-grown", "--on", "20/6/2027"], "expected a date as YYYY-MM-DD"],
  ])("refuses %j", (args, words) => {
    const { code, stderr } = program.run(["check", fileOf("bad.json", garden([])), ...args]);
    expect(code).toBe(2);
    expect(stderr).toContain(words);
  });
});

describe("paper and files as grown", () => {
  const path = () => fileOf("paper.json", garden([entry("e1", "q", "06-20", "first flower")]));
  const grown = ["--as-grown", "--on", "2027-06-20"];

  test("pairs follow the record, and follow the plan without it", () => {
    const args = ["export", path(), "--format", "pairs", "-o", "-"];
    expect(program.run(args).stdout).not.toContain("conflict");
    expect(program.run([...args, ...grown]).stdout).toContain("conflict");
  });

  test("what is always made as planned refuses the reading", () => {
    const { code, stderr } = program.run([
      "export",
      path(),
      "--format",
      "sowing-csv",
      "-o",
      "-",
      ...grown,
    ]);
    expect(code).toBe(2);
    expect(stderr).toContain("sowing-csv is made as planned");
  });

  test("a day without the reading is refused by map as well", () => {
    const { code, stderr } = program.run(["map", path(), "-o", "-", "--on", "2027-06-20"]);
    expect(code).toBe(2);
    expect(stderr).toContain("--on goes with --as-grown");
  });
});

describe("merge", () => {
  test("keeps every entry of both and lists the changes to the plan, left as ours unless taken", () => {
    const ours = garden([entry("a", "p", "06-01", "note"), entry("both", "p", "06-02", "note")]);
    const theirs = garden(
      [entry("b", "q", "06-03", "rogued"), entry("both", "p", "06-02", "note")],
      { title: "Renamed there" },
    );
    const [a, b] = [fileOf("a.json", ours), fileOf("b.json", theirs)];
    const out = join(program.folder, "c.json");
    const { code, stderr } = program.run(["merge", a, b, "-o", out]);
    expect(code).toBe(0);
    expect(stderr).toContain("1 entry taken over, 3 in all");
    expect(stderr).toContain("title: title differs in title; kept as in");
    const merged: unknown = JSON.parse(readFileSync(out, "utf8"));
    expect(merged).toMatchObject({ title: ours.title });
    expect(Object(merged).entries.map(({ id }: Entry) => id)).toEqual(["a", "both", "b"]);
    program.run(["merge", a, b, "-o", out, "--take", "title"]);
    expect(JSON.parse(readFileSync(out, "utf8"))).toMatchObject({ title: "Renamed there" });
  });

  test("refuses another plan, a change nobody made, and what hangs in the air", () => {
    const a = fileOf("mine.json", garden([]));
    const out = join(program.folder, "never.json");
    const refused = (plan: Plan, ...more: string[]) => {
      const { code, stderr } = program.run([
        "merge",
        a,
        fileOf("other.json", plan),
        "-o",
        out,
        ...more,
      ]);
      expect(code).toBe(2);
      return stderr;
    };
    expect(refused(garden([], { id: "another" }))).toContain('expected a copy of "New plan"');
    expect(refused(garden([]), "--take", "title")).toContain(
      "expected one of these differences: none",
    );
    const bare = garden([]);
    const without = { ...bare, varieties: bare.varieties.slice(1) };
    const [layout] = without.layouts;
    const lacking = layout
      ? { ...without, layouts: [{ ...layout, plantings: layout.plantings.slice(1) }] }
      : without;
    expect(refused(lacking, "--take", "varieties/v-p")).toContain("variety");
  });
});
