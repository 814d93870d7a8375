/** What the documents say is what the program does. */
import { readFileSync, readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { runChecks } from "../../src/core/checks/run-checks.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { checkReportText } from "../../src/core/files/check-report.ts";
import type { Layout, Plan } from "../../src/core/model/plan.ts";
import { problemText } from "../../src/core/model/problem.ts";
import { planJsonSchema, readPlan } from "../../src/core/model/read-plan.ts";

const book = cropBook();

function textOf(path: string): string {
  return readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
}

function planOf(text: string, name: string): Plan {
  const read = readPlan(text, name, (kind) => book.kind(kind) !== undefined);
  if (!read.ok) throw new Error(read.problems.map(problemText).join("\n"));
  return read.value;
}

/** The text of the first fenced block that holds some words. */
function fencedBlock(text: string, words: string): string {
  const blocks = [...text.matchAll(/^```.*\n([^]*?)^```$/gm)].map((match) => match[1] ?? "");
  const found = blocks.find((block) => block.includes(words));
  if (found === undefined) throw new Error(`no block with ${words}`);
  return found;
}

test("README.md shows what the command line really prints", () => {
  const [command = "", ...shown] = fencedBlock(textOf("README.md"), "wideberth -- check")
    .trimEnd()
    .split("\n");
  const file = command.split(" ").at(-1) ?? "";
  const plan = planOf(textOf(file), file);
  const layout = plan.layouts[0] as Layout;
  const report = checkReportText({
    file,
    plan,
    layout,
    book,
    result: runChecks(plan, layout, book),
    isAll: false,
  });
  const cut = shown.indexOf("...");
  expect(report.startsWith(shown.slice(0, cut).join("\n"))).toBe(true);
  expect(report.trimEnd().endsWith(shown.slice(cut + 1).join("\n"))).toBe(true);
});

test("docs/plan-format.md names every field of the schema", () => {
  const page = textOf("docs/plan-format.md");
  const fields = new Set(fieldsIn(planJsonSchema()));
  expect(fields.size).toBeGreaterThan(60);
  expect([...fields].filter((field) => !page.includes(`\`${field}\``))).toEqual([]);
});

function fieldsIn(schema: unknown): readonly string[] {
  if (typeof schema !== "object" || schema === null) return [];
  const properties = (schema as { readonly properties?: object }).properties ?? {};
  return [...Object.keys(properties), ...Object.values(schema).flatMap(fieldsIn)];
}

test("the example in docs/plan-format.md is a plan", () => {
  const plan = planOf(fencedBlock(textOf("docs/plan-format.md"), '"format"'), "example");
  expect(plan.layouts[0]?.plantings[0]?.plants).toBe(10);
});

test("DEVELOPERS.md gives a reason for every dependency", () => {
  const { devDependencies, ...others } = JSON.parse(textOf("package.json")) as Record<
    "devDependencies",
    Readonly<Record<string, string>>
  >;
  // All is built in: whoever installs the package asks no registry for anything.
  expect(others).not.toHaveProperty("dependencies");
  const rows = textOf("DEVELOPERS.md")
    .split("\n")
    .filter((line) => line.startsWith("|"));
  const named = new Set(
    rows.flatMap(
      (row) =>
        row
          .split("|")[1]
          ?.split(",")
          .map((name) => name.trim()) ?? [],
    ),
  );
  const packages = Object.keys(devDependencies);
  expect(packages.filter((name) => !named.has(name))).toEqual([]);
});

test("README.md and DEVELOPERS.md can be read at one sitting", () => {
  const lines = (path: string) => textOf(path).trimEnd().split("\n").length;
  expect(lines("README.md")).toBeGreaterThanOrEqual(60);
  expect(lines("README.md")).toBeLessThanOrEqual(120);
  expect(lines("DEVELOPERS.md")).toBeLessThanOrEqual(250);
});

test("links between the documents lead somewhere", () => {
  const pages = [
    "README.md",
    "DEVELOPERS.md",
    ...readdirSync(new URL("../../docs/", import.meta.url))
      .filter((name) => name.endsWith(".md"))
      .map((name) => `docs/${name}`),
  ];
  const broken = pages.flatMap((page) =>
    [...textOf(page).matchAll(/[^!]\[[^\]]*\]\(([^)#]+)\)/g)]
      .map((match) => match[1] ?? "")
      .filter((target) => !/^https?:/.test(target) && !exists(page, target))
      .map((target) => `${page}: ${target}`),
  );
  expect(broken).toEqual([]);
});

function exists(page: string, target: string): boolean {
  const url = new URL(target, new URL(`../../${page}`, import.meta.url));
  try {
    readdirSync(url);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "ENOTDIR";
  }
}
