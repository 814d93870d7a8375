/** docs/editor.md: its parts, the count of what it answers for, and its pictures and links. */
import { existsSync } from "node:fs";
import { expect, test } from "vitest";
import { repository } from "../../.config/repository.mjs";
import { textOf } from "./source-files.ts";

const page = textOf("docs/editor.md");
const [, ...parts] = page.split(/^## /m);

/** Rows of the table with this heading, in all parts. */
function rowsUnder(heading: string): readonly string[] {
  return parts.flatMap((part) => {
    const table = new RegExp(
      `^\\| ${heading} \\| How \\|\\n\\|---\\|---\\|\\n((?:\\|.*\\|\\n?)+)`,
      "m",
    );
    return table.exec(part)?.[1]?.trim().split("\n") ?? [];
  });
}

test("has its parts", () => {
  expect(parts.map((part) => part.split("\n")[0])).toEqual([
    "Moving around",
    "Fingers, pens, small screens",
    "Exact sizes and places",
    "Ground, beds, plantings",
    "Selecting and shaping",
    "Undo",
    "Saving, files, tabs",
    "Paper",
    "A picture under the drawing, outlines from elsewhere",
    "Speed and sharpness",
    "Keys, readers, eyes",
  ]);
});

test("answers for the 65 things a plan cannot do without, and others, each with how", () => {
  expect(rowsUnder("Cannot do without").length).toBeGreaterThanOrEqual(65);
  expect(rowsUnder("Wanted soon").length).toBeGreaterThan(40);
  for (const row of [...rowsUnder("Cannot do without"), ...rowsUnder("Wanted soon")]) {
    expect(row).toMatch(/^\| \S[^|]*\S \| \S[^|]*\S \|$/);
  }
});

test("has no broken picture or link", () => {
  const targets = [...page.matchAll(/\]\(([^)#]+)[^)]*\)/g)].map(([, target = ""]) => target);
  expect(targets.length).toBeGreaterThan(5);
  expect(targets.filter((target) => !existsSync(`${repository}docs/${target}`))).toEqual([]);
});
