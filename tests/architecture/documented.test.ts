/**
 * Every check and every file for others is explained to growers. That every check finds something
 * somewhere is asked of a run: tests/core/checks/findings.test.ts.
 */
import { expect, test } from "vitest";
import { allChecks } from "../../src/core/checks/all-checks.ts";
import { allExports } from "../../src/core/files/all-exports.ts";
import { textOf } from "./source-files.ts";

const names = allChecks.map((check) => check.name);

test("every check has a paragraph in docs/checks.md that names it", () => {
  const paragraphs = textOf("docs/checks.md");
  expect(names.filter((name) => !paragraphs.includes(`\`${name}\``))).toEqual([]);
});

test("every file for others has its row in docs/printing.md", () => {
  const page = textOf("docs/printing.md");
  expect(allExports.map(({ id }) => id).filter((id) => !page.includes(`| \`${id}\` |`))).toEqual(
    [],
  );
});
