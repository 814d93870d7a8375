/** Every check is explained to growers and tried by a test; every file for others is explained. */
import { expect, test } from "vitest";
import { allChecks } from "../../src/core/checks/all-checks.ts";
import { allExports } from "../../src/core/files/all-exports.ts";
import { filesUnder, textOf } from "./source-files.ts";

const names = allChecks.map((check) => check.name);

test("every check has a paragraph in docs/checks.md that names it", () => {
  const paragraphs = textOf("docs/checks.md");
  expect(names.filter((name) => !paragraphs.includes(`\`${name}\``))).toEqual([]);
});

test("every check is named by a test of the checks", () => {
  const tests = filesUnder("tests/core/checks").map(textOf).join("\n");
  expect(names.filter((name) => !new RegExp(`["'\`]${name}["'\`]`).test(tests))).toEqual([]);
});

test("every file for others has its row in docs/printing.md", () => {
  const page = textOf("docs/printing.md");
  expect(allExports.map(({ id }) => id).filter((id) => !page.includes(`| \`${id}\` |`))).toEqual(
    [],
  );
});
