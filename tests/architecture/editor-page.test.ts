/** docs/editor.md: its pictures and links lead somewhere. */
import { existsSync } from "node:fs";
import { expect, test } from "vitest";
import { repository } from "../../.config/repository.mjs";
import { textOf } from "./source-files.ts";

const page = textOf("docs/editor.md");

test("has no broken picture or link", () => {
  const targets = [...page.matchAll(/\]\(([^)#]+)[^)]*\)/g)].map(([, target = ""]) => target);
  expect(targets.length).toBeGreaterThan(5);
  expect(targets.filter((target) => !existsSync(`${repository}docs/${target}`))).toEqual([]);
});
